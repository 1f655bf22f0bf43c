import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gcdOf } from './divisor.ts';

test('the greatest common divisor of several numbers', () => {
  // derived by hand
  assert.equal(gcdOf([12, 18, 30]), 6);
  assert.equal(gcdOf([]), 0);
});
