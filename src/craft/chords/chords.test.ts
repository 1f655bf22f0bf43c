import assert from 'node:assert/strict';
import { test } from 'node:test';
import { box } from '#documents';
import { chordsOf, drawingOf } from './index.ts';

test('seams that lie very near each other, but not on one line, are seams of their own', () => {
  // of 64 across: a level seam at 34, and beside it one that is 0.0003 higher, four times as far as places that are one
  const outlines = [box(0, 0, 32, 34), box(0, 34, 32, 30), box(32, 0, 32, 33.9997), box(32, 33.9997, 32, 30.0003)];
  const drawing = drawingOf(outlines, 64e-6);
  assert.equal(chordsOf(drawing, [0, 1]).length, 1);
  assert.equal(chordsOf(drawing, [2, 3]).length, 1);
  assert.equal(chordsOf(drawing, [0, 1, 2, 3]).length, 1);
});
