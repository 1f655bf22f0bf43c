// How few sheets, or how cheap ones, hold these pieces? Sheets are cut like cloth: strips across, parts along a strip, pieces
// down a part. A whole plan first, then prices and a bound, then plan after plan.

import { fewPiecesOnSheets } from '#craft/few-pieces';
import type { BoundKind } from '#craft/strips';
import { type Chance, chanceFrom } from '#ground/chance';
import { drained } from '#ground/search';
import { nextTotal } from './cost-steps.ts';
import { areaLeft, exactly } from './exact-counts.ts';
import { type SheetTask, sheetTaskFor } from './fill.ts';
import type { Holding, Sheet, SheetJob, SheetSearch, SheetsFound } from './job.ts';
import { offered, type Relaxation, relaxationFor, relaxed } from './linear.ts';
import { opened, unevenness } from './opening.ts';
import { type Pool, poolFor } from './pool.ts';
import { areasOf, correctedWorth, demandOf, type Plan, plannedSheets, stockOf } from './restart.ts';
import { type Rounded, roundedDown } from './rounding.ts';
import { cheapestOf } from './whole-sheets.ts';

/** Table cells that one step may look at: about 10 ms. */
const stepWork = 3_000_000;

interface State {
  readonly task: SheetTask;
  readonly relaxation: Relaxation;
  best: Plan;
  bound: number;
  boundKind: BoundKind;
  cannotHold: boolean;
  prices: Float64Array | null;
  /** Once the prices stand. */
  pool: Pool | null;
}

/**
 * Never refuses: pieces that no sheet has room for are told as left. Ends when the best is proven cheapest; else it goes
 * on as long as it is asked.
 */
export function* searchSheets(job: SheetJob): SheetSearch {
  const task = sheetTaskFor(job);
  const first = drained(
    plannedSheets({
      task,
      demand: demandOf(task),
      stock: stockOf(task),
      worth: areasOf(task),
      chance: null,
      tries: 1,
    }),
  );
  const state: State = {
    task,
    relaxation: relaxationFor(task),
    best: first,
    bound: nextTotal(costsOf(job), areaBound(task)),
    boundKind: 'area',
    cannotHold: false,
    prices: null,
    pool: null,
  };
  keep(state, first);
  if (isDone(state)) return found(state);
  yield found(state);
  const few = exactOnFew(state);
  if (few !== null) return few;
  yield* priced(state);
  if (isDone(state)) return found(state);
  state.pool = poolFor(task, state.prices ?? areasOf(task), state.relaxation.scale);
  yield* restarted(state);
  return found(state);
}

/** Every way to divide few pieces; null where they are too many, or the sheets cannot hold them. */
const exactOnFew = (state: State): SheetsFound | null => {
  const { job } = state.task;
  const pieces = job.kinds.reduce((sum, { count }) => sum + count, 0);
  // of equal costs the fewest sheets
  const sheets = job.sheets.map((sheet) => ({ ...sheet, cost: sheet.cost * (pieces + 1) + 1 }));
  const few = fewPiecesOnSheets({ kinds: job.kinds, cutting: job.cutting, sheets });
  if (few === null) return null;
  if (few.status === 'impossible') {
    state.cannotHold = true;
    return null;
  }
  const cost = few.sheets.reduce((sum, { sheet, times }) => sum + times * (job.sheets[sheet] as Sheet).cost, 0);
  const left = job.kinds.map(() => 0);
  return { sheets: few.sheets, cost, count: few.count, left, holds: 'yes', bound: cost, boundKind: 'integer' };
};

const costsOf = ({ sheets }: SheetJob): readonly number[] => sheets.map(({ cost }) => cost);

/** What the pieces' area costs on the sheets that give most for their cost, in fractions. */
const areaBound = ({ job }: SheetTask): number => {
  let area = areaLeft(job.kinds, demandOf(sheetTaskFor(job)));
  const rate = ({ cost, width, height }: Sheet): number => cost / (width * height);
  let cost = 0;
  for (const sheet of [...job.sheets].sort((a, b) => rate(a) - rate(b))) {
    const taken = Math.min(area, (sheet.stock ?? Number.POSITIVE_INFINITY) * sheet.width * sheet.height);
    cost += taken * rate(sheet);
    area -= taken;
  }
  return cost;
};

const isDone = (state: State): boolean => isWhole(state.best) && costOf(state.task, state.best) <= state.bound;

const isWhole = ({ left }: Plan): boolean => left.every((n) => n === 0);

export const costOf = ({ job }: SheetTask, { uses }: Plan): number =>
  uses.reduce((sum, { pattern, times }) => sum + times * (job.sheets[pattern.sheet] as Sheet).cost, 0);

const countOf = ({ uses }: Plan): number => uses.reduce((sum, { times }) => sum + times, 0);

/** Less left over, then cheaper, then fewer sheets. */
const isBetter = (task: SheetTask, a: Plan, b: Plan): boolean => {
  const left = areaLeft(task.job.kinds, a.left) - areaLeft(task.job.kinds, b.left);
  if (left !== 0) return left < 0;
  const cost = costOf(task, a) - costOf(task, b);
  return cost !== 0 ? cost < 0 : countOf(a) < countOf(b);
};

const keep = (state: State, plan: Plan): void => {
  if (isBetter(state.task, plan, state.best)) state.best = plan;
  for (const { pattern } of plan.uses)
    if (state.pool === null) offered(state.relaxation, pattern);
    else state.pool.offer(pattern);
};

const found = ({ task, best, bound, boundKind, cannotHold }: State): SheetsFound => {
  const sheets = exactly(task, best.uses);
  const whole = isWhole(best);
  const holds: Holding = whole ? 'yes' : cannotHold ? 'no' : 'not-found';
  const cost = sheets.reduce((sum, { sheet, times }) => sum + times * (task.job.sheets[sheet] as Sheet).cost, 0);
  return {
    sheets,
    cost,
    count: sheets.reduce((sum, { times }) => sum + times, 0),
    left: [...best.left],
    holds,
    bound: whole ? Math.min(bound, cost) : bound,
    boundKind,
  };
};

function* priced(state: State): Generator<SheetsFound, void, void> {
  let work = 0;
  for (;;) {
    const round = relaxed(state.relaxation);
    work += round.work;
    state.cannotHold ||= round.cannotHold;
    state.prices = round.prices;
    const bound = nextTotal(costsOf(state.task.job), round.bound);
    if (bound > state.bound) {
      state.bound = bound;
      state.boundKind = 'linear';
    }
    if (round.state === 'solved' || isDone(state)) return;
    if (work > stepWork) {
      work = 0;
      yield found(state);
    }
  }
}

interface Asking {
  /** Sheets besides those of the solution in fractions. */
  readonly others: number;
  readonly effort: number;
  /** Steps before the solver is asked again. */
  readonly pause: number;
}

/** Our own choices: at first the sheets of the solution in fractions alone, then ever more seldom with more. */
const firstAsking: Asking = { others: 0, effort: 60_000, pause: 15 };
const mostAsking: Asking = { others: 400, effort: 500_000, pause: 100 };

/** Whole numbers of the best sheets so far, by the solver. */
const chosen = (state: State, { others, effort }: Asking): void => {
  const { task, pool, best, relaxation } = state;
  if (pool === null) return;
  const below = isWhole(best) ? costOf(task, best) : Number.POSITIVE_INFINITY;
  const patterns = [...relaxation.columns, ...pool.best(others)];
  const plan = cheapestOf({ task, patterns, below, effort });
  if (plan !== null) keep(state, plan);
};

const nextAsking = ({ others, effort, pause }: Asking): Asking => ({
  others: Math.min(mostAsking.others, others === 0 ? 60 : 2 * others),
  effort: Math.min(mostAsking.effort, 2 * effort),
  pause: Math.min(mostAsking.pause, Math.ceil(1.5 * pause)),
});

/** Plans from the solution in fractions, plans from nothing, and the one before with some sheets cut anew take turns. */
function* restarted(state: State): Generator<SheetsFound, void, void> {
  const { task } = state;
  const areas = areasOf(task);
  const fromPrices = state.prices?.map((price, i) => price + 1e-6 * (areas[i] as number)) ?? areas;
  let worth = areas;
  let current = state.best;
  let work = 0;
  let asking = firstAsking;
  let pause = 2;
  for (let round = 1; !isDone(state); round++) {
    const chance = chanceFrom(round);
    if (round % 40 === 1) worth = round % 80 === 1 ? areas : fromPrices;
    const from = startOf({ state, current, round, chance });
    const steps = plannedSheets({ task, demand: from.rest, stock: from.stock, worth, chance, tries: 1 + (round % 4) });
    for (;;) {
      const next = steps.next();
      if (next.done === true) {
        const plan = { uses: [...from.uses, ...next.value.uses], left: next.value.left };
        keep(state, plan);
        if (!isBetter(task, current, plan) && unevenness(task, plan) >= unevenness(task, current)) current = plan;
        if (isBetter(task, state.best, current)) current = state.best;
        worth = correctedWorth({ task, plan, worth, chance });
        break;
      }
      work += next.value;
      if (work > stepWork) {
        work = 0;
        pause--;
        yield found(state);
      }
    }
    work += stepWork / 100;
    if (pause > 0 || isDone(state)) continue;
    chosen(state, asking);
    asking = nextAsking(asking);
    pause = asking.pause;
    yield found(state);
  }
}

const startOf = (of: {
  readonly state: State;
  readonly current: Plan;
  readonly round: number;
  readonly chance: Chance;
}): Rounded => {
  const { state, current, round, chance } = of;
  const { task, relaxation } = state;
  const way = round % 4;
  if (way === 0) return { uses: [], rest: demandOf(task), stock: stockOf(task) };
  return way === 1 ? roundedDown(relaxation, chance) : opened({ task, plan: current, chance });
};
