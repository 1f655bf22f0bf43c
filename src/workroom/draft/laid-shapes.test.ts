import assert from 'node:assert/strict';
import { test } from 'node:test';
import { at, boxOf } from '#ground/plane';
import { fittedOn, keptOn, type Laying, outlineOfLaid } from './laid-shapes.ts';

const square: Laying = { shape: 'square', across: 6, down: 1, turn: 0 };

test('a shape lies within the block, also on a grid that is lower than wide, or has fewer squares than before', () => {
  for (const shape of ['square', 'rectangle', 'half-square', 'quarter-square'] as const) {
    for (const grid of [
      [8, 4],
      [4, 8],
      [3, 3],
    ] as const) {
      const laying = fittedOn(grid, { ...square, down: 7, shape });
      const { x, y, width, height } = boxOf(outlineOfLaid(laying, keptOn(grid, laying, at(2, 2))) ?? []);
      const isWithin = x >= 0 && y >= 0 && x + width <= grid[0] && y + height <= grid[1];
      assert.ok(isWithin && width > 0, `${shape} on ${grid.join(' by ')}`);
    }
  }
});

test('a shape that there is room for stays as large as it was asked for', () => {
  assert.deepEqual(fittedOn([8, 8], square), square);
  const rectangle: Laying = { ...square, shape: 'rectangle' };
  assert.deepEqual(fittedOn([8, 4], rectangle), rectangle);
});

test('a turn is a quarter clockwise: the square corner goes from the upper left to the upper right', () => {
  const half: Laying = { shape: 'half-square', across: 2, down: 2, turn: 0 };
  assert.deepEqual(outlineOfLaid(half, at(0, 0)), [at(0, 0), at(2, 0), at(0, 2)]);
  assert.deepEqual(outlineOfLaid({ ...half, turn: 1 }, at(0, 0)), [at(2, 0), at(2, 2), at(0, 0)]);
  const quarter: Laying = { ...half, shape: 'quarter-square', turn: 1 };
  // its long side at the right, its point in the middle
  assert.deepEqual(outlineOfLaid(quarter, at(0, 0)), [at(2, 0), at(2, 2), at(1, 1)]);
});
