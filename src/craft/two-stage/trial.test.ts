import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Job, Kind } from '#craft/strips';
import { countsOfUses, lengthOfUses } from './column.ts';
import type { CoverAnswer } from './cover.ts';
import { stripsWithin } from './enumerate.ts';
import { masterFor, pricesOf, solveByColumns } from './master.ts';
import { type Task, taskFor } from './task.ts';
import { coverByTrial } from './trial.ts';

/** Is there a layout within the limit, by the strips that the program's prices leave? In the task's units. */
const answerWithin = (task: Task, limit: number, steps: number): CoverAnswer => {
  const master = masterFor(task);
  assert.equal(solveByColumns(master, { rounds: 500, cutoff: 1e9 }).status, 'whole');
  const prices = new Float64Array(task.kinds);
  const costs = new Float64Array(task.heights.length);
  const slack = limit - pricesOf(master, prices, costs);
  const left = task.demand;
  const columns = stripsWithin({ task, prices, costs, left, slack, most: 1e5 });
  assert.ok(columns !== null);
  return coverByTrial({ task, columns, left, prices, costs, slack, cutoff: limit, steps });
};

/** The least length over every way to put the pieces into groups that fit side by side, each lying as it may. */
const leastOf = ({ width, kinds }: Job): number => {
  const pieces = kinds.flatMap((k) => Array.from({ length: k.count }, () => k));
  const groups: Kind[][] = [];
  let least = Number.POSITIVE_INFINITY;
  const put = (at: number): void => {
    const piece = pieces[at];
    if (piece === undefined) {
      least = Math.min(
        least,
        groups.reduce((sum, g) => sum + lowest(g, width), 0),
      );
      return;
    }
    for (const group of groups) {
      group.push(piece);
      if (lowest(group, width) < Number.POSITIVE_INFINITY) put(at + 1);
      group.pop();
    }
    groups.push([piece]);
    put(at + 1);
    groups.pop();
  };
  put(0);
  return least;
};

const lowest = (group: readonly Kind[], width: number): number => {
  const [first, ...others] = group;
  if (first === undefined) return width >= 0 ? 0 : Number.POSITIVE_INFINITY;
  const lies = first.mayTurn ? [first, { width: first.height, height: first.width }] : [first];
  return Math.min(
    ...lies.map((lie) =>
      lie.width > width ? Number.POSITIVE_INFINITY : Math.max(lie.height, lowest(others, width - lie.width)),
    ),
  );
};

const smallJob = fc
  .record({
    width: fc.integer({ min: 9, max: 14 }),
    kinds: fc.array(
      fc
        .record({
          width: fc.integer({ min: 1, max: 9 }),
          height: fc.integer({ min: 1, max: 9 }),
          count: fc.integer({ min: 1, max: 3 }),
          mayTurn: fc.boolean(),
        })
        .map((k) =>
          k.mayTurn ? { ...k, width: Math.min(k.width, k.height), height: Math.max(k.width, k.height) } : k,
        ),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .filter(({ kinds }) => kinds.reduce((n, k) => n + k.count, 0) <= 7);

test('strips are found within a limit exactly where putting the pieces in every way finds them', () => {
  fc.assert(
    fc.property(smallJob, fc.integer({ min: -2, max: 2 }), (job, by) => {
      const task = taskFor(job);
      const least = leastOf(job) / task.heightUnit;
      const limit = least + by;
      const answer = answerWithin(task, limit, 1e6);
      assert.equal(answer.status, by < 0 ? 'none' : 'found');
      if (answer.status !== 'found') return;
      assert.ok(lengthOfUses(task, answer.uses) <= limit && answer.bound <= limit);
      const given = countsOfUses(task, answer.uses);
      assert.ok(given.every((n, kind) => n >= (task.demand[kind] as number)));
    }),
    { seed: 31, numRuns: 300 },
  );
});

test('a trial that may put down no strip says that it was stopped, not that there is none', () => {
  const kinds = [{ width: 3, height: 4, count: 2, mayTurn: false }];
  const task = taskFor({ width: 7, kinds });
  assert.equal(answerWithin(task, 1, 0).status, 'stopped');
  assert.equal(answerWithin(task, 1, 1).status, 'found');
});
