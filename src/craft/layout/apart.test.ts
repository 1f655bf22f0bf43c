import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fewPieces } from '#craft/few-pieces';
import { type Cutting, countsOf, type Kind, lengthOf } from '#craft/strips';
import { partedOf } from './apart.ts';
import { openLayoutSearch } from './open.ts';

const kind = (width: number, height: number, count: number, mayTurn = false): Kind => ({
  width,
  height,
  count,
  mayTurn,
});

test('pieces beside which no other has room are strips of their own', () => {
  // by hand, on 20: beside 17 there is 3, beside 12 there is 8; the narrowest piece is 4
  const parted = partedOf({ width: 20, kinds: [kind(17, 5, 2), kind(12, 6, 1), kind(4, 4, 3)] });
  assert.deepEqual(
    parted.alone.map(({ pattern, times }) => [pattern.height, times]),
    [[5, 2]],
  );
  assert.deepEqual(parted.rest.kinds, [kind(12, 6, 1), kind(4, 4, 3)]);
});

test('a piece that may turn is alone only where it leaves no room either way, and lies the lower way', () => {
  // by hand, on 20: 11 by 12 has its like beside it neither way; 9 by 14 has where it stands upright
  const alone = partedOf({ width: 20, kinds: [kind(11, 12, 2, true)] });
  assert.deepEqual([lengthOf(alone.alone), alone.rest.kinds], [22, []]);
  assert.deepEqual(partedOf({ width: 20, kinds: [kind(9, 14, 2, true)] }).alone, []);
});

test('of one kind the last piece is alone where it is the only one', () => {
  assert.equal(lengthOf(partedOf({ width: 20, kinds: [kind(3, 7, 1)] }).alone), 7);
  assert.deepEqual(partedOf({ width: 20, kinds: [kind(3, 7, 2)] }).alone, []);
});

const cuttings: readonly Cutting[] = [{ stages: 2 }, { stages: 3, stripHeights: 'any' }];

test('with some pieces set apart a layout is as short as the shortest of all', () => {
  const size = fc.record({
    across: fc.oneof(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 10, max: 18 })),
    along: fc.integer({ min: 1, max: 9 }),
    count: fc.integer({ min: 1, max: 2 }),
    mayTurn: fc.boolean(),
  });
  const jobs = fc.array(size, { minLength: 1, maxLength: 4 }).map((sizes) => ({
    width: 18,
    kinds: sizes.map(({ across, along, count, mayTurn }) =>
      mayTurn ? kind(Math.min(across, along), Math.max(across, along), count, true) : kind(across, along, count),
    ),
  }));
  fc.assert(
    fc.property(jobs, fc.constantFrom(...cuttings), (job, cutting) => {
      const search = openLayoutSearch({ job, cutting, shop: null, solver: null });
      search.advance(4);
      const { strips, length, bound } = search.found();
      const least = fewPieces({ job, cutting })?.length;
      assert.deepEqual([length, bound, lengthOf(strips)], [least, least, least]);
      const made = job.kinds.map((_, i) =>
        strips.reduce((sum, s) => sum + s.times * (countsOf(s.pattern, job.kinds.length)[i] ?? 0), 0),
      );
      assert.ok(job.kinds.every(({ count }, i) => (made[i] ?? 0) >= count));
    }),
    { seed: 5, numRuns: 200 },
  );
});
