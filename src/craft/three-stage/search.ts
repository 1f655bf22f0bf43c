// The shortest layout in three stages that can be found: a plain one at once, then bounds and worths of the pieces from linear
// programs, then layouts near their answer, made shorter step by step.
import {
  type IntegerSolver,
  type Job,
  lowerBoundFor,
  type ShopStep,
  type StripSearch,
  type StripsFound,
  type StripUse,
} from '#craft/strips';
import { improvingBoth } from './both-heights.ts';
import { improving } from './improve.ts';
import { levelledOver } from './levels.ts';
import { liesOf, type StripHeights } from './lies.ts';
import { type Linear, linearOver } from './linear.ts';
import { relaid } from './neighbours.ts';
import { proving } from './proving.ts';
import { roundedFrom, type Taken } from './rounding.ts';
import { slicesOver } from './slices.ts';
import { foundIn, isProven, offer, raiseBound, type State, setWorth, stateFor } from './state.ts';
import { lengthOfStrips } from './strip.ts';

export interface ThreeStages {
  readonly job: Job;
  readonly stripHeights: StripHeights;
  /** Without one, no integer programs are asked. */
  readonly solver: IntegerSolver | null;
  /** Makes no difference here: whatever the maker pays by, this search is for the least length. */
  readonly shop: ShopStep | null;
  /** Strips of a layout that exists; none longer is ever reported. */
  readonly start: readonly StripUse[] | null;
}

/** Bounds hold for every layout of the task. */
export function* searchThreeStages({ job, stripHeights, solver, start }: ThreeStages): StripSearch {
  const lies = liesOf(job, stripHeights);
  if (lies.kinds === 0) return { strips: [], length: 0, bound: 0, boundKind: 'area' };
  const state = stateFor({ lies, solver, start });
  yield foundIn(state);
  raiseBound(state, lowerBoundFor(job, state.length * lies.heightUnit) / lies.heightUnit, 'area');
  const support = isProven(state) ? [] : yield* guided(state);
  if (!isProven(state) && stripHeights === 'any') yield* sliced(state);
  if (!isProven(state)) yield* improvingAndProving(state, support);
  return foundIn(state);
}

/**
 * Steps of the proof to one of the improvement: few strips of few kinds are soon counted through, many hardly ever; where there are very
 * few strips, the proof is what finds the last of the length.
 */
const proofSteps = ({ best, lies }: State): number => {
  const few = Math.max(1, (fewStrips / best.length) ** 2);
  return Math.min(4 * few, Math.max(1, countableStrips / best.length), few * (countableKinds / lies.kinds) ** 2);
};
/** Measured on quilts of 10 to 40 kinds, and on published problems of 20 to 100. */
const countableStrips = 48;
const countableKinds = 22;
const fewStrips = 5;

/** The one finds layouts, the other bounds and now and then a layout; each profits from what the other has found. */
function* improvingAndProving(state: State, support: readonly Taken[]): Generator<StripsFound, void, void> {
  const improvement = state.lies.stripHeights === 'any' ? improvingBoth(state, support) : improving(state);
  const proof = proving(state);
  let isImproving = true;
  let isProving = true;
  let owed = 0;
  while (!isProven(state) && (isImproving || isProving)) {
    if (isImproving) isImproving = improvement.next().done !== true;
    for (owed += proofSteps(state); owed >= 1; owed--)
      if (isProving && !isProven(state)) isProving = proof.next().done !== true;
    yield foundIn(state);
  }
}

/** Attempts between two steps of a linear program that takes long. */
const attempts = 40;
/** Layouts near the program's answer. */
const roundings = 12;

/** Solves the linear program over strips as high as pieces; what it says of worths serves strips of any height as well. */
function* guided(state: State): Generator<StripsFound, readonly Taken[], void> {
  const { lies, filler, chance, pool } = state;
  const strips = [...state.best];
  const linear = linearOver({
    lies,
    filler,
    demand: lies.demand,
    levels: [],
    cost: 'own-height',
    heights: lies.heights,
    strips: state.best,
  });
  let last: Linear;
  for (;;) {
    const { value, done } = linear.next();
    last = value;
    if (lies.stripHeights === 'piece') raiseBound(state, value.bound, 'linear');
    setWorth(state, value.worth);
    for (const [strip] of value.support) pool.add(strip);
    if (done === true || isProven(state)) break;
    yield foundIn(state);
    for (let i = 0; i < attempts; i++)
      relaid({ lies, filler, chance, worth: state.soft, strips, slack: 0, seen: pool.add });
    if (lengthOfStrips(strips) < state.length) offer(state, strips);
  }
  const { support } = last;
  for (let i = 0; i < roundings && !isProven(state); i++) {
    offer(
      state,
      roundedFrom({ lies, filler, chance, worth: state.soft, support, demand: lies.demand, limit: state.length }),
    );
    if (i % 4 === 3) yield foundIn(state);
  }
  if (lies.stripHeights === 'any' || state.length > mostLevelled * (lies.heights.at(-1) as number)) return support;
  const known = [...new Set([...state.best, ...support.map(([strip]) => strip)])];
  for (const bound of levelledOver({ lies, filler, strips: known })) {
    raiseBound(state, bound, 'linear');
    if (isProven(state)) break;
    yield foundIn(state);
  }
  return support;
}

/** Layouts of more strips of the greatest height gain too little from counting strips. */
const mostLevelled = 40;

function* sliced(state: State): Generator<StripsFound, void, void> {
  for (const bound of slicesOver(state.lies)) {
    raiseBound(state, bound, 'linear');
    if (isProven(state)) return;
    yield foundIn(state);
  }
}
