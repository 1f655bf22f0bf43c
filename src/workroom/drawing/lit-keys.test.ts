import assert from 'node:assert/strict';
import { test } from 'node:test';
import { example, pictureOf } from '#documents';
import { litKeys } from './lit-keys.ts';

const litIn = (name: string) => {
  const document = example(name);
  const picture = pictureOf(document);
  return (where: string) => litKeys({ problems: [{ where }], picture, blocks: document.blocks });
};

test('a cell, a row, a section and a border are lit where a problem lies at them or in them', () => {
  const rows = litIn('harvest-home-throw');
  assert.deepEqual(rows('/top/rows/1/2'), ['block 8']);
  assert.equal(rows('/top/rows/1').length, 6);
  // not row 10 for row 1
  assert.deepEqual(rows('/top/rows/1/2/block'), ['block 8']);
  assert.equal(rows('/top/borders/1/width').length, 4);
  const point = litIn('lantern-lane');
  assert.equal(point('/top/between/0/0').length, 1);
  assert.ok(point('/top/settingFabric').length > 4);
  const fields = litIn('twelve-fields');
  assert.equal(fields('/top/sections/down/0/across/0').length, 1);
  assert.ok(fields('/top/sections/down/0').length > 5);
});

test('a block is lit wherever it lies, and a problem of nothing in the drawing lights nothing', () => {
  const rows = litIn('harvest-home-throw');
  assert.equal(rows('/blocks/0/recipe/rounds/1').length, 36);
  for (const where of ['/blocks/7', '/fabrics/0/colour', '/top', '/finish/binding'])
    assert.deepEqual(rows(where), [], where);
});
