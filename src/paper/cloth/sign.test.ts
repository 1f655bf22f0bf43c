import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planOf, specimenDocument } from '#paper/specimen';
import { hatchFor } from './hatch.ts';
import { lettersFor } from './letters.ts';
import { clothSignsFor, signOf } from './sign.ts';

test('letters run A to Z and then in pairs, as in a ledger', () => {
  // derived by hand: 26 single letters, then 26 × 26 pairs, so index 702 is the first of three
  assert.deepEqual([0, 25, 26, 27, 51, 52, 701, 702].map(lettersFor), ['A', 'Z', 'AA', 'AB', 'AZ', 'BA', 'ZZ', 'AAA']);
});

test('no two of the first two hundred cloths share a hatch', () => {
  const hatches = Array.from({ length: 200 }, (_, index) => JSON.stringify(hatchFor(index)));
  assert.equal(new Set(hatches).size, 200);
});

test('every cloth of a plan has its own letter, in the plan’s order', () => {
  const signs = clothSignsFor(planOf(specimenDocument));
  assert.deepEqual(
    [...signs.values()].map(({ letter, name }) => [letter, name]),
    [
      ['A', 'Brick'],
      ['B', 'Oat'],
      ['C', 'Bark'],
    ],
  );
  assert.throws(() => signOf(signs, 'linen'), /does not list: linen/);
});
