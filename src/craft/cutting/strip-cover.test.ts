import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Job } from '#craft/strips';
import {
  costOf,
  countsOf,
  type IntegerProgram,
  type IntegerSolver,
  isSolution,
  lengthOf,
  patternOf,
  type StripUse,
  stackOf,
  withoutSurplus,
} from '#craft/strips';
import { coveredBy, type Pool, poolWith } from './strip-cover.ts';

/** Tries every whole solution; for programs of a few columns. */
const trying: IntegerSolver = {
  minimise: (program) => {
    let best: readonly number[] | null = null;
    const go = (x: readonly number[]): void => {
      if (x.length === program.cost.length) {
        if (isSolution(program, x) && (best === null || costOf(program, x) < costOf(program, best))) best = x;
        return;
      }
      for (let n = 0; n <= (program.upper[x.length] ?? 0); n++) go([...x, n]);
    };
    go([]);
    if (best === null) return { status: 'none' };
    const objective = costOf(program, best);
    return { status: 'optimal', x: best, objective, bound: objective };
  },
};

const job: Job = {
  width: 10,
  kinds: [
    { width: 5, height: 4, count: 3, mayTurn: false },
    { width: 5, height: 3, count: 3, mayTurn: false },
  ],
};

const strip = (of: { readonly tall: number; readonly low: number; readonly times: number }): StripUse => ({
  pattern: patternOf([
    { stack: stackOf(job, [{ kind: 0, turned: false, times: 1 }]), times: of.tall },
    { stack: stackOf(job, [{ kind: 1, turned: false, times: 1 }]), times: of.low },
  ]),
  times: of.times,
});

const cutBy = (strips: readonly StripUse[]): readonly number[] =>
  job.kinds.map((_, i) => strips.reduce((n, s) => n + s.times * (countsOf(s.pattern, 2)[i] ?? 0), 0));

test('strips of several layouts join into a shorter one', () => {
  // derived by hand: 3 mixed strips take 12; two tall, one mixed and one low strip would take 4 + 4 + 3 = 11
  const best = [strip({ tall: 1, low: 1, times: 3 })];
  const pool: Pool = new Map();
  poolWith(pool, 2, [...best, strip({ tall: 2, low: 0, times: 1 }), strip({ tall: 0, low: 2, times: 1 })]);
  const covered = coveredBy({ job, pool, best, solver: trying });
  assert.ok(covered !== null);
  assert.equal(lengthOf(covered), 11);
  assert.deepEqual(cutBy(covered), [3, 3]);
});

test('nothing is returned where the pool has nothing shorter', () => {
  const best = [
    strip({ tall: 2, low: 0, times: 1 }),
    strip({ tall: 1, low: 1, times: 1 }),
    strip({ tall: 0, low: 2, times: 1 }),
  ];
  const pool: Pool = new Map();
  poolWith(pool, 2, best);
  assert.equal(coveredBy({ job, pool, best, solver: trying }), null);
});

test('what is cut beyond the demand is taken out, and strips left empty vanish', () => {
  // derived by hand: 4 tall and 6 low pieces for 3 and 3: a whole low strip goes, and one piece of each kind
  const strips = withoutSurplus(job, [strip({ tall: 2, low: 0, times: 2 }), strip({ tall: 0, low: 2, times: 3 })]);
  assert.deepEqual(cutBy(strips), [3, 3]);
  assert.equal(lengthOf(strips), 4 + 4 + 3 + 3);
});

test('a solution must be whole, within its limits and meet every row', () => {
  const program: IntegerProgram = {
    cost: [1, 1],
    upper: [2, 2],
    rows: [
      {
        least: 3,
        terms: [
          [0, 1],
          [1, 1],
        ],
      },
    ],
  };
  assert.equal(isSolution(program, [2, 1]), true);
  assert.equal(isSolution(program, [1, 1]), false);
  assert.equal(isSolution(program, [3, 0]), false);
  assert.equal(isSolution(program, [1.5, 1.5]), false);
  assert.equal(isSolution(program, [2]), false);
});
