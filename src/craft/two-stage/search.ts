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
import { type Column, type ColumnUse, columnOf, heightAt, stripsOf } from './column.ts';
import { coverBy, type Helper } from './cover.ts';
import { dive } from './dive.ts';
import { levelBoundsFor, solveWithLevels } from './level-bounds.ts';
import { type Master, manyStrips, masterFor, pricesOf } from './master.ts';
import { freeStrips, merged, refill } from './neighbourhood.ts';
import { poolFor } from './pool.ts';
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
  const { lossOf, value } = pricedBy(master);
  const pool = poolFor(lossOf);
  pool.add(master.columns);
  const floors = master.floors.slice();
  const helper: Helper = { solver: order.solver, owed: 0 };
  const tree = treeFor({ master, bound: best.bound, longest: best.length, helper, round });
  const chance = chanceFrom(1);
  let asking = { after: 4, most: 120, nodes: 8 };
  let quiet = 0;
  for (let turn = 1; ; turn++) {
    const before = best.length;
    for (let n = 0; n < 6; n++) {
      const found = yield* refillOnce({ task, best, lossOf, chance });
      if (found !== null) pool.add(found.map((u) => u.column));
      accept(found);
      yield;
      if (best.length <= best.bound) return;
    }
    for (let n = 0; n < 2 && !tree.isOver(); n++) {
      const found = yield* tree.advance(best.length - 1);
      if (found !== null) pool.add(found.map((u) => u.column));
      accept(found);
      raise(Math.min(tree.bound(), best.length), 'integer');
      yield;
      if (best.length <= best.bound) return;
    }
    quiet = best.length < before ? 0 : quiet + 1;
    helper.owed = Math.max(-mostSaved, helper.owed - pivotsPerTurn);
    if (order.solver === null || quiet < quietTurns || turn < asking.after || helper.owed > 0) continue;
    pool.add(master.columns.filter((c) => c.level >= 0));
    const cutoff = best.length - 1;
    const columns = pool.best({ most: asking.most, slack: cutoff - value });
    const cover = { task, columns, left: task.demand, floors, ceilings: noCeilings(task), cutoff };
    const answer = coverBy(helper, cover, asking.nodes);
    if (answer.status === 'found') accept(answer.uses);
    asking = { after: Math.ceil(turn * 1.5), most: asking.most * 1.3, nodes: asking.nodes * 2 };
    yield;
  }
}

/** Of the solver, paid for by one turn of the rest; about as much time as the turn. */
const pivotsPerTurn = 150;
const mostSaved = 300;

/** The solver is asked when strips laid anew have brought nothing for so long. */
const quietTurns = 3;

const noCeilings = (task: Task): Float64Array => new Float64Array(task.heights.length).fill(manyStrips);

/** The program's value, and what a strip costs beyond the worth of its pieces at its prices. */
const pricedBy = (master: Master): { readonly value: number; readonly lossOf: (column: Column) => number } => {
  const prices = new Float64Array(master.task.kinds);
  const costs = new Float64Array(master.task.heights.length);
  const value = pricesOf(master, prices, costs);
  return {
    value,
    lossOf: ({ level, kinds, counts }) => {
      let loss = costs[level] as number;
      for (let e = 0; e < kinds.length; e++) loss -= (prices[kinds[e] as number] as number) * (counts[e] as number);
      return Math.max(0, loss);
    },
  };
};

function* refillOnce(of: {
  readonly task: Task;
  readonly best: Standing;
  readonly lossOf: (column: Column) => number;
  readonly chance: () => number;
}): Generator<void, readonly ColumnUse[] | null, void> {
  const { task, best, lossOf, chance } = of;
  const standings = best.uses.map((use) => lossOf(use.column) + 0.02 * heightAt(task, use.column));
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
