import assert from 'node:assert/strict';
import test from 'node:test';
import fc from 'fast-check';
import { type RankedItem, rankedKnapsackFor } from './ranked-knapsack.ts';

interface Offer extends RankedItem {
  readonly worth: number;
  readonly most: number;
}

const offers = fc.array(
  fc.record({
    size: fc.integer({ min: 1, max: 9 }),
    rank: fc.integer({ min: 1, max: 4 }),
    worth: fc.integer({ min: -2, max: 12 }),
    most: fc.integer({ min: 0, max: 5 }),
  }),
  { minLength: 1, maxLength: 4 },
);

/** Every choice of copies, one by one. */
const plainBest = (items: readonly Offer[], rank: number, room: number): number => {
  const [first, ...rest] = items;
  if (first === undefined) return 0;
  let best = plainBest(rest, rank, room);
  if (first.rank <= rank)
    for (let n = 1; n <= first.most && n * first.size <= room; n++)
      best = Math.max(best, n * first.worth + plainBest(rest, rank, room - n * first.size));
  return best;
};

test('each level and room has the worth that trying every choice finds, and its trace adds up to it', () => {
  fc.assert(
    fc.property(offers, fc.integer({ min: 0, max: 20 }), (items, room) => {
      const sack = rankedKnapsackFor(items, 20);
      const into = new Int32Array(items.length);
      // a first fill that must leave nothing behind
      sack.fill(
        items.map(() => 5),
        items.map(() => 3),
      );
      sack.fill(
        items.map((i) => i.worth),
        items.map((i) => i.most),
      );
      sack.ranks.forEach((rank, level) => {
        assert.equal(sack.worth(level, room), plainBest(items, rank, room));
        assert.equal(sack.worths(level)[room], sack.worth(level, room));
        sack.trace(level, room, into);
        let size = 0;
        let worth = 0;
        items.forEach((item, i) => {
          const n = into[i] as number;
          assert.ok(n === 0 || (item.rank <= rank && n <= item.most));
          size += n * item.size;
          worth += n * item.worth;
        });
        assert.ok(size <= room);
        assert.equal(worth, sack.worth(level, room));
      });
    }),
    { seed: 7, numRuns: 400 },
  );
});

test('thirteen copies are offered as one, two, four and six: any number up to thirteen can be taken', () => {
  // derived by hand: room for n copies of size 1 is worth n, and 13 at most
  const sack = rankedKnapsackFor([{ size: 1, rank: 1 }], 20);
  sack.fill([1], [13]);
  assert.deepEqual(Array.from(sack.worths(0)), [...Array(14).keys(), 13, 13, 13, 13, 13, 13, 13]);
});
