import assert from 'node:assert/strict';
import { test } from 'node:test';
import { briefName } from './brief-name.ts';

test('a name of up to 28 signs stays, a longer one ends in an ellipsis and is no longer than that', () => {
  assert.equal(briefName('Oat'), 'Oat');
  assert.equal(briefName('é'.repeat(28)), 'é'.repeat(28));
  assert.equal(briefName('A deep and rather warm shade of evening'), 'A deep and rather warm shad…');
  // by hand: the 27th sign is a space, and none stands before the ellipsis
  assert.equal(briefName('Twenty-six signs with ones a b'), 'Twenty-six signs with ones…');
});
