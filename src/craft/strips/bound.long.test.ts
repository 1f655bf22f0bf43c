import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { lowerBoundFor } from './bound.ts';
import { levelChoicesFor, levelsFor } from './levels.ts';
import { lengthOf } from './pattern.ts';

const piece = (width: number, height: number, count: number) => ({ width, height, count, mayTurn: false });

test('pieces wider than half the cloth lie one below another', () => {
  // derived by hand: 3 × 5, and the area alone would give 11
  assert.equal(lowerBoundFor({ width: 10, kinds: [piece(6, 5, 3)] }, 99), 15);
});

test('four pieces of a third and a bit need two strips', () => {
  // derived by hand: only two pieces of 4 fit in 10
  assert.equal(lowerBoundFor({ width: 10, kinds: [piece(4, 5, 4)] }, 99), 10);
});

test('a turning piece counts the shorter way, if that fits', () => {
  assert.equal(lowerBoundFor({ width: 10, kinds: [{ width: 3, height: 8, count: 1, mayTurn: true }] }, 99), 3);
  assert.equal(lowerBoundFor({ width: 5, kinds: [{ width: 3, height: 8, count: 1, mayTurn: true }] }, 99), 8);
});

test('a bound between two sums of heights is raised to the upper one', () => {
  // derived by hand: area 10 × 3 over width 4 is 7.5; lengths are multiples of 3; widths of 3 use only 3 of the 4
  assert.equal(lowerBoundFor({ width: 4, kinds: [piece(3, 3, 3), piece(1, 3, 1)] }, 99), 9);
});

test('no valid layout of 3,000 random jobs is shorter than its bound', () => {
  const kind = fc.record({
    width: fc.integer({ min: 1, max: 40 }),
    height: fc.integer({ min: 1, max: 60 }),
    count: fc.integer({ min: 1, max: 12 }),
    mayTurn: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.integer({ min: 40, max: 120 }), fc.array(kind, { minLength: 1, maxLength: 9 }), (width, listed) => {
      const kinds = listed.map((k) =>
        k.mayTurn && k.width > k.height ? { ...k, width: k.height, height: k.width } : k,
      );
      const job = { width, kinds: kinds.map((k) => ({ ...k, mayTurn: k.mayTurn && k.height <= width })) };
      const shortest = Math.min(...levelChoicesFor(job).map((choice) => lengthOf(levelsFor(job, choice))));
      // a bound is never above the length it is told of, so it is told of one twice as long
      assert.ok(lowerBoundFor(job, 2 * shortest) <= shortest);
    }),
    { seed: 51, numRuns: 3000 },
  );
});
