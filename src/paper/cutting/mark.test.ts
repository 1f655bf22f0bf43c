import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cutMark } from './mark.ts';

test('a size is marked by its cloth and its place in the cloth’s list', () => {
  // by definition
  assert.equal(cutMark('C', 2), 'C3');
});
