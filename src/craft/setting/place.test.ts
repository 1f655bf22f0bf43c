import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { at } from '#ground/plane';
import { pointInTop } from './place.ts';
import type { PlacedBlock } from './top.ts';

/** A block of 4 by 2 whose turned outline begins at 10, 20. */
const placed = (turn: PlacedBlock['turn'], mirror: boolean): PlacedBlock => {
  const [width, height] = turn % 180 === 0 ? [4, 2] : [2, 4];
  return {
    block: 'b',
    colouring: 'default',
    mirror,
    turn,
    at: [length(10), length(20)],
    size: [length(width), length(height)],
    path: '/top/rows/0/0',
  };
};

const size = [4, 2] as const;

test('a corner goes clockwise round its block with every quarter turn', () => {
  // by hand: the upper left corner of a block of 4 × 2 becomes the upper right, lower right, lower left one
  const corners = ([0, 90, 180, 270] as const).map((turn) => pointInTop(placed(turn, false), size, at(0, 0)));
  assert.deepEqual(corners, [at(10, 20), at(12, 20), at(14, 22), at(10, 24)]);
});

test('a block is mirrored left to right before it is turned', () => {
  // by hand: mirrored, the corner lies upper right; turned then, lower right, lower left, upper left
  const corners = ([0, 90, 180, 270] as const).map((turn) => pointInTop(placed(turn, true), size, at(0, 0)));
  assert.deepEqual(corners, [at(14, 20), at(12, 24), at(10, 22), at(10, 20)]);
});

test('a point inside keeps its distances from the sides', () => {
  // by hand: 1 from the left and 1/2 from the top; turned a quarter: 1 from the top and 1/2 from the right
  assert.deepEqual(pointInTop(placed(90, false), size, at(1, 0.5)), at(11.5, 21));
});
