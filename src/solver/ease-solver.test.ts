// With every strip there is in its pool and a solver, the eased layout against a plain exhaustive search.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { compareEase, type Effort, eased, effortOf } from '#craft/ease';
import { type Job, lengthOf, ownStripsFor, patternOf, type StripPattern, type StripUse, stackOf } from '#craft/strips';
import { openSolver } from './index.ts';

const solver = await openSolver();

/** All ways to part a list into groups. */
const partings = <T>(all: readonly T[]): readonly (readonly (readonly T[])[])[] => {
  const [first, ...others] = all;
  if (first === undefined) return [[]];
  return partings(others).flatMap((groups) => [
    [[first], ...groups],
    ...groups.map((group, i) => [[first, ...group], ...groups.filter((_, j) => j !== i)]),
  ]);
};

const stripsOf = (job: Job, pieces: readonly number[]): readonly StripPattern[] =>
  partings(pieces).flatMap((piles) => {
    const parts = piles.map((pile) => ({
      stack: stackOf(
        job,
        [...new Set(pile)].map((kind) => ({ kind, turned: false, times: pile.filter((k) => k === kind).length })),
      ),
      times: 1,
    }));
    return parts.reduce((all, p) => all + p.stack.width, 0) <= job.width ? [patternOf(parts)] : [];
  });

const exhaustive = (job: Job, longest: number): { readonly best: Effort; readonly pool: readonly StripPattern[] } => {
  const pieces = job.kinds.flatMap((k, i) => Array.from({ length: k.count }, () => i));
  const pool = new Map<string, StripPattern>();
  let best: Effort | null = null;
  for (const groups of partings(pieces)) {
    const choices = groups.map((group) => stripsOf(job, group));
    for (const pattern of choices.flat()) pool.set(JSON.stringify(pattern), pattern);
    let layouts: StripUse[][] = [[]];
    for (const some of choices) layouts = layouts.flatMap((l) => some.map((pattern) => [...l, { pattern, times: 1 }]));
    for (const strips of layouts) {
      const effort = effortOf(job, strips);
      if (effort.length <= longest && (best === null || compareEase(effort, best) < 0)) best = effort;
    }
  }
  return { best: best as Effort, pool: [...pool.values()] };
};

test('on tiny cloths no layout within the length has fewer heights, nor with these fewer measures, than the eased one', () => {
  const side = fc.integer({ min: 2, max: 7 });
  fc.assert(
    fc.property(
      fc.array(fc.record({ width: side, height: side, count: fc.integer({ min: 1, max: 2 }) }), {
        minLength: 1,
        maxLength: 3,
      }),
      fc.integer({ min: 0, max: 6 }),
      (kinds, more) => {
        const job: Job = { width: 12, kinds: kinds.slice(0, 3).map((k) => ({ ...k, mayTurn: false })) };
        const strips = ownStripsFor(job);
        const longest = lengthOf(strips) - 3 + more;
        const { best, pool } = exhaustive(job, longest);
        if (best === null) return;
        const found = effortOf(job, eased({ job, strips, pool, longest, solver }));
        const given = effortOf(job, strips);
        // where the given strips are too long already, they may stand
        if (given.length > longest && compareEase(given, best) <= 0) return;
        assert.deepEqual([found.heights, found.settings], [best.heights, best.settings], JSON.stringify(job));
      },
    ),
    { numRuns: 60, seed: 43 },
  );
});
