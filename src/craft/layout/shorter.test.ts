import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fewPieces } from '#craft/few-pieces';
import { isTooShort } from '#craft/sheets';
import type { Cutting, Job, Kind, ShopStep } from '#craft/strips';
import { chanceFrom } from '#ground/chance';
import { drained } from '#ground/search';
import { proofFor } from './shorter.ts';

const any: Cutting = { stages: 3, stripHeights: 'any' };

const jobs: fc.Arbitrary<Job> = fc
  .array(
    fc.record({
      width: fc.integer({ min: 1, max: 9 }),
      height: fc.integer({ min: 1, max: 9 }),
      count: fc.integer({ min: 1, max: 2 }),
      mayTurn: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((kinds) => ({
    width: 14,
    kinds: kinds.map(
      (k): Kind => (k.mayTurn ? { ...k, width: Math.min(k.width, k.height), height: Math.max(k.width, k.height) } : k),
    ),
  }));

test('cloth is never said to be too short for pieces that it holds', () => {
  fc.assert(
    fc.property(jobs, (job) => {
      for (const cutting of [{ stages: 2 }, { stages: 3, stripHeights: 'piece' }, any] as const) {
        const least = fewPieces({ job, cutting })?.length as number;
        for (const length of [least, least + 1, least + 5])
          assert.equal(drained(isTooShort({ job, cutting, length })), false);
      }
    }),
    { seed: 6, numRuns: 150 },
  );
});

/** Four kinds of a dozen sashes 1 in wide on 26 1/2 in of cloth, in eighths. */
const sashes: Job = {
  width: 212,
  kinds: [51, 46, 31, 26].map((height) => ({ width: 8, height, count: 12, mayTurn: true })),
};

test('cloth may be too short though its area holds the pieces', () => {
  // 12 · 8 · (51 + 46 + 31 + 26) = 14784 on 212 · 70 = 14840; the heights beside one another leave more than the 56 over
  assert.equal(drained(isTooShort({ job: sashes, cutting: any, length: 70 })), true);
});

test('bounds never pass the shortest layout, and end at it where the pieces are few', () => {
  fc.assert(
    fc.property(jobs, fc.integer({ min: 0, max: 12 }), fc.boolean(), (job, more, isSold) => {
      const least = fewPieces({ job, cutting: any })?.length as number;
      const shop: ShopStep | null = isSold ? { step: 4, before: 1 } : null;
      const standing = { length: least + more, bound: 0 };
      const proof = proofFor({ job, cutting: any, shop, found: () => standing });
      for (;;) {
        const { value, done } = proof.next();
        if (done === true) {
          assert.equal(value?.length ?? standing.bound, least);
          return;
        }
        assert.ok(value <= least, `${value} above ${least}`);
        standing.bound = Math.max(standing.bound, value);
      }
    }),
    { seed: 7, numRuns: 150 },
  );
});

test('what the shop sells in a step less is ruled out before any other length', () => {
  // sold in steps of 20 after 10: 90 costs five steps, 70 four; by hand: 71 = 31 + 5 · 8 is the next sum of sides. Halving would
  // begin with 89, 74 and 66
  const standing = { length: 90, bound: 60 };
  const proof = proofFor({ job: sashes, cutting: any, shop: { step: 20, before: 10 }, found: () => standing });
  let raised = 60;
  while (raised === 60) raised = proof.next().value as number;
  assert.equal(raised, 71);
});

test('many kinds are left to the search', () => {
  const chance = chanceFrom(3);
  const size = (): number => 20 + Math.floor(chance() * 60);
  const kinds = Array.from({ length: 40 }, () => ({ width: size(), height: size(), count: 9, mayTurn: false }));
  const standing = { length: 2500, bound: 2000 };
  const proof = proofFor({ job: { width: 336, kinds }, cutting: any, shop: null, found: () => standing });
  assert.deepEqual(proof.next(), { value: null, done: true });
});
