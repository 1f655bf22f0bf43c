import assert from 'node:assert/strict';
import { test } from 'node:test';
import { valuesOf } from '#craft/fabric';

const classes = (...lightness: readonly number[]) => [
  ...valuesOf(new Map(lightness.map((own, i) => [`${i}`, own]))).values(),
];

test('cloths are parted at the two widest gaps', () => {
  // by hand: gaps 5, 25, 6, 30
  assert.deepEqual(classes(95, 65, 59, 34, 29), ['light', 'medium', 'medium', 'dark', 'dark']);
  // the same grey is dark among light cloths and light among dark ones
  assert.deepEqual(classes(60, 80, 95), ['dark', 'medium', 'light']);
  assert.deepEqual(classes(60, 40, 20), ['light', 'medium', 'dark']);
});

test('one gap parts light from dark', () => {
  assert.deepEqual(classes(80, 60), ['light', 'dark']);
  assert.deepEqual(classes(80, 79, 60), ['light', 'light', 'dark']);
});

test('without a gap the scale decides', () => {
  // a proposal, not a standard: light from 70, medium 40-70, dark below
  assert.deepEqual([classes(70), classes(69, 68), classes(39)], [['light'], ['medium', 'medium'], ['dark']]);
});
