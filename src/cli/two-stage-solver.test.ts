import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { countsOf, type Job, type Kind, lengthOf, type StripsFound, widthOf } from '#craft/strips';
import { searchTwoStages } from '#craft/two-stage';
import { openSolver } from './solver.ts';

const solver = await openSolver();

const after = (order: Parameters<typeof searchTwoStages>[0], steps: number): StripsFound => {
  const search = searchTwoStages(order);
  let found = search.next();
  for (let n = 1; n < steps && !found.done; n++) found = search.next();
  return found.value;
};

/** Every piece once, beside others, inside the cloth and its strip. */
const assertWhole = (job: Job, found: StripsFound): void => {
  const given = job.kinds.map(() => 0);
  for (const { pattern, times } of found.strips) {
    let wide = 0;
    let high = 0;
    for (const { stack, times: beside } of pattern.parts) {
      assert.equal(stack.runs.length, 1);
      for (const run of stack.runs) {
        const kind = job.kinds[run.kind] as Kind;
        assert.equal(run.times, 1);
        assert.ok(!run.turned || kind.mayTurn);
        wide += beside * widthOf(kind, run.turned);
        high = Math.max(high, run.turned ? kind.width : kind.height);
      }
    }
    assert.ok(wide <= job.width && high === pattern.height);
    countsOf(pattern, given.length).forEach((n, i) => {
      given[i] = (given[i] as number) + n * times;
    });
  }
  assert.deepEqual(
    given,
    job.kinds.map((k) => k.count),
  );
  assert.equal(found.length, lengthOf(found.strips));
  assert.ok(found.bound <= found.length);
};

/** The least length over every way to put pieces one by one on strips. */
const plainLeast = (job: Job): number => {
  const pieces = job.kinds.flatMap((k) => Array.from({ length: k.count }, () => k));
  let least = Number.POSITIVE_INFINITY;
  const strips: { room: number; height: number }[] = [];
  const put = (at: number, length: number): void => {
    if (length >= least) return;
    const piece = pieces[at];
    if (piece === undefined) {
      least = length;
      return;
    }
    for (const turned of piece.mayTurn ? [false, true] : [false]) {
      const width = widthOf(piece, turned);
      const height = turned ? piece.width : piece.height;
      if (width > job.width) continue;
      for (const strip of strips) {
        if (strip.room < width) continue;
        const was = { ...strip };
        strip.room -= width;
        strip.height = Math.max(strip.height, height);
        put(at + 1, length + strip.height - was.height);
        strip.room = was.room;
        strip.height = was.height;
      }
      strips.push({ room: job.width - width, height });
      put(at + 1, length + height);
      strips.pop();
    }
  };
  put(0, 0);
  return least;
};

const smallJob = fc
  .record({
    width: fc.integer({ min: 8, max: 14 }),
    kinds: fc.array(
      fc.record({
        width: fc.integer({ min: 1, max: 8 }),
        height: fc.integer({ min: 1, max: 8 }),
        count: fc.integer({ min: 1, max: 3 }),
        mayTurn: fc.boolean(),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map((job) => ({
    ...job,
    kinds: job.kinds.map((k) =>
      k.mayTurn ? { ...k, width: Math.min(k.width, k.height), height: Math.max(k.width, k.height) } : k,
    ),
  }))
  .filter((job) => job.kinds.reduce((n, k) => n + k.count, 0) <= 7);

test('small jobs end proven, as short as trying every way', () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      const found = after({ job, solver, shop: null }, 400);
      assertWhole(job, found);
      const least = plainLeast(job);
      assert.equal(found.length, least);
      assert.equal(found.bound, least);
    }),
    { seed: 11, numRuns: 150 },
  );
});

test('no bound on the way is above the least length, with a solver or without', () => {
  fc.assert(
    fc.property(smallJob, fc.boolean(), (job, withSolver) => {
      const least = plainLeast(job);
      let steps = 0;
      for (const found of searchTwoStages({ job, solver: withSolver ? solver : null, shop: null })) {
        assertWhole(job, found);
        assert.ok(found.bound <= least && found.length >= least);
        if (++steps > 30) break;
      }
    }),
    { seed: 12, numRuns: 150 },
  );
});
