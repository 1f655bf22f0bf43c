import assert from 'node:assert/strict';
import { test } from 'node:test';
import { keptWidth } from './kept-width.ts';

test('what is kept of a photograph is as wide as its share of the whole, exactly', () => {
  assert.equal(keptWidth({ width: '9', share: [0, 100], unit: 'in' }), '9');
  // a quarter to the end of 9 in: 6¾
  assert.equal(keptWidth({ width: '9', share: [25, 100], unit: 'in' }), '6 3/4');
  assert.equal(keptWidth({ width: '2 1/2', share: [10, 60], unit: 'in' }), '1 1/4');
  assert.equal(keptWidth({ width: '30', share: [1, 34], unit: 'cm' }), '9.9');
  // what names its own unit keeps it where nothing is cut away
  assert.equal(keptWidth({ width: '20 cm', share: [0, 100], unit: 'in' }), '20 cm');
});
