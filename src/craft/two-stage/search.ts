// The shortest layout of strips with pieces side by side: first at once, then better, and how short any can be.

import {
  attainableUp,
  type BoundKind,
  type IntegerSolver,
  type Job,
  lengthOf,
  levelChoicesFor,
  levelsFor,
  lowerBoundFor,
  type ShopStep,
  type StripSearch,
  type StripsFound,
  type StripUse,
  withoutSurplus,
} from '#craft/strips';
import { chanceFrom } from '#ground/chance';
import { treeFor } from './branch.ts';
import { type ColumnUse, columnOf, heightAt, stripsOf } from './column.ts';
import { dive } from './dive.ts';
import { levelBoundsFor, solveWithLevels } from './level-bounds.ts';
import { type Master, masterFor, pricesOf } from './master.ts';
import { freeStrips, merged, refill } from './neighbourhood.ts';
import { type Task, taskFor } from './task.ts';

export interface TwoStageOrder {
  readonly job: Job;
  /** Without a solver the search works by itself: it finds as much, and proves less. */
  readonly solver: IntegerSolver | null;
  /** What has to be bought is decided first, then the length. */
  readonly shop: ShopStep | null;
}

/** The best layout and bound so far; all lengths in the task's height units. */
interface Standing {
  uses: readonly ColumnUse[];
  length: number;
  bound: number;
  kind: BoundKind;
}

/**
 * @returns a search whose answer is a layout of strips, pieces side by side in each, and a proven bound; lengths in the job's units
 * @source docs/formulas.md#layout
 */
export function* searchTwoStages(order: TwoStageOrder): StripSearch {
  const { job } = order;
  const task = taskFor(job);
  const start = plainStart(job);
  const round = (bound: number): number => attainableUp(Math.ceil(bound - 1e-6 * (1 + bound * 1e-3)), task.heights);
  const best: Standing = {
    uses: columnsOf(task, start),
    length: lengthOf(start) / task.heightUnit,
    bound: round(lowerBoundFor(job, lengthOf(start)) / task.heightUnit),
    kind: 'area',
  };
  let strips = start;
  let shown = best.uses;
  const report = (): StripsFound => {
    if (best.uses !== shown) {
      strips = withoutSurplus(job, stripsOf(task, best.uses));
      shown = best.uses;
    }
    return { strips, length: lengthOf(strips), bound: best.bound * task.heightUnit, boundKind: best.kind };
  };
  yield report();
  if (best.length <= best.bound) return report();
  for (const _ of work(order, task, best, round)) {
    yield report();
    if (best.length <= best.bound) break;
  }
  return report();
}

function* work(
  order: TwoStageOrder,
  task: Task,
  best: Standing,
  round: (bound: number) => number,
): Generator<void, void, void> {
  const accept = (uses: readonly ColumnUse[] | null): void => {
    if (uses === null) return;
    const all = merged(task, uses);
    const length = all.reduce((sum, u) => sum + u.times * heightAt(task, u.column), 0);
    if (length > best.length) return;
    best.uses = all;
    best.length = length;
  };
  const raise = (bound: number, kind: BoundKind): void => {
    if (bound <= best.bound) return;
    best.bound = Math.min(bound, best.length);
    best.kind = kind;
  };
  const master = masterFor(task);
  const bounds = levelBoundsFor(task);
  for (const relaxed of solveWithLevels(master, bounds)) {
    raise(round(relaxed.bound), 'linear');
    yield;
  }
  raise(round(solveWithLevels(master, bounds).next().value.bound), 'linear');
  const first = dive({ master, cutoff: best.length, tries: 3, choices: 1000 });
  for (let s = first.next(); ; s = first.next()) {
    if (s.done) {
      accept(s.value);
      break;
    }
    yield;
  }
  const losses = lossesOf(master);
  const tree = treeFor({ master, bound: best.bound, longest: best.length, solver: order.solver, round });
  const chance = chanceFrom(1);
  for (;;) {
    for (let n = 0; n < 6; n++) {
      accept(yield* refillOnce({ task, best, losses, chance }));
      yield;
      if (best.length <= best.bound) return;
    }
    for (let n = 0; n < 2 && !tree.isOver(); n++) {
      accept(yield* tree.advance(best.length - 1));
      raise(Math.min(tree.bound(), best.length), 'integer');
      yield;
      if (best.length <= best.bound) return;
    }
  }
}

/** What a strip costs beyond the worth of its pieces at the program's prices. */
const lossesOf = (master: Master): ((use: ColumnUse) => number) => {
  const prices = new Float64Array(master.task.kinds);
  const costs = new Float64Array(master.task.heights.length);
  pricesOf(master, prices, costs);
  return ({ column }) => {
    let loss = heightAt(master.task, column);
    column.kinds.forEach((kind, e) => {
      loss -= (prices[kind] as number) * (column.counts[e] as number);
    });
    return Math.max(0, loss);
  };
};

function* refillOnce(of: {
  readonly task: Task;
  readonly best: Standing;
  readonly losses: (use: ColumnUse) => number;
  readonly chance: () => number;
}): Generator<void, readonly ColumnUse[] | null, void> {
  const { task, best, losses, chance } = of;
  const standings = best.uses.map((use) => losses(use) + 0.02 * heightAt(task, use.column));
  const size = 3 + Math.floor(chance() * 6);
  const freed = freeStrips({ task, uses: best.uses, standings, size, chance });
  const cutoff = chance() < 0.5 ? freed.length : freed.length - 1;
  const found = yield* refill({ task, freed, cutoff, tries: 3, choices: 12, chance });
  return found === null ? null : [...freed.rest, ...found];
}

/** The shortest that the plain level heuristics come to. */
const plainStart = (job: Job): readonly StripUse[] => {
  let best: readonly StripUse[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const choice of levelChoicesFor(job)) {
    if (choice.piling !== 'single') continue;
    const strips = levelsFor(job, choice);
    const length = lengthOf(strips);
    if (length < least) {
      least = length;
      best = strips;
    }
  }
  return best;
};

const columnsOf = (task: Task, strips: readonly StripUse[]): readonly ColumnUse[] =>
  strips.flatMap(({ pattern, times }) => {
    const counts = new Int32Array(task.kinds);
    for (const part of pattern.parts)
      for (const run of part.stack.runs) counts[run.kind] = (counts[run.kind] as number) + run.times * part.times;
    const column = columnOf(task, counts);
    return column === null ? [] : [{ column, times }];
  });
