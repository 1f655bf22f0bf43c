import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { JsonObject } from '#workroom/editing';
import { planFirst } from './asking.ts';
import { askFinishWays } from './finish-ways.ts';

const read = (name: string) => JSON.parse(readFileSync(`examples/${name}.quilt.json`, 'utf8')) as JsonObject;
const bought = (document: JsonObject, id: string): number => {
  const planned = planFirst(document);
  assert.ok(planned.ok);
  return planned.value.fabrics.find((fabric) => fabric.id === id)?.buy.amount ?? 0;
};

test('what a part takes is what a whole plan without it buys less', () => {
  for (const name of ['harvest-home-throw', 'lantern-lane', 'bramble-lane', 'heron-hanging']) {
    const document = read(name);
    const finish = document.finish as { readonly [part: string]: JsonObject };
    for (const part of ['backing', 'binding', 'sleeve', 'label'].filter((one) => one in finish)) {
      const { [part]: left, ...rest } = finish;
      const asked = askFinishWays(document, [{ key: part, finish: rest }]);
      assert.ok(asked.ok);
      const [price] = asked.value.ways;
      const id = String(left?.fabric);
      const less = bought({ ...document, finish: rest }, id) - bought(document, id);
      assert.equal(price?.cloths?.find((cloth) => cloth.id === id)?.amount ?? 0, less, `${name} without ${part}`);
    }
  }
});

test('a backing whose seams are told to run the other way is priced, in cloth and in money', () => {
  // by hand, docs/formulas.md#backing: a top of 50 × 70 in, 4 in over on every side: 58 × 78. From 42 in upright ⌈57/41⌉ = 2 panels
  // of 78, 156 in; level ⌈77/41⌉ = 2 of 58, 116 in. With 2 in for squaring 158 in, up to 4 1/2 yd; and 118 in, up to 3 3/8 yd.
  const document: JsonObject = {
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    fabrics: [
      { id: 'ash', colour: '#aa8844' },
      { id: 'bay', colour: '#224488', usableWidth: '42', price: 8 },
    ],
    blocks: [{ id: 'b', from: 'nine-patch', size: '10', colourings: { default: { light: 'ash', dark: 'ash' } } }],
    top: { set: 'straight', rows: Array(7).fill(Array(5).fill({ block: 'b' })) },
    finish: { backing: { fabric: 'bay' } },
  };
  const asked = askFinishWays(document, [
    { key: 'upright', finish: { backing: { fabric: 'bay', run: 'upright' } } },
    { key: 'level', finish: { backing: { fabric: 'bay', run: 'level' } } },
    { key: 'none', finish: {} },
    { key: 'other', finish: { backing: { fabric: 'ash' } } },
  ]);
  assert.ok(asked.ok);
  const [upright, level, none, other] = asked.value.ways;
  assert.deepEqual(upright, { key: 'upright', cloths: [{ id: 'bay', amount: 1.125, unit: 'yd' }], cost: 9 });
  assert.deepEqual(level, { key: 'level', cloths: [], cost: 0 });
  assert.deepEqual(none, { key: 'none', cloths: [{ id: 'bay', amount: -3.375, unit: 'yd' }], cost: -27 });
  // the other cloth has no price
  assert.equal(other?.cost, null);
  assert.deepEqual(
    other?.cloths?.map(({ id }) => id),
    ['bay', 'ash'],
  );
});

test('a way that cannot be cut is told as such, and the others are priced', () => {
  const document = read('harvest-home-throw');
  const finish = document.finish as JsonObject;
  const asked = askFinishWays(document, [
    { key: 'wide', finish: { ...finish, binding: { ...(finish.binding as JsonObject), cut: '30' } } },
    { key: 'same', finish },
  ]);
  assert.ok(asked.ok);
  assert.deepEqual(
    asked.value.ways.map(({ key, cloths }) => [key, cloths]),
    [
      ['wide', null],
      ['same', []],
    ],
  );
});

test('strips of borders are told apart from the finish: the quilt stays as large', () => {
  const document = read('harvest-home-throw');
  const asked = askFinishWays(document, [
    { key: 'borders', finish: document.finish as JsonObject, borders: 'left-out' },
  ]);
  assert.ok(asked.ok);
  const cloths = asked.value.ways[0]?.cloths ?? [];
  assert.ok(cloths.length > 0 && cloths.every(({ amount }) => amount < 0), JSON.stringify(cloths));
});

test('a batting with a price is part of what a finish costs', () => {
  const document: JsonObject = {
    ...read('harvest-home-throw'),
    finish: { batting: { price: 30 } },
  };
  const asked = askFinishWays(document, [
    { key: 'without', finish: {} },
    { key: 'dearer', finish: { batting: { price: 34.5 } } },
  ]);
  assert.ok(asked.ok);
  assert.deepEqual(asked.value.ways, [
    { key: 'without', cloths: [], cost: -30 },
    { key: 'dearer', cloths: [], cost: 4.5 },
  ]);
});
