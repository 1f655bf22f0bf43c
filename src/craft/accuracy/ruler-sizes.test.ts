import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { collection, collectionBlock } from '#craft/collection';
import type { CutRule } from '#craft/cutting';
import { collectionShape } from '#craft/design';
import { type DraftedBlock, draftBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { type Rational, rational } from '#ground/exact';
import { blockDrift, rulerSizes, scaled } from './index.ts';

const inches: CutRule = { seam: length(0.25), ruler: rational(1, 8) };
const centimetres: CutRule = { seam: length(0.75), ruler: rational(1, 10) };

const drafted = (id: string, side: Rational, height: Rational = side): DraftedBlock => {
  const block = collectionBlock(id);
  assert.ok(block, id);
  const shape = collectionShape(block, [side, height]);
  const outcome = draftBlock({ id, title: id, path: '', shape, colourings: {} });
  assert.ok(outcome.ok);
  return outcome.value;
};

const widths = (block: DraftedBlock, near: number, rule: CutRule): readonly number[] =>
  rulerSizes({ block, near: length(near), rule, each: 2 }).sizes.map(([width]) => width);

test('a nine-patch near 8 in comes out on the marks at multiples of three eighths', () => {
  // by hand: its square is a third of the block and is cut 1/2 larger, so the block is a multiple of 3/8
  assert.deepEqual(widths(drafted('nine-patch', rational(8)), 8, inches), [7.5, 7.875, 8.25, 8.625]);
});

test('a size that fits is given beside two on either side, and is the nearest', () => {
  const found = rulerSizes({ block: drafted('nine-patch', rational(5)), near: length(9), rule: inches, each: 2 });
  assert.deepEqual(
    found.sizes.map(([width]) => width),
    [8.25, 8.625, 9, 9.375, 9.75],
  );
  assert.deepEqual(found.nearest, [9, 9]);
});

test('of two sizes as near the larger is the nearest', () => {
  // by hand: sixths of an inch apart on a ruler of 1/16: a nine-patch of 3/16 steps, asked half-way
  const found = rulerSizes({
    block: drafted('nine-patch', rational(9)),
    near: length(9 + 3 / 32),
    rule: { seam: length(0.25), ruler: rational(1, 16) },
    each: 1,
  });
  assert.deepEqual(found.sizes, [
    [9, 9],
    [9.1875, 9.1875],
  ]);
  assert.deepEqual(found.nearest, [9.1875, 9.1875]);
});

test('triangles count by their finished legs: a shoo fly on thirds, a sawtooth star on quarters', () => {
  // by hand: both have squares and legs of one unit of the grid; units are multiples of 1/8 in, of 0.1 cm
  assert.deepEqual(widths(drafted('shoo-fly', rational(10)), 10, inches), [9.375, 9.75, 10.125, 10.5]);
  assert.deepEqual(widths(drafted('sawtooth-star', rational(20)), 20.1, centimetres), [19.6, 20, 20.4, 20.8]);
});

test('a seam of half an odd mark moves the sizes, not the marks', () => {
  // by hand: cut square = unit + 3/16 · 2 = unit + 3/8 is on eighths when the unit is
  assert.deepEqual(
    widths(drafted('four-patch', rational(6)), 6, { seam: length(3 / 16), ruler: rational(1, 8) }),
    [5.5, 5.75, 6, 6.25, 6.5],
  );
  // by hand: unit + 5/8 on quarters asks for a unit of n/4 + 1/8, the block 2n/4 + 1/4, and 5/8 on the block itself
  // for n/4 + 1/8: no size does both
  assert.deepEqual(widths(drafted('four-patch', rational(6)), 6, { seam: length(5 / 16), ruler: rational(1, 4) }), []);
});

test('an eight-pointed star fits at no size: its grid is irrational', () => {
  const found = rulerSizes({ block: drafted('lemoyne-star', rational(12)), near: length(12), rule: inches, each: 1 });
  assert.deepEqual([found.sizes, found.nearest, found.from, found.to], [[], null, 6, 24]);
});

test('a block that is wider than high keeps its proportions, and both sides fit', () => {
  const found = rulerSizes({
    block: drafted('four-patch', rational(8), rational(6)),
    near: length(8),
    rule: inches,
    each: 1,
  });
  // by hand: 8k by 6k with halves on eighths: 8k is a multiple of 1/4, 6k too, so of 1 and 3/4
  assert.deepEqual(found.sizes, [
    [7, 5.25],
    [8, 6],
    [9, 6.75],
  ]);
});

test('at a size that is given no cut of the block is off the marks, whatever block and unit', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...collection.filter(({ id }) => id !== 'lemoyne-star').map(({ id }) => id)),
      fc.integer({ min: 40, max: 200 }),
      fc.constantFrom(inches, centimetres),
      (id, tenths, rule) => {
        const block = drafted(id, rational(1));
        const { sizes } = rulerSizes({ block, near: length(tenths / 10), rule, each: 1 });
        for (const [width] of sizes) {
          const there = scaled(block, rational(Math.round(width * 1000), 1000));
          const level = blockDrift(there, rule);
          assert.deepEqual([level.across, level.down], [0, 0]);
        }
      },
    ),
    { seed: 331, numRuns: 120 },
  );
});

test('what a nine-patch of 8 in is off adds up over three squares', () => {
  const drift = blockDrift(drafted('nine-patch', rational(8)), inches);
  // by hand: 8/3 + 1/2 = 3 1/6, nearest mark 3 1/8, 1/24 too small, three times
  assert.equal(drift.cuts, 1);
  assert.equal(drift.off.length, 1);
  assert.deepEqual(drift.off[0]?.size, [3.125, 3.125]);
  for (const off of [drift.across, drift.down]) assert.ok(Math.abs(off + 1 / 8) < 1e-9, `${off}`);
});

test('triangles add nothing to the drift: they are trimmed', () => {
  // by hand: a shoo fly of 8 in has one row of three squares and two of one square between triangles; 3 · 1/24
  const drift = blockDrift(drafted('shoo-fly', rational(8)), inches);
  assert.ok(Math.abs(drift.across + 1 / 8) < 1e-9);
  assert.deepEqual(blockDrift(drafted('pinwheel', rational(25, 3)), inches), {
    off: [],
    cuts: 1,
    across: 0,
    down: 0,
  });
});
