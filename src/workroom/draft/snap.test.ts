import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Drawn } from '#craft/redrawing';
import { at } from '#ground/plane';
import { cornersOf, isOnSeam, snapped, steppedFrom } from './snap.ts';

/** Four squares a side, cut once from the upper left to the lower right, and the lower left part once more from its middle. */
const drawn: Drawn = {
  grid: [4, 4],
  patches: [
    { tone: 'a', points: [at(0, 0), at(4, 0), at(4, 4)] },
    { tone: 'b', points: [at(0, 0), at(2.5, 2.5), at(0, 4)] },
    { tone: 'c', points: [at(2.5, 2.5), at(4, 4), at(0, 4)] },
  ],
};

test('a place comes to the lines of the grid and their parts', () => {
  assert.deepEqual(snapped(at(3.1, 0.9), { drawn, parts: 1 }, 0.3), at(3, 1));
  assert.deepEqual(snapped(at(3.3, 0.6), { drawn, parts: 2 }, 0.1), at(3.5, 0.5));
  assert.deepEqual(snapped(at(9, -3), { drawn, parts: 1 }, 0.3), at(4, 0));
});

test('a place comes to a corner that lies on no line, and to where a seam crosses one', () => {
  assert.deepEqual(snapped(at(2.6, 2.45), { drawn, parts: 1 }, 0.3), at(2.5, 2.5));
  // the seam from 2.5, 2.5 to 0, 4 crosses the upright line at 1: 2.5 + 1.5 · (1.5 / 2.5) = 3.4
  const { x, y } = snapped(at(1.02, 3.36), { drawn, parts: 1 }, 0.3);
  assert.deepEqual([x, Math.round(y * 1e9) / 1e9], [1, 3.4]);
});

test('arrows stop at every line and at every seam on the way', () => {
  const table = { drawn, parts: 1 };
  assert.deepEqual(steppedFrom(at(0, 1), 'ArrowRight', table), at(1, 1));
  // level with the corner at 2.5 the seams stop the hand there
  assert.deepEqual(steppedFrom(at(2, 2.5), 'ArrowRight', table), at(2.5, 2.5));
  assert.deepEqual(steppedFrom(at(2.5, 2.5), 'ArrowRight', table), at(3, 2.5));
  assert.deepEqual(steppedFrom(at(3, 2), 'ArrowDown', table), at(3, 3));
  assert.deepEqual(steppedFrom(at(4, 2), 'ArrowRight', table), at(4, 2));
  assert.deepEqual(steppedFrom(at(0, 0), 'ArrowUp', table), at(0, 0));
});

test('corners stand once each, and seams and edges are known', () => {
  assert.deepEqual(cornersOf(drawn), [at(0, 0), at(4, 0), at(2.5, 2.5), at(0, 4), at(4, 4)]);
  assert.ok(isOnSeam(at(1, 1), drawn) && isOnSeam(at(3, 0), drawn) && !isOnSeam(at(3, 1), drawn));
});
