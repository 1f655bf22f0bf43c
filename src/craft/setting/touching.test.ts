import assert from 'node:assert/strict';
import { test } from 'node:test';
import { touchingPairs } from '#craft/setting';
import { at, type Polygon } from '#ground/plane';

const box = (x: number, y: number, width: number, height: number): Polygon => [
  at(x, y),
  at(x + width, y),
  at(x + width, y + height),
  at(x, y + height),
];

test('outlines touch along an edge, also along part of one, and not at a corner', () => {
  // by hand: 0 above 1 and 2, which lie side by side; 3 meets 2 at a corner only
  const outlines = [box(0, 0, 2, 1), box(0, 1, 1, 1), box(1, 1, 1, 1), box(2, 2, 1, 1)];
  assert.deepEqual(touchingPairs(outlines, 1e-6), [
    [0, 1],
    [0, 2],
    [1, 2],
  ]);
});

test('outlines touch along slanted edges whichever way these run', () => {
  const outlines: readonly Polygon[] = [
    [at(0, 0), at(3, 0), at(0, 2)],
    [at(3, 0), at(3, 2), at(0, 2)],
    [at(3, 0.5), at(5, 0.5), at(5, 1)],
  ];
  // by hand: the third has its left corner alone on the edge of the second
  assert.deepEqual(touchingPairs(outlines, 1e-6), [[0, 1]]);
});
