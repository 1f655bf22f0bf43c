// How many pieces a cloth gives and how much of it to buy, from print and by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FabricPlan } from '#craft';
import { cloths, near, only, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

/** The cloth of a quilt of nothing but `count` plain rectangles, cut this large. */
const clothOf = (of: {
  readonly count: number;
  readonly cut: readonly [number, number];
  readonly width: number;
  readonly cutting?: Written;
  /** Of layout search. */
  readonly steps?: number;
}): FabricPlan => {
  const down = [1, 2, 3, 4, 5, 6, 7, 8].find((rows) => of.count % rows === 0 && of.count / rows <= 300) as number;
  const block = plainBlock('b', of.cut[0] - 0.5, of.cut[1] - 0.5);
  const top = setOf('b', { across: of.count / down, down });
  return only(
    planned(
      quilt({ fabrics: cloths(of.width), cutting: { squaring: 0, ...of.cutting }, blocks: [block], top }),
      of.steps,
    ).fabrics,
  );
};

/** Most squares of one size that a piece of cloth gives. */
const mostSquares = (
  cut: number,
  cloth: { readonly width: number; readonly length: number },
  expected: number,
): void => {
  const lengthFor = (count: number) => clothOf({ count, cut: [cut, cut], width: cloth.width }).laid;
  assert.ok(lengthFor(expected).layout.length <= cloth.length, `${expected} squares of ${cut}`);
  assert.ok(lengthFor(expected + 1).bound > cloth.length, `${expected + 1} squares of ${cut} by the bound`);
};

test('a fat quarter of 22 by 18 in gives 99 squares of 2 in, 56 of 2 1/2, 30 of 3 1/2, 20 of 4, 12 of 5 and of 5 1/2, 6 of 6 1/2', () => {
  // guild handout "Number of Squares from a Fat Quarter" (anonymous, public document copy)
  const chart = [
    [2, 99],
    [2.5, 56],
    [3.5, 30],
    [4, 20],
    [5, 12],
    [5.5, 12],
    [6.5, 6],
  ] as const;
  for (const [cut, most] of chart) mostSquares(cut, { width: 22, length: 18 }, most);
});

test('42 by 35 in gives 357 squares of 2 in, 154 of 3, 63 of 4 1/2, 56 of 5 and 30 of 6 1/2', () => {
  // the same handout for a yard; the chart says 44 in fabric and approximate, these rows fit 42 × 35 usable
  const chart = [
    [2, 357],
    [3, 154],
    [4.5, 63],
    [5, 56],
    [6.5, 30],
  ] as const;
  for (const [cut, most] of chart) mostSquares(cut, { width: 42, length: 35 }, most);
});

test('100 squares cut 3 1/2 in lie twelve to a strip of 44 in cloth, in nine strips', () => {
  // derived: strips across the width: 44 / 3.5 = 12.6; 100 / 12 = 8.3
  const { layout } = clothOf({ count: 100, cut: [3.5, 3.5], width: 44 }).laid;
  assert.equal(layout.length, 9 * 3.5);
  assert.equal(Math.max(...layout.strips.map((strip) => strip.parts.length)), 12);
});

test('80 squares cut 2 1/2 in with 6 % for shrinkage take five strips of 40 in cloth, 13 1/4 in, 3/8 yd', () => {
  // quilt-book author's FAQ "How to figure yardage" (usable 40 in, 106% for shrinkage, 3/8 yd)
  const cloth = clothOf({ count: 80, cut: [2.5, 2.5], width: 40, cutting: { shrinkage: 0.06 } });
  near(cloth.laid.layout.length * 1.06, 13.25);
  assert.deepEqual(cloth.buy, { amount: 0.375, unit: 'yd', proven: true });
});

test('8 squares cut 5 in lie in one strip of 42 in cloth', () => {
  // "The Math of Quilting", Lesson 4, June 2016 (guild class handout, public document copy)
  assert.equal(clothOf({ count: 8, cut: [5, 5], width: 42 }).laid.layout.length, 5);
});

test('36 squares cut 4 in lie ten to a strip of 42 in cloth: 16 in, 1/2 yd', () => {
  // the same handout (exercise; answer worked by us)
  const cloth = clothOf({ count: 36, cut: [4, 4], width: 42 });
  assert.equal(cloth.laid.layout.length, 16);
  assert.equal(cloth.buy.amount, 0.5);
});

test('five strips of 6 in across 42 in cloth take 30 in, 7/8 yd', () => {
  // the same handout: five 6 in strips need 30 in
  const cloth = clothOf({ count: 5, cut: [42, 6], width: 42 });
  assert.equal(cloth.laid.layout.length, 30);
  assert.equal(cloth.buy.amount, 0.875);
});

test('31 sashes cut 12 1/2 by 3 1/2 in from 42 in cloth never take more than the eleven strips of print, 38 1/2 in', () => {
  // "Math for Quilt Sashings and Borders", Lesson 11 (same guild class series): three to a strip, eleven strips, 38 1/2 in.
  // Set on end, twelve lie side by side in 12 1/2 in; in 21 in three stacks of six flat ones stand beside one on end: 31 in
  // 12 1/2 + 21 = 33 1/2 in, by hand; the area alone asks for 31 · 12.5 · 3.5 / 42 = 32.3 in
  const { layout, bound } = clothOf({ count: 31, cut: [12.5, 3.5], width: 42, steps: 12 }).laid;
  assert.equal(layout.length, 33.5);
  assert.ok(clothOf({ count: 31, cut: [12.5, 3.5], width: 42 }).laid.layout.length <= 38.5);
  assert.ok(bound >= 32.29 && bound <= 33.5);
});

test('38 1/2 in of cloth are bought as 1 1/8 yd', () => {
  // the same lesson; eleven strips that cannot be set on end because they span the cloth
  const cloth = clothOf({ count: 11, cut: [42, 3.5], width: 42 });
  assert.deepEqual([cloth.laid.layout.length, cloth.buy.amount], [38.5, 1.125]);
});
