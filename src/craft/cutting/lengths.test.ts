import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { joinedStrip } from './lengths.ts';

const pieces = (long: number): readonly number[] =>
  joinedStrip({ long: length(long), width: length(40), seam: length(0.25) });

test('a strip longer than the cloth is wide is whole widths and what is missing, two allowances a join', () => {
  assert.deepEqual(pieces(64.5), [40, 25]); // 40 + 25 − 1/2, by hand
  assert.deepEqual(pieces(40), [40]);
});

test('a scrap at the end is shared with the piece before it', () => {
  assert.deepEqual(pieces(40.5), [21, 20]); // 41 in two pieces, the first in whole inches; 21 + 20 − 1/2
  assert.deepEqual(pieces(81), [40, 21, 21]); // 40 + 42 shared; 82 − two joins of 1/2
});
