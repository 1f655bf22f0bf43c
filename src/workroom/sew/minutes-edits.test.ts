import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { usualMinutes } from '#craft/minutes';
import { minutesShown, minutesTaken, resetMinutes, takeMinutes } from './minutes-edits.ts';
import { minuteParts } from './minutes-words.ts';

test('minutes are read with a point, a comma or in seconds; nothing written is ours; what cannot be read is refused', () => {
  assert.deepEqual(['0.4', ' 0,45 ', '24 s', '90s', '2 min', '60', '', '0'].map(minutesTaken), [
    0.4,
    0.45,
    0.4,
    1.5,
    2,
    60,
    null,
    0,
  ]);
  assert.deepEqual(
    ['61', '3601 s', '-1', 'half', '1/2', '0.4 h', '1e3', '.'].map(minutesTaken),
    Array(8).fill(undefined),
  );
  assert.equal(minutesTaken(minutesShown(0.4)), 0.4);
});

test('a figure goes into the document alone, and out of it again; the table goes when nothing is left in it', () => {
  const draft: Pick<QuiltDocument, 'minutes'> = {};
  takeMinutes(draft, { key: 'press', minutes: 0.7 });
  takeMinutes(draft, { key: 'cut', minutes: 0.2 });
  assert.deepEqual(draft.minutes, { press: 0.7, cut: 0.2 });
  takeMinutes(draft, { key: 'press', minutes: null });
  assert.deepEqual(draft.minutes, { cut: 0.2 });
  takeMinutes(draft, { key: 'cut', minutes: null });
  assert.deepEqual(draft, {});
  takeMinutes(draft, { key: 'cut', minutes: 1 });
  resetMinutes(draft);
  assert.deepEqual(draft, {});
});

test('every figure of the table has its field, once', () => {
  const keys = minuteParts.flatMap(({ lines }) => lines.map(([key]) => key));
  assert.deepEqual(keys.toSorted(), Object.keys(usualMinutes).toSorted());
});
