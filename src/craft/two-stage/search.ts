// The shortest layout of strips with pieces side by side: first at once, then better, and how short any can be.

import {
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
} from '#craft/strips';
import { type Chance, chanceFrom } from '#ground/chance';
import { type Tree, treeFor } from './branch.ts';
import { type Column, heightAt, lossAt } from './column.ts';
import { type CoverAnswer, coverBy, type Helper } from './cover.ts';
import { dive } from './dive.ts';
import { stripsWithin } from './enumerate.ts';
import { levelBoundsFor, solveWithLevels } from './level-bounds.ts';
import { copyOf, type Master, manyStrips, masterFor, pricesOf } from './master.ts';
import { freeStrips, refill } from './neighbourhood.ts';
import { type Pool, poolFor } from './pool.ts';
import { plainBound, type Standing, standingFor } from './standing.ts';
import { type Task, taskFor } from './task.ts';

export interface TwoStageOrder {
  readonly job: Job;
  /** Without a solver the search works by itself: it finds as much, and proves less. */
  readonly solver: IntegerSolver | null;
  /** What has to be bought is decided first, then the length. */
  readonly shop: ShopStep | null;
}

/**
 * @returns a search for a layout of strips, pieces side by side in each, and a proven bound; lengths in the job's units
 * @source docs/formulas.md#layout
 */
export function* searchTwoStages(order: TwoStageOrder): StripSearch {
  if (order.job.kinds.every((k) => k.count === 0)) return nothing;
  const task = taskFor(order.job);
  const standing = standingFor({ task, shop: order.shop, start: plainStart(order.job) });
  standing.raise(standing.round(plainBound(order.job) / task.heightUnit), 'area');
  yield standing.found();
  if (!standing.isProven()) {
    for (const _ of work(order, task, standing)) {
      if (standing.isProven()) break;
      yield standing.found();
    }
  }
  return standing.found();
}

const nothing: StripsFound = { strips: [], length: 0, bound: 0, boundKind: 'area' };

function* work(order: TwoStageOrder, task: Task, standing: Standing): Generator<void, void, void> {
  const area = lowerBoundFor(order.job, standing.length() * task.heightUnit);
  standing.raise(standing.round(area / task.heightUnit), 'area');
  yield;
  const master = masterFor(task);
  const relaxing = solveWithLevels(master, levelBoundsFor(task));
  for (;;) {
    const { value, done } = relaxing.next();
    standing.raise(standing.round(value.bound), 'linear');
    if (done) break;
    yield;
  }
  const choices = choicesFor(standing);
  standing.accept(yield* dive({ master, cutoff: standing.length(), tries: triesFor(task), choices }));
  yield;
  yield* improve(order.solver, task, standing, master);
}

/** Enough for one way through, and to turn back now and then. */
const choicesFor = (standing: Standing): number =>
  10 + standing.uses().reduce((strips, { times }) => strips + times, 0);

/** With many kinds each strip tried out is dear, and strips laid anew bring more for the same work. */
const triesFor = (task: Task): number => (task.kinds > manyKinds ? 1 : 3);
const manyKinds = 60;
/** Quiet turns between two dives from the top. */
const restBetween = (task: Task): number => 3 + Math.floor(task.kinds / 10);

/** What the ways to go on share. */
interface Going {
  readonly task: Task;
  readonly standing: Standing;
  readonly lossOf: (column: Column) => number;
  readonly pool: Pool;
  readonly tree: Tree;
  readonly chance: Chance;
}

/** Strips laid anew, the proof, and the solver over the pool, in turns. */
function* improve(
  solver: IntegerSolver | null,
  task: Task,
  standing: Standing,
  master: Master,
): Generator<void, void, void> {
  const worth = worthBy(master);
  const lossOf = (column: Column): number => Math.max(0, lossAt(column, worth.prices, worth.costs));
  const pool = poolFor(lossOf);
  pool.add(master.columns);
  const helper: Helper = { solver, owed: 0 };
  const asking = askingFor({ task, standing, pool, helper, floors: master.floors.slice(), worth });
  const { round } = standing;
  const root = copyOf(master);
  const tree = treeFor({ master, bound: standing.bound(), longest: standing.length(), helper, round });
  const going = { task, standing, lossOf, pool, tree, chance: chanceFrom(1) };
  asking.askWhole(shortList);
  yield;
  helper.owed = Math.max(helper.owed, mostSaved);
  for (let n = 0; n < partsAtFirst(task) && !standing.isProven() && !tree.isOver(); n++) yield* prove(going);
  let quiet = 0;
  for (let turn = 1; !standing.isProven() && !(tree.isOver() && quiet > turnsToRest); turn++) {
    const before = standing.length();
    for (let n = 0; n < 6 + task.kinds / 5 && !standing.isProven(); n++) yield* layAnew(going);
    for (let n = 0; n < partsPerTurn(standing) + partsAtFirst(task) / 10 && !standing.isProven() && !tree.isOver(); n++)
      yield* prove(going);
    if (quiet % restBetween(task) === 2 && !standing.isProven()) yield* diveAgain(going, root);
    quiet = standing.length() < before ? 0 : quiet + 1;
    helper.owed = Math.max(-mostSaved, helper.owed - workPerTurn);
    if (standing.isProven() || !asking.isTime(turn, quiet)) continue;
    pool.add(master.columns.filter((c) => c.level >= 0));
    asking.ask(turn);
    yield;
  }
}

/** Turns without a shorter layout, after the last open part of the proof, before the search ends. */
const turnsToRest = 300;

/**
 * Parts of the proof before all else, the solver left out: with few kinds a part is quick, and the proof soon over; with many it leads
 * nowhere in so few. A tenth of them in every turn.
 */
const partsAtFirst = (task: Task): number => Math.floor(120_000 / Math.max(1, task.kinds) ** 3);

/** Of the solver, paid for by one turn of the rest: about as much time as the turn. */
const workPerTurn = 150;
const mostSaved = 300;

/** A purchase that is open is nearer to proof than to a layout where its length lies near the bound. */
const partsPerTurn = (standing: Standing): number => {
  const reach = standing.length() - standing.bound();
  const near = (standing.limit() - standing.bound()) / Math.max(1, reach);
  return near < 0.5 ? 6 : 2;
};

function* layAnew({ task, standing, lossOf, pool, chance }: Going): Generator<void, void, void> {
  const uses = standing.uses();
  const standings = uses.map(({ column }) => lossOf(column) + leastStanding * heightAt(task, column));
  const freed = freeStrips({ task, uses, standings, size: 3 + Math.floor(chance() * 6), chance });
  const cutoff = chance() < 0.5 ? freed.length : freed.length - 1;
  const found = yield* refill({ task, freed, cutoff, tries: 3, choices: 12, chance });
  if (found !== null) {
    pool.add(found.map((u) => u.column));
    standing.accept([...freed.rest, ...found]);
  }
  yield;
}

/** Of its height: strips without loss are freed now and then too. */
const leastStanding = 0.02;

/** From the top, by other choices. */
function* diveAgain({ task, standing, pool, chance }: Going, master: Master): Generator<void, void, void> {
  const tries = triesFor(task) + Math.floor(chance() * 2);
  const found = yield* dive({ master, cutoff: standing.length(), tries, choices: 100, chance });
  if (found !== null) pool.add(found.map((u) => u.column));
  standing.accept(found);
  yield;
}

function* prove({ standing, pool, tree }: Going): Generator<void, void, void> {
  const found = yield* tree.advance(standing.limit());
  if (found !== null) pool.add(found.map((u) => u.column));
  standing.accept(found);
  standing.raise(Math.min(tree.bound(), standing.length()), 'integer');
  yield;
}

interface Asking {
  readonly isTime: (turn: number, quiet: number) => boolean;
  readonly ask: (turn: number) => void;
  /** Only where the list of all strips that a shorter layout can hold is short; what the solver then says is proven. */
  readonly askWhole: (most: number) => void;
}

/** The solver over the pool: when strips laid anew bring nothing more, with more strips each time. */
const askingFor = (of: {
  readonly task: Task;
  readonly standing: Standing;
  readonly pool: Pool;
  readonly helper: Helper;
  readonly floors: Float64Array;
  readonly worth: RootWorth;
}): Asking => {
  const { task, standing, pool, helper, floors, worth } = of;
  const ceilings = new Float64Array(task.heights.length).fill(manyStrips);
  let next = { turn: 4, most: 120, nodes: 8, work: 400 };
  const wholeList = (most: number): readonly Column[] | null =>
    stripsWithin({ ...worth, task, left: task.demand, slack: standing.limit() - worth.value, most });
  const answerOf = (columns: readonly Column[]): CoverAnswer => {
    const { nodes, work } = next;
    return coverBy(
      helper,
      { task, columns, left: task.demand, floors, ceilings, cutoff: standing.limit() },
      { nodes, work },
    );
  };
  const takeProof = (columns: readonly Column[]): void => {
    const none = standing.round(standing.limit() + 0.5);
    const answer = answerOf(columns);
    if (answer.status === 'found') standing.accept(answer.uses);
    if (answer.status !== 'stopped')
      standing.raise(
        Math.min(standing.length(), answer.status === 'none' ? none : standing.round(answer.bound)),
        'integer',
      );
  };
  return {
    isTime: (turn, quiet) => helper.solver !== null && helper.owed <= 0 && quiet >= quietTurns && turn >= next.turn,
    ask: (turn) => {
      const whole = wholeList(next.most);
      if (whole !== null) takeProof(whole);
      else {
        const slack = standing.limit() - worth.value;
        const answer = answerOf(pool.best({ most: next.most, slack }));
        if (answer.status === 'found') standing.accept(answer.uses);
      }
      next = {
        turn: turn * 2,
        most: Math.min(600, next.most * 1.3),
        nodes: Math.min(200, next.nodes * 2),
        work: Math.min(1600, next.work * 1.5),
      };
    },
    askWhole: (most) => {
      const whole = helper.solver === null ? null : wholeList(most);
      if (whole !== null) takeProof(whole);
    },
  };
};

const quietTurns = 3;

/** So few that the solver says at once whether they make a shorter layout. */
const shortList = 60;

/** What the solved program of the whole job says of strips and pieces. */
interface RootWorth {
  readonly value: number;
  readonly prices: Float64Array;
  readonly costs: Float64Array;
}

const worthBy = (master: Master): RootWorth => {
  const prices = new Float64Array(master.task.kinds);
  const costs = new Float64Array(master.task.heights.length);
  const value = pricesOf(master, prices, costs);
  return { value, prices, costs };
};

/** The shortest that the plain level heuristics come to. */
const plainStart = (job: Job): readonly StripUse[] => {
  let best: readonly StripUse[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const choice of levelChoicesFor(job)) {
    if (choice.piling !== 'single' || choice.rule === 'next-fit') continue;
    const strips = levelsFor(job, choice);
    const length = lengthOf(strips);
    if (length < least) {
      least = length;
      best = strips;
    }
  }
  return best;
};
