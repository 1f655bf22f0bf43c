import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { countsOf, type Job, type Kind, lengthOf, type StripsFound, widthOf } from '#craft/strips';
import { searchTwoStages } from '#craft/two-stage';
import { openSolver } from './index.ts';

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

test('small jobs end proven, as short as trying every way, with a solver or without', () => {
  fc.assert(
    fc.property(smallJob, fc.boolean(), (job, withSolver) => {
      const found = after({ job, solver: withSolver ? solver : null, shop: null }, 100);
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

/** Set gcut1 of Beasley 1985 with the demands of Cintra, Miyazawa, Wakabayashi and Xavier 2008: width, height, count on 250. */
const orders = [
  [167, 184, 90],
  [114, 118, 75],
  [167, 152, 71],
  [83, 140, 13],
  [70, 86, 39],
  [143, 166, 79],
  [120, 160, 63],
  [66, 148, 93],
  [87, 141, 61],
  [69, 165, 85],
] as const;

test('669 pieces of a published set are proven least, lying as given and turned', () => {
  // measured by two programs written apart, both with this bound: 51604 and 50611
  for (const [mayTurn, least] of [
    [false, 51604],
    [true, 50611],
  ] as const) {
    const kinds = orders.map(([w, h, count]) => {
      const [width, height] = mayTurn ? [Math.min(w, h), Math.max(w, h)] : [w, h];
      return { width, height, count, mayTurn };
    });
    const found = after({ job: { width: 250, kinds }, solver, shop: null }, 200);
    assert.deepEqual([found.length, found.bound], [least, least]);
  }
});

/** Category C2, first problem, of Hopper and Turton 2001: 28 pieces on 60. */
const jumble = [
  ...[
    [7, 5, 1],
    [14, 5, 2],
    [14, 8, 1],
    [4, 8, 1],
    [21, 13, 1],
    [7, 11, 1],
    [14, 11, 1],
    [4, 5, 1],
    [18, 3, 1],
  ],
  ...[
    [21, 3, 1],
    [17, 11, 1],
    [4, 11, 1],
    [7, 4, 1],
    [5, 4, 1],
    [6, 7, 1],
    [18, 5, 2],
    [3, 5, 1],
    [7, 3, 1],
  ],
  ...[
    [5, 3, 1],
    [18, 4, 1],
    [3, 4, 1],
    [12, 2, 1],
    [6, 2, 1],
    [21, 5, 1],
    [17, 3, 1],
    [4, 3, 1],
  ],
] as const;

test('a published jumble of 28 pieces is proven least in strips', () => {
  // measured by two programs written apart: 39
  const kinds = jumble.map(([width, height, count]) => ({
    width: width as number,
    height: height as number,
    count: count as number,
    mayTurn: false,
  }));
  const found = after({ job: { width: 60, kinds }, solver, shop: null }, 300);
  assert.deepEqual([found.length, found.bound], [39, 39]);
});
