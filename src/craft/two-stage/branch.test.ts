import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fewPieces } from '#craft/few-pieces';
import { attainableFrom, type Job, type Kind } from '#craft/strips';
import { drained } from '#ground/search';
import { treeFor } from './branch.ts';
import { lengthOfUses } from './column.ts';
import { masterFor } from './master.ts';
import { taskFor } from './task.ts';

/** With 44 twice, 33 three times and 12 six times on 132 the program in fractions comes to less than two strips, and three are needed. */
const widths = [44, 33, 12] as const;

/** Such pieces, with some full strips of each more, part of them higher than the others: few strips are enough in fractions and not in whole. */
const jobs: fc.Arbitrary<Job> = fc
  .record({
    counts: fc.constantFrom([2, 3, 6], [5, 7, 17], [5, 7, 6], [2, 7, 17]),
    higher: fc.tuple(fc.nat(2), fc.nat(3), fc.nat(6)),
    by: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ counts, higher, by }) => ({
    width: 132,
    kinds: widths.flatMap((width, i): Kind[] => {
      const high = higher[i] as number;
      const low = (counts[i] as number) - high;
      return [
        { width, height: 5, count: low, mayTurn: false },
        { width, height: 5 + by, count: high, mayTurn: false },
      ].filter(({ count }) => count > 0);
    }),
  }));

test('the proof alone comes to the least length, however much longer layouts are of interest', () => {
  let over = 0;
  fc.assert(
    fc.property(jobs, fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 9 }), (job, more, ahead) => {
      const task = taskFor(job);
      // every choice of pieces and strips tried
      const least = (fewPieces({ job, cutting: { stages: 2 } })?.length ?? Number.NaN) / task.heightUnit;
      fc.pre(!Number.isNaN(least));
      const longest = least + more;
      const round = (bound: number): number => attainableFrom(bound, task.heights);
      const helper = { solver: null, owed: 0 };
      const tree = treeFor({ master: masterFor(task), bound: 0, longest: longest + 1, helper, round });
      let best = longest + 1;
      for (let parts = 0; parts < 400 && tree.bound() < best && !tree.isOver(); parts++) {
        // near its bound the tree comes upon no layout, and must prove that there is none
        const found = drained(tree.advance(Math.min(best - 1, tree.bound() + ahead)));
        if (found !== null) best = Math.min(best, lengthOfUses(task, found));
        assert.ok(Math.min(tree.bound(), best) <= least, `${tree.bound()} and ${best} above ${least}`);
      }
      assert.ok(best >= least);
      if (best === least && tree.bound() >= least) over++;
    }),
    { seed: 19, numRuns: 100 },
  );
  assert.ok(over >= 70, `${over} of 100`);
});
