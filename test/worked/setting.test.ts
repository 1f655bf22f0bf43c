// Sizes of tops and counts of their strips, from print and by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { TopPlan } from '#craft';
import { cloths, near, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

const topOf = (block: Written, set: Parameters<typeof setOf>[1], more: Written = {}): TopPlan =>
  planned(quilt({ ...more, blocks: [block], top: setOf(block.id as string, set) })).top;

const sizeOf = ({ set }: TopPlan): readonly number[] => [set.width, set.height];

const count = (top: TopPlan, role: string): number => top.set.strips.filter((strip) => strip.role === role).length;

test('five by six blocks of 12 in make 60 by 72 in', () => {
  // a quilter's personal page on quilt sizes (public copy)
  assert.deepEqual(sizeOf(topOf(plainBlock('b', 12, 12), { across: 5, down: 6 })), [60, 72]);
});

test('the same with 3 in sashes between the blocks makes 72 by 87 in', () => {
  // the same page: four and five 3 in sashes add 12 and 15
  const sashing = { width: 3, fabric: 'light' };
  assert.deepEqual(sizeOf(topOf(plainBlock('b', 12, 12), { across: 5, down: 6, sashing })), [72, 87]);
});

test('thirty-six blocks of 10 in make 60 by 60 in', () => {
  // Connecticut Collections, log cabin quilt of 1880: 36 blocks of 10 in, quilt 62 x 61 with its edge
  assert.deepEqual(sizeOf(topOf(plainBlock('b', 10, 10), { across: 6, down: 6 })), [60, 60]);
});

test('four by four blocks have 24 sashes and 9 cornerstones between them', () => {
  // derived: 4 · 3 upright + 3 · 4 level; 3 · 3
  const sashing = { width: 1, fabric: 'light', cornerstones: 'medium' };
  const top = topOf(plainBlock('b', 6, 6), { across: 4, down: 4, sashing });
  assert.deepEqual([count(top, 'sash'), count(top, 'cornerstone')], [24, 9]);
});

test('three by four blocks with sashing all round have 31 sashes and 20 cornerstones', () => {
  // "Math for Quilt Sashings and Borders", Lesson 11 (guild class series, c. 2016-17): 31 sashing strips;
  // derived: 4 · 4 upright + 5 · 3 level; 4 · 5
  const sashing = { width: 3, fabric: 'light', cornerstones: 'medium', outer: true };
  const top = topOf(plainBlock('b', 12, 12), { across: 3, down: 4, sashing });
  assert.deepEqual([count(top, 'sash'), count(top, 'cornerstone')], [31, 20]);
  assert.deepEqual(sizeOf(top), [3 * 12 + 4 * 3, 4 * 12 + 5 * 3]);
});

test('a border of 1 1/2 in strips round a top of 32 1/2 by 44 in: sides of 44, ends of 34 1/2, then 34 1/2 by 46 in', () => {
  // class page of a village quilt group, lesson "Borders" (public copy, Oct.). The lesson measures unsewn edges: a top that
  // measures 32 1/2 by 44 finishes 32 by 43 1/2, and strips cut 1 1/2 finish 1
  const top = topOf(
    plainBlock('b', 32, 43.5),
    { borders: [{ width: 1, fabric: 'light', grain: 'lengthwise' }] },
    { fabrics: cloths(50) },
  );
  assert.deepEqual(
    top.pieces.filter((piece) => piece.role === 'border').map((piece) => [piece.count, ...piece.cut.size]),
    [
      [2, 44, 1.5],
      [2, 34.5, 1.5],
    ],
  );
  assert.deepEqual(top.steps.at(-1)?.unfinished, [34.5, 46]);
});

test('a border finishing 6 1/2 in round 70 by 86 in is 338 in long', () => {
  // slide lesson "Can You Figure the Amount of Yardage to Buy?" (school textiles class, public slide copy): 2 · 86 + 2 · 83
  const block = plainBlock('b', 35, 43);
  const top = topOf(block, { across: 2, down: 2, borders: [{ width: 6.5, fabric: 'light' }] }, { fabrics: cloths(44) });
  const lengths = top.pieces.filter((piece) => piece.role === 'border').map((piece) => piece.count * piece.finished[0]);
  near(
    lengths.reduce((a, b) => a + b),
    338,
  );
});

test('a border strip longer than the cloth is wide is joined, and the joins cost two allowances each', () => {
  // by hand: 86 1/2 in cut from 40 in of cloth: 40 + 40 + 7 1/2, less two joins of 1/2
  const block = plainBlock('b', 35, 39);
  const borders = [{ width: 4, fabric: 'light', grain: 'crosswise' }];
  const top = topOf(block, { across: 2, down: 2, borders }, { fabrics: cloths(40) });
  const ends = top.pieces.find((piece) => piece.finished[0] === 78);
  assert.deepEqual(ends?.joinedFrom, [
    [40, 4.5],
    [39, 4.5],
  ]);
});
