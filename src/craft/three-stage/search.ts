// The shortest layout in three stages that can be found: a plain one at once, then worths of the pieces from the linear
// program, then strips laid anew by those worths, and integer programs over all good strips seen on the way.
import {
  attainableUp,
  type BoundKind,
  type IntegerSolver,
  type Job,
  lowerBoundFor,
  type ShopStep,
  type StripSearch,
  type StripsFound,
  type StripUse,
} from '#craft/strips';
import { type Chance, chanceFrom } from '#ground/chance';
import { coverOf } from './cover.ts';
import { type Filler, fillerFor } from './fill.ts';
import { type Lies, liesOf, type StripHeights } from './lies.ts';
import { linearOver } from './linear.ts';
import { relaid } from './neighbours.ts';
import { type Pool, poolFor } from './pool.ts';
import { roundedFrom } from './rounding.ts';
import { sequenceOf } from './sequence.ts';
import { slicesBound } from './slices.ts';
import { fromStripUses, lengthOfStrips, type Strip, toStripUses } from './strip.ts';

export interface ThreeStages {
  readonly job: Job;
  readonly stripHeights: StripHeights;
  /** Without one, strips are only laid anew. */
  readonly solver: IntegerSolver | null;
  /** Once given, a layout that costs the maker no more than the least possible ends the search. */
  readonly shop: ShopStep | null;
  /** Strips of a layout that exists; none longer is ever reported. */
  readonly start: readonly StripUse[] | null;
}

interface State {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly chance: Chance;
  readonly pool: Pool;
  readonly solver: IntegerSolver | null;
  best: readonly Strip[];
  /** Units of height, like every length here. */
  length: number;
  bound: number;
  boundKind: BoundKind;
  /** What a piece of each kind is worth, and the same with some of its area, which knows no zero. */
  worth: Float64Array;
  soft: Float64Array;
}

/** Cells of tables worked out in one step: a few milliseconds. */
const stepCells = 2_000_000;

export function* searchThreeStages(task: ThreeStages): StripSearch {
  const lies = liesOf(task.job, task.stripHeights);
  if (lies.kinds === 0) return { strips: [], length: 0, bound: 0, boundKind: 'area' };
  const state = stateFor(lies, task);
  yield foundIn(state);
  raiseBound(state, lowerBoundFor(task.job, state.length * lies.heightUnit) / lies.heightUnit, 'area');
  if (isProven(state)) return foundIn(state);
  yield foundIn(state);
  if (lies.stripHeights === 'any') raiseBound(state, slicesBound(lies, 400), 'linear');
  const linear = linearOver({ lies, filler: state.filler, heights: lies.heights, strips: state.best });
  for (;;) {
    const { value, done } = linear.next();
    if (lies.stripHeights === 'piece') raiseBound(state, value.bound, 'linear');
    state.worth = value.worth;
    state.soft = softened(lies, value.worth);
    for (const [strip] of value.support) state.pool.add(strip);
    if (done === true) {
      for (let i = 0; i < 6; i++)
        offer(
          state,
          roundedFrom({
            ...state,
            worth: state.soft,
            support: value.support,
            demand: lies.demand,
            limit: state.length,
          }),
        );
      break;
    }
    yield foundIn(state);
  }
  yield* improving(state);
  return foundIn(state);
}

const stateFor = (lies: Lies, task: ThreeStages): State => {
  const filler = fillerFor(lies);
  const chance = chanceFrom(1);
  const plain = sequenceOf({
    lies,
    filler,
    left: lies.demand.slice(),
    manner: { worth: lies.area, chance, tries: 1, stray: 0, rise: 0, repeat: 'repeat' },
    limit: Number.POSITIVE_INFINITY,
  }) as readonly Strip[];
  const start = task.start === null ? null : fromStripUses(lies, task.start);
  const best = start !== null && lengthOfStrips(start) <= lengthOfStrips(plain) ? start : plain;
  const worth = lies.area.map((a) => a / lies.width);
  const state: State = {
    lies,
    filler,
    chance,
    pool: poolFor(() => state.worth),
    solver: task.solver,
    best,
    length: lengthOfStrips(best),
    bound: 0,
    boundKind: 'area',
    worth,
    soft: worth,
  };
  for (const strip of [...plain, ...(start ?? [])]) state.pool.add(strip);
  return state;
};

/** Share of its area in what a piece counts: the linear program may hold a piece to be worth nothing. */
const softened = (lies: Lies, worth: Float64Array): Float64Array =>
  worth.map((y, k) => 0.8 * y + (0.2 * (lies.area[k] as number)) / lies.width);

const raiseBound = (state: State, bound: number, kind: BoundKind): void => {
  const up = Math.min(
    state.length,
    attainableUp(Math.ceil(bound - 1e-6 * Math.max(1, bound / 1000)), [...state.lies.heights]),
  );
  if (up <= state.bound) return;
  state.bound = up;
  state.boundKind = kind;
};

const isProven = (state: State): boolean => state.length <= state.bound;

const offer = (state: State, strips: readonly Strip[] | null): void => {
  if (strips === null) return;
  for (const strip of strips) state.pool.add(strip);
  const length = lengthOfStrips(strips);
  if (length >= state.length) return;
  state.best = [...strips];
  state.length = length;
};

const foundIn = (state: State): StripsFound => ({
  strips: toStripUses(state.lies, state.best),
  length: state.length * state.lies.heightUnit,
  bound: state.bound * state.lies.heightUnit,
  boundKind: state.boundKind,
});

/** Lays strips anew and covers by programs in turn, until the layout is proven or nothing gets better for long. */
function* improving(state: State): Generator<StripsFound, void, void> {
  const { lies, filler, chance, pool } = state;
  let strips = [...state.best];
  let length = state.length;
  let nodes = 20;
  let programAt = filler.work() + 40_000_000;
  let wait = 60_000_000;
  let betterAt = filler.work();
  while (!isProven(state)) {
    const until = filler.work() + stepCells;
    while (filler.work() < until && !isProven(state)) {
      const gained = relaid({ lies, filler, chance, worth: state.soft, strips, slack: 0, seen: pool.add });
      if (gained === null) continue;
      length -= gained;
      if (length < state.length) {
        offer(state, strips);
        betterAt = filler.work();
      }
    }
    yield foundIn(state);
    if (isProven(state)) return;
    if (state.solver !== null && filler.work() > programAt) {
      const from = [...new Set([...state.best, ...pool.best(state.worth, 500)])];
      const cover = coverOf({
        lies,
        solver: state.solver,
        strips: from,
        demand: lies.demand,
        below: state.length,
        nodes,
      });
      offer(state, cover);
      if (cover !== null) {
        strips = [...state.best];
        length = state.length;
        betterAt = filler.work();
      }
      nodes = Math.min(2000, nodes * 2);
      programAt = filler.work() + wait;
      wait *= 1.5;
      yield foundIn(state);
    }
    if (filler.work() - betterAt > 100_000_000) {
      strips = [...state.best];
      length = state.length;
      betterAt = filler.work();
    }
  }
}
