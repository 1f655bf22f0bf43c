import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { readSeamTest, seamTestFor } from './seam-test.ts';

const quarter = { seam: length(0.25), unit: 'in' } as const;

const read = (written: string) => {
  const outcome = readSeamTest(written, quarter);
  assert.ok(outcome.ok, JSON.stringify(outcome));
  return outcome.value;
};

test('three strips of 1 1/2 in show 1 in in the middle and 3 1/2 in together', () => {
  // middle: Utah guild's blog, "That Pesky 1/4" Seam", 7 June 2012 (S38a); together: a teacher's note, May 2012 (S38b)
  const { cut, middle, total } = seamTestFor(length(0.25), 'in');
  assert.deepEqual([cut[0], middle, total], [1.5, 1, 3.5]);
});

test('with a seam of 0.75 cm three strips of 4.5 cm show 3 cm and 10.5 cm', () => {
  // derived: docs/formulas.md#diagnosis
  const { cut, middle, total } = seamTestFor(length(0.75), 'cm');
  assert.deepEqual([cut[0], middle, total], [4.5, 3, 10.5]);
});

test('strips that come to 3 3/8 in were sewn 1/32 in too wide, and wider ones too narrow', () => {
  // derived: 3 1/2 − 4 · 1/32 = 3 3/8; S38b: wider means that the seam is too narrow
  const wide = read('middle 15/16, total 3 3/8');
  assert.equal(wide.verdict, 'wide');
  assert.ok(Math.abs(wide.allowance.value - 1 / 32) < 1e-9);
  assert.equal(read('total 3 5/8').verdict, 'narrow');
  assert.equal(read('middle 1; total 3 1/2').verdict, 'true');
});

test('a comma within a number marks decimals, and after one parts the two', () => {
  assert.deepEqual(read('middle 0,9375, total 3,375'), read('middle 0.9375; total 3.375'));
});

test('a middle and a whole that no seam explains are told to disagree', () => {
  assert.equal(read('middle 1, total 3 1/4').doubtful, true);
  assert.equal(read('middle 15/16, total 3 3/8').doubtful, false);
});

test('what cannot be read, or cannot be, is refused', () => {
  for (const [written, code] of [
    ['', 'seam-test/unreadable'],
    ['left 1', 'seam-test/unreadable'],
    ['middle one', 'seam-test/length'],
    ['middle 4', 'seam-test/impossible'],
  ] as const) {
    const outcome = readSeamTest(written, quarter);
    assert.ok(!outcome.ok);
    assert.equal(outcome.problems[0]?.code, code);
  }
});
