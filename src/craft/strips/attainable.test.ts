import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { attainableFrom, attainableUp, attainableWithin } from './attainable.ts';

test('between sums of 6, 9 and 20 the next one is found', () => {
  // derived by hand: 43 is the largest number that no 6s, 9s and 20s add up to (the well-known coin example)
  assert.equal(attainableUp(43, [6, 9, 20]), 44);
  assert.equal(attainableUp(44, [6, 9, 20]), 44);
  assert.equal(attainableUp(7, [6, 9, 20]), 9);
  assert.equal(attainableUp(0, [6, 9, 20]), 0);
});

test('a bound in fractions goes up to the next sum, a hair above a sum does not', () => {
  // by hand: sums of 6, 9 and 20 are 41 and 44, 42 = 7 · 6 and 45 = 5 · 9
  assert.deepEqual(
    [41.01, 42 + 1e-7, 42.01, 44.01].map((bound) => attainableFrom(bound, [6, 9, 20])),
    [42, 42, 44, 45],
  );
});

test('without heights nothing is raised', () => {
  assert.equal(attainableUp(7, []), 7);
});

test('the next sum agrees with listing all sums', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 0, max: 200 }),
      (heights, value) => {
        const sums = new Set([0]);
        for (let s = 0; s <= 300; s++) if (sums.has(s)) for (const h of heights) sums.add(s + h);
        let expected = value;
        while (!sums.has(expected)) expected++;
        assert.equal(attainableUp(value, heights), expected);
      },
    ),
    { seed: 31, numRuns: 500 },
  );
});

test('the largest width within a capacity agrees with trying every choice', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ size: fc.integer({ min: 1, max: 20 }), most: fc.integer({ min: 1, max: 3 }) }), {
        minLength: 1,
        maxLength: 4,
      }),
      fc.integer({ min: 1, max: 60 }),
      (sizes, capacity) => {
        const sums = sizes.reduce<readonly number[]>(
          (all, { size, most }) => all.flatMap((s) => Array.from({ length: most + 1 }, (_, n) => s + n * size)),
          [0],
        );
        assert.equal(attainableWithin(capacity, sizes), Math.max(...sums.filter((s) => s <= capacity)));
      },
    ),
    { seed: 32, numRuns: 500 },
  );
});
