import assert from 'node:assert/strict';
import { test } from 'node:test';
import { liesOf } from './lies.ts';
import { stripHeightsWithin } from './strip-heights.ts';

const kinds = [
  { width: 4, height: 3, count: 2, mayTurn: false },
  { width: 2, height: 5, count: 1, mayTurn: false },
];

test('a strip of any height is as high as some of the pieces together, none more often than wanted', () => {
  // by hand: 3, 5, 3 + 3, 3 + 5, 3 + 3 + 5
  const lies = liesOf({ width: 10, kinds }, 'any');
  assert.deepEqual([...stripHeightsWithin(lies, 20)], [3, 5, 6, 8, 11]);
  assert.deepEqual([...stripHeightsWithin(lies, 8)], [3, 5, 6, 8]);
});

test('a piece that may turn gives one of its two heights', () => {
  // by hand: 2 or 5 for the one, 3 for the other
  const low = { width: 4, height: 3, count: 1, mayTurn: false };
  const job = { width: 10, kinds: [{ width: 2, height: 5, count: 1, mayTurn: true }, low] };
  assert.deepEqual([...stripHeightsWithin(liesOf(job, 'any'), 20)], [2, 3, 5, 8]);
});

test('strips that must be as high as a piece have the heights of pieces only', () => {
  assert.deepEqual([...stripHeightsWithin(liesOf({ width: 10, kinds }, 'piece'), 20)], [3, 5]);
});
