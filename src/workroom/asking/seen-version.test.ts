import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { JsonObject } from '#workroom/editing';
import { planFirst } from './asking.ts';
import { seeVersion } from './seen-version.ts';

test('a version comes to what its plan says, counted by hand', () => {
  const document: JsonObject = {
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    currency: 'EUR',
    fabrics: [
      { id: 'ash', colour: '#aa8844', price: 10 },
      { id: 'bay', colour: '#224488' },
    ],
    blocks: [{ id: 'b', from: 'nine-patch', size: '9', colourings: { default: { light: 'ash', dark: 'bay' } } }],
    top: {
      set: 'straight',
      rows: [
        [{ block: 'b' }, { plain: 'ash' }],
        [{ plain: 'ash' }, { block: 'b' }],
      ],
      borders: [{ width: '2', fabric: 'bay' }],
    },
    finish: { binding: { fabric: 'bay' } },
  };
  const planned = planFirst(document);
  assert.ok(planned.ok);
  const seen = seeVersion(planned.value, {});
  assert.deepEqual(seen.size, [22, 22]);
  assert.equal(seen.blocks, 2);
  assert.equal(seen.kinds, 1);
  // two blocks of nine patches, two plain squares, four strips of the border
  assert.equal(seen.pieces, 24);
  // eight seams in a block, one in a row, one between the rows, four of the border
  assert.equal(seen.seams, 2 * 8 + 2 + 1 + 4);
  assert.deepEqual([seen.unpriced, seen.currency, seen.backing], [1, 'EUR', null]);
  assert.equal(seen.cost, seen.cloths.find(({ id }) => id === 'ash')?.cost);
  // round 88 in, and 12 in of tail
  assert.equal(seen.binding, 100);
});

test('every example has figures', () => {
  for (const name of ['lantern-lane', 'heron-hanging', 'bramble-lane', 'orchard-pair']) {
    const planned = planFirst(JSON.parse(readFileSync(`examples/${name}.quilt.json`, 'utf8')) as JsonObject);
    assert.ok(planned.ok);
    const seen = seeVersion(planned.value, {});
    assert.ok(seen.pieces > seen.blocks && seen.cloths.length > 0, name);
  }
});
