import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { evenLines } from './quilting.ts';

test('a quilt of 64 in whose batting allows 8 in takes 7 lines, 8 in apart', () => {
  // by hand: 64 / 8 = 8 spans, 7 lines between them
  assert.deepEqual(evenLines(length(64), length(8)), { count: 7, apart: 8 });
});

test('what does not divide evenly comes closer, never further apart', () => {
  // by hand: 50 / 8 = 6.25, so 7 spans of 50/7
  assert.deepEqual(evenLines(length(50), length(8)), { count: 6, apart: 50 / 7 });
});

test('a quilt narrower than the spacing takes no line', () => {
  assert.deepEqual(evenLines(length(6), length(8)), { count: 0, apart: 6 });
});
