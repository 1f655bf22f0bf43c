// Laws of layouts on random pieces: nothing is lost, no bound lies above a layout, and what must not matter does not.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { checkLayout, type Demand, planLayout } from '#craft/cutting';
import { fewPieces } from '#craft/few-pieces';
import { searchLayout } from '#craft/layout';
import { length } from '#craft/measure';
import {
  type Cutting,
  type IntegerSolver,
  type Job,
  type Kind,
  lengthOf,
  levelChoicesFor,
  levelsFor,
  type StripSearch,
  type StripsFound,
} from '#craft/strips';
import { searchThreeStages } from '#craft/three-stage';
import { searchTwoStages } from '#craft/two-stage';
import { openSolver } from '#solver';
import { layoutFaults, placedPieces } from '../../bench/layouts/checked.ts';

/** Of the bounds: while fuzzing ten thousand random jobs, whatever number other laws are tried with. */
const boundRuns = process.env.SEAMSTEAD_RUNS === undefined ? 40 : 10_000;

const kinds = fc.record({
  across: fc.integer({ min: 2, max: 30 }),
  along: fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 2, max: 30 }) }, fc.integer({ min: 45, max: 90 })),
  count: fc.integer({ min: 1, max: 9 }),
  mayTurn: fc.boolean(),
});

/** A piece longer than the cloth is wide cannot turn; one that may stands on its short side. */
const jobs: fc.Arbitrary<Job> = fc
  .record({
    width: fc.integer({ min: 30, max: 60 }),
    sizes: fc.uniqueArray(kinds, {
      minLength: 1,
      maxLength: 7,
      size: 'max',
      selector: ({ across, along }) => [across, along].sort((a, b) => a - b).join('x'),
    }),
  })
  .map(({ width, sizes }) => ({
    width,
    kinds: sizes.map(({ across, along, count, mayTurn }): Kind => {
      const free = mayTurn && across !== along && along <= width;
      const flat = free && across > along;
      return { width: flat ? along : across, height: flat ? across : along, count, mayTurn: free };
    }),
  }));

const flat: Cutting = { stages: 2 };
const cuttings: Readonly<Record<string, Cutting>> = {
  'two stages': flat,
  'three stages, strips as high as a piece': { stages: 3, stripHeights: 'piece' },
  'three stages': { stages: 3, stripHeights: 'any' },
};

const highs = await openSolver();
const solvers = fc.constantFrom<IntegerSolver | null>(null, highs);

const searchFor = (job: Job, cutting: Cutting, solver: IntegerSolver | null = null): StripSearch =>
  cutting.stages === 2
    ? searchTwoStages({ job, solver, shop: null })
    : searchThreeStages({ job, stripHeights: cutting.stripHeights, solver, shop: null, start: null });

/** After so many steps, or at its end. */
const stepped = (search: StripSearch, steps: number): StripsFound => {
  let next = search.next();
  for (let step = 1; step < steps && next.done !== true; step++) next = search.next();
  return next.value;
};

const fixed = (job: Job): Job => ({ ...job, kinds: job.kinds.map((kind) => ({ ...kind, mayTurn: false })) });

for (const [name, cutting] of Object.entries(cuttings)) {
  test(`layouts in ${name}: every one of a search is sound, and none of its bounds lies above any layout`, () => {
    fc.assert(
      fc.property(jobs, fc.integer({ min: 1, max: 12 }), solvers, (job, steps, solver) => {
        const found = stepped(searchFor(job, cutting, solver), steps);
        const { strips, bound } = found;
        assert.deepEqual(layoutFaults({ job, cutting, strips, length: found.length }), []);
        assert.equal(lengthOf(strips), found.length);
        assert.ok(bound <= found.length, `bound ${bound} of ${found.length}`);
        // layouts that others made: plain levels, turned or not, and the least length where that can be had
        const plain = levelChoicesFor(job)
          .filter(({ piling }) => piling === 'single')
          .map((choice) => lengthOf(levelsFor(job, choice)));
        const least = fewPieces({ job, cutting })?.length ?? Number.POSITIVE_INFINITY;
        const other = stepped(searchTwoStages({ job: fixed(job), solver: null, shop: null }), 4).length;
        const shortest = Math.min(...plain, least, other);
        assert.ok(bound <= shortest, `bound ${bound} above a layout of ${shortest}`);
        if (least < Number.POSITIVE_INFINITY)
          assert.ok(found.length >= least, `${found.length} below the least ${least}`);
      }),
      { seed: 51, numRuns: boundRuns },
    );
  });

  test(`layouts in ${name}: pieces and what is left make up the cloth`, () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { strips, length: long } = stepped(searchFor(job, cutting), 3);
        const placed = placedPieces({ job, strips });
        const cut = placed.reduce((sum, { width, height }) => sum + width * height, 0);
        assert.equal(cut + leftOver(job, placed, long), job.width * long);
      }),
      { seed: 52, numRuns: 40 },
    );
  });

  test(`layouts in ${name}: the same steps find the same`, () => {
    fc.assert(
      fc.property(jobs, fc.integer({ min: 2, max: 8 }), solvers, (job, steps, solver) => {
        const [a, b] = [searchFor(job, cutting, solver), searchFor(job, cutting, solver)];
        assert.deepEqual(stepped(a, steps), stepped(b, steps));
      }),
      { seed: 53, numRuns: 20 },
    );
  });
}

const through = (job: Job, cutting: Cutting, steps: number): number =>
  stepped(searchLayout({ job, cutting, shop: null, solver: null }), steps).length;

test('layouts: three stages are never longer than two, step for step', () => {
  fc.assert(
    fc.property(jobs, fc.integer({ min: 1, max: 6 }), (job, steps) => {
      const two = through(job, flat, steps);
      // one step in four of the search for three stages is one of that for two
      for (const stripHeights of ['piece', 'any'] as const)
        assert.ok(through(job, { stages: 3, stripHeights }, 4 * steps) <= two);
    }),
    { seed: 58, numRuns: 20 },
  );
});

/** Unit squares of the cloth that no piece covers, counted one by one. */
const leftOver = (job: Job, placed: ReturnType<typeof placedPieces>, long: number): number => {
  const covered = new Uint8Array(job.width * long);
  for (const { x, y, width, height } of placed)
    for (let row = y; row < y + height; row++) covered.fill(1, row * job.width + x, row * job.width + x + width);
  return covered.reduce((left, one) => left + 1 - one, 0);
};

const demandsOf = (job: Job): readonly Demand[] =>
  job.kinds.map(({ width, height, count, mayTurn }) => ({
    across: length(width / 8),
    along: length(height / 8),
    count,
    mayTurn,
  }));

const planned = (job: Job, demands: readonly Demand[] = demandsOf(job)) =>
  planLayout({ width: length(job.width / 8), demands, budget: { steps: 6 } });

test('planned cloth: exactly the pieces demanded, and no bound above the length', () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const { layout, bound } = planned(job);
      assert.deepEqual(checkLayout({ layout, width: length(job.width / 8), demands: demandsOf(job) }), []);
      assert.ok(bound <= layout.length);
    }),
    { seed: 54, numRuns: 30 },
  );
});

test('planned cloth: the order in which pieces are listed changes neither length nor bound', () => {
  fc.assert(
    fc.property(jobs, fc.integer({ min: 0, max: 6 }), (job, by) => {
      const demands = demandsOf(job);
      const turnedRound = [...demands.slice(by), ...demands.slice(0, by)].reverse();
      const [a, b] = [planned(job, demands), planned(job, turnedRound)];
      assert.deepEqual([a.layout.length, a.bound], [b.layout.length, b.bound]);
    }),
    { seed: 55, numRuns: 30 },
  );
});

test('planned cloth: cloth and pieces of twice the size take twice the length', () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const doubled = demandsOf(job).map((demand) => ({
        ...demand,
        across: length(2 * demand.across),
        along: length(2 * demand.along),
      }));
      const twice = planLayout({ width: length(job.width / 4), demands: doubled, budget: { steps: 6 } });
      const once = planned(job);
      assert.deepEqual([twice.layout.length, twice.bound], [2 * once.layout.length, 2 * once.bound]);
    }),
    { seed: 56, numRuns: 30 },
  );
});

test('planned cloth: leave to turn never costs cloth', () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const still = demandsOf(job).map((demand) => ({ ...demand, mayTurn: false }));
      assert.ok(planned(job).layout.length <= planned(job, still).layout.length);
    }),
    { seed: 57, numRuns: 30 },
  );
});
