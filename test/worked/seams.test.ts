// What a seam takes: sizes after sewing, from print and by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { near, only, planned, quilt, rails, setOf } from '../documents/documents.ts';

const stripTest = (finished: number, seam: number, count = 3) =>
  only(
    planned(
      quilt({
        seam,
        ruler: '1/32',
        blocks: [rails('rails', { count, width: 6, height: finished })],
        top: setOf('rails'),
      }),
    ).blocks,
  );

test('three strips cut 1 1/2 in, sewn with a 1/4 in seam, measure 3 1/2 in and the middle one finishes 1 in', () => {
  const block = stripTest(1, 0.25);
  for (const piece of block.pieces) assert.equal(piece.cut.size[1], 1.5);
  // middle 1: Utah Quilt Guild blog, "That Pesky 1/4" Seam", 7 June 2012
  assert.equal(
    block.patches[1]?.points.reduce((most, p) => Math.max(most, p.y), 0),
    2,
  );
  assert.equal(
    block.patches[1]?.points.reduce((least, p) => Math.min(least, p.y), 9),
    1,
  );
  // total 3 1/2: teacher's blog, piecing-basics note, May 2012
  assert.equal(block.steps.at(-1)?.unfinished[1], 3.5);
});

test('with a seam of 5/16 in the same strips measure 3 1/4 in and the middle one finishes 7/8 in', () => {
  // derived: middle 1 1/2 − 2 · 5/16 = 7/8; total 3 · 1 1/2 − 4 · 5/16 = 3 1/4
  const block = stripTest(0.875, 0.3125);
  for (const piece of block.pieces) assert.equal(piece.cut.size[1], 1.5);
  assert.equal(block.steps.at(-1)?.unfinished[1], 3.25);
});

test('eight strips cut 1 1/2 in come out 7/16 in small when every seam takes 1/32 in more on each side of it', () => {
  // derived: seven seams, each 2 · 1/32 too wide: 7/16
  const right = stripTest(1, 0.25, 8).steps.at(-1)?.unfinished[1] as number;
  const wide = stripTest(1.5 - 2 * 0.28125, 0.28125, 8).steps.at(-1)?.unfinished[1] as number;
  near(wide - right, -0.4375);
});
