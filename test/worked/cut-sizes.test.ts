// Cut sizes from print and by hand, read out of plans of whole quilts.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { PlannedPiece } from '#craft';
import { near, only, plainBlock, planned, quilt, rectangle, setOf, type Written } from '../documents/documents.ts';
import { drawnBlock } from '../documents/drawn.ts';

const piecesOf = (block: Written): readonly PlannedPiece[] =>
  only(planned(quilt({ blocks: [block], top: setOf(block.id as string) })).blocks).pieces;

const pieceOf = (block: Written, isIt: (piece: PlannedPiece) => boolean): PlannedPiece =>
  only(piecesOf(block).filter(isIt));

const ofShape = (shape: string) => (piece: PlannedPiece) => piece.cut.shape === shape;

/** Two half-square triangles of one finished size. */
const halves = (leg: number): Written => ({
  id: 'halves',
  size: leg,
  patches: {
    grid: [1, 1],
    list: [
      {
        points: [
          [0, 0],
          [1, 0],
          [0, 1],
        ],
        tone: 'light',
      },
      {
        points: [
          [1, 0],
          [1, 1],
          [0, 1],
        ],
        tone: 'dark',
      },
    ],
  },
});

/** Four quarter-square triangles, all of one cloth. */
const quarters = (side: number): Written => ({
  id: 'quarters',
  size: side,
  patches: {
    grid: [2, 2],
    list: [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ].map((corner, i, all) => ({
      points: [corner, all[(i + 1) % 4], [1, 1]],
      tone: 'dark',
    })),
  },
});

test('a square that finishes 3 in is cut 3 1/2 in', () => {
  // common practice, no source: finished + 1/2 in
  const { cut } = only(piecesOf(plainBlock('square', 3, 3)));
  assert.deepEqual([cut.shape, cut.size, cut.exact], ['square', [3.5, 3.5], [3.5, 3.5]]);
});

test('a rectangle that finishes 2 by 5 in is cut 2 1/2 by 5 1/2 in', () => {
  // common practice, no source: finished + 1/2 in on each side
  const { cut } = only(piecesOf(plainBlock('rectangle', 2, 5)));
  assert.deepEqual([cut.shape, cut.size], ['rectangle', [2.5, 5.5]]);
});

test('half-square triangles that finish 6 in are cut from a 6 7/8 in square', () => {
  // personal blog "Do the Math", 22 Feb 2011: half-square triangles + 7/8
  for (const { cut } of piecesOf(halves(6))) {
    assert.deepEqual([cut.shape, cut.gives, cut.size], ['half-square', 2, [6.875, 6.875]]);
  }
});

test('half-square triangles that finish 3 in take 3.853553 in exactly and 3 7/8 in on the ruler', () => {
  // derived: 3 + (2 + √2)/4
  for (const { cut } of piecesOf(halves(3))) {
    near(cut.exact[0], 3.853553);
    assert.equal(cut.size[0], 3.875);
  }
});

test('quarter-square triangles with a long side of 6 in are cut from a 7 1/4 in square', () => {
  // personal blog "Do the Math", 22 Feb 2011: quarter-square triangles + 1 1/4
  const { cut } = only(piecesOf(quarters(6)));
  assert.deepEqual([cut.shape, cut.gives, cut.size], ['quarter-square', 4, [7.25, 7.25]]);
});

test('quarter-square triangles with a long side of 4 in take 5.207107 in exactly and 5 1/4 in on the ruler', () => {
  // derived: 4 + (2 + 2√2)/4
  const { cut } = only(piecesOf(quarters(4)));
  near(cut.exact[0], 5.207107);
  assert.equal(cut.size[0], 5.25);
});

test('a flying goose of 4 by 2 in takes a 5 1/4 in square for the goose and 2 7/8 in squares for the sky', () => {
  // personal blog, 28 March 2012: 2 × 4 geese, large square 5 1/4, small squares 2 + 7/8
  const goose: Written = {
    id: 'goose',
    size: [4, 2],
    patches: {
      grid: [4, 2],
      list: [
        {
          points: [
            [0, 2],
            [2, 0],
            [4, 2],
          ],
          tone: 'dark',
        },
        {
          points: [
            [0, 0],
            [2, 0],
            [0, 2],
          ],
          tone: 'light',
        },
        {
          points: [
            [2, 0],
            [4, 0],
            [4, 2],
          ],
          tone: 'light',
        },
      ],
    },
  };
  assert.deepEqual(pieceOf(goose, ofShape('quarter-square')).cut.size, [5.25, 5.25]);
  const sky = pieceOf(goose, ofShape('half-square'));
  assert.deepEqual([sky.perBlock, sky.cut.size], [2, [2.875, 2.875]]);
});

test('the corners round a 6 in square on its point are cut from 5 1/8 in squares, and the unit finishes 8.485281 in', () => {
  // forum answer (public copy): triangles round a 6 in block cut from 5 1/8 in squares, 6/1.414 + 7/8; side 6√2
  const block: Written = {
    id: 'onpoint',
    size: '8.485281',
    patches: {
      grid: [2, 2],
      list: [
        {
          points: [
            [1, 0],
            [2, 1],
            [1, 2],
            [0, 1],
          ],
          tone: 'dark',
        },
        ...[
          [
            [0, 0],
            [1, 0],
            [0, 1],
          ],
          [
            [1, 0],
            [2, 0],
            [2, 1],
          ],
          [
            [2, 1],
            [2, 2],
            [1, 2],
          ],
          [
            [0, 1],
            [1, 2],
            [0, 2],
          ],
        ].map((points) => ({ points, tone: 'light' })),
      ],
    },
  };
  assert.deepEqual(pieceOf(block, ofShape('half-square')).cut.size, [5.125, 5.125]);
  near(pieceOf(block, ofShape('square')).cut.finished[0], 6);
});

test('an eight-pointed star of 12 in takes 4 in corner squares and 6 1/4 in squares for its edges', () => {
  // derived: corner 12/(2 + √2) + 1/2 = 4.0147, to the nearest mark, for it must match the diamonds untrimmed;
  // edge triangles 12·√2/(2 + √2) + (2 + 2√2)/4 = 6.1777, up
  const star = drawnBlock('lemoyne_star', 12);
  const corner = pieceOf(star, ofShape('square')).cut;
  near(corner.exact[0], 4.014719);
  assert.equal(corner.size[0], 4);
  assert.deepEqual(pieceOf(star, ofShape('quarter-square')).cut.size, [6.25, 6.25]);
  // diamond: side 3.514719, strip 3.514719/√2 + 1/2 = 2.985281, to the nearest mark 3, and cut as far apart
  for (const { cut } of piecesOf(star).filter(ofShape('angled'))) {
    near(cut.exact[0], 2.985281);
    assert.deepEqual([...cut.size, cut.way?.angles.includes(45)], [3, 3, true]);
    near(cut.finished[0] * Math.SQRT2, 3.514719);
  }
});

test('a size that no mark fits is told: the eight-pointed star names its corner squares', () => {
  const plan = planned(quilt({ blocks: [drawnBlock('lemoyne_star', 12)], top: setOf('lemoyne_star') }));
  const off = plan.notes.filter((note) => note.code === 'cutting/off-marks');
  assert.equal(off.length, 1); // the square once, not once a side; triangles are trimmed
  const strips = plan.notes.filter((note) => note.code === 'cutting/strip-off-marks');
  assert.deepEqual(
    strips.map((note) => note.size),
    [
      [3, 3],
      [3, 3],
    ],
  ); // the diamonds of both colours
});

test('a long strip of one colour and three squares of another keep their own sides on marks', () => {
  // by hand: 6 × 1 and 2 × 1 finished; a half inch more each way
  const block: Written = {
    id: 'b',
    size: [6, 2],
    patches: {
      grid: [6, 2],
      list: [
        { points: rectangle(0, 0, 6, 1), tone: 'dark' },
        ...[0, 2, 4].map((x) => ({ points: rectangle(x, 1, 2, 1), tone: 'light' })),
      ],
    },
  };
  const sizes = piecesOf(block).map(({ perBlock, cut }) => [perBlock, ...cut.size]);
  assert.deepEqual(
    sizes.toSorted((p, q) => (p[0] as number) - (q[0] as number)),
    [
      [1, 6.5, 1.5],
      [3, 2.5, 1.5],
    ],
  );
});
