import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { JsonObject } from '#workroom/editing';
import { askQuilt } from './asking.ts';
import { askMeasures } from './measured.ts';

const read = (name: string) => JSON.parse(readFileSync(`examples/${name}.quilt.json`, 'utf8')) as JsonObject;

test('what each border goes round is told from the middle outward, and the last is the whole', () => {
  // 6 × 6 blocks of 9 in, borders of 1½ and 3½ in
  assert.deepEqual(askMeasures(read('harvest-home-throw')).rings, [
    [54, 54],
    [57, 57],
    [64, 64],
  ]);
  for (const name of ['lantern-lane', 'twelve-fields', 'drying-barn', 'heron-hanging']) {
    const planned = askQuilt(read(name));
    assert.ok(planned.ok);
    assert.deepEqual(askMeasures(read(name)).rings.at(-1), planned.value.figures.top, name);
  }
});

test('blocks are measured with and without their frames, also where the top cannot be set', () => {
  const document = read('harvest-home-throw');
  const frame = [{ width: '1 1/2', fabric: 'oat' }];
  const star = { id: 'star', from: 'ohio-star', size: ['6', '8'], frame, colourings: {} };
  const blocks = [
    ...(document.blocks as JsonObject[]),
    { ...star, colourings: { default: { light: 'oat', dark: 'slate', medium: 'plum' } } },
  ];
  const { rings, blocks: measured } = askMeasures({
    ...document,
    blocks,
    top: { rows: [[{ block: 'cabin' }, { block: 'star' }]] },
  });
  assert.deepEqual(rings, []);
  assert.deepEqual(measured, [
    { id: 'cabin', size: [9, 9], inner: [9, 9] },
    { id: 'star', size: [9, 11], inner: [6, 8] },
  ]);
});

test('rings end before a pieced border that does not fit', () => {
  const document = read('harvest-home-throw');
  const top = {
    ...(document.top as JsonObject),
    borders: [{ width: '1', fabric: 'oat' }, { pieced: { block: 'cabin' } }],
  };
  assert.deepEqual(askMeasures({ ...document, top }).rings, [
    [54, 54],
    [56, 56],
  ]);
});
