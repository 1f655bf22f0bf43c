// What a search holds on its way: the best layout, what is proven of it, what pieces are worth, and strips worth remembering.
import { attainableFrom, type BoundKind, type IntegerSolver, type StripsFound, type StripUse } from '#craft/strips';
import { type Chance, chanceFrom } from '#ground/chance';
import { type Filler, fillerFor } from './fill.ts';
import type { Lies } from './lies.ts';
import { type Pool, poolFor } from './pool.ts';
import { sequenceOf } from './sequence.ts';
import { fromStripUses, lengthOfStrips, type Strip, toStripUses } from './strip.ts';

/** All lengths in units of height. */
export interface State {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly chance: Chance;
  readonly pool: Pool;
  readonly solver: IntegerSolver | null;
  best: readonly Strip[];
  length: number;
  bound: number;
  boundKind: BoundKind;
  /** Length that a piece of each kind costs, by the linear program. */
  worth: Float64Array;
  /** The same with some of the piece's area in it, which knows no zero. */
  soft: Float64Array;
  /** What `foundIn` said last, as long as it holds. */
  shown: StripsFound | null;
}

/** Begins with the plain layout, pieces from the tallest down, or with one that is known already and shorter. */
export const stateFor = (of: {
  readonly lies: Lies;
  readonly solver: IntegerSolver | null;
  readonly start: readonly StripUse[] | null;
}): State => {
  const { lies, solver } = of;
  const filler = fillerFor(lies);
  const chance = chanceFrom(1);
  const worth = lies.area.map((a) => a / lies.width);
  const plain = sequenceOf({
    lies,
    filler,
    left: lies.demand.slice(),
    manner: { worth, chance, tries: 1, stray: 0, rise: 0, loose: 0, repeat: 'repeat' },
    limit: Number.POSITIVE_INFINITY,
  }) as readonly Strip[];
  const start = of.start === null ? null : fromStripUses(lies, of.start);
  const best = start !== null && lengthOfStrips(start) <= lengthOfStrips(plain) ? start : plain;
  const state: State = {
    lies,
    filler,
    chance,
    pool: poolFor(() => state.worth),
    solver,
    best,
    length: lengthOfStrips(best),
    bound: 0,
    boundKind: 'area',
    worth,
    soft: worth,
    shown: null,
  };
  for (const strip of [...plain, ...(start ?? [])]) state.pool.add(strip);
  return state;
};

/** Share of its area in what a piece counts. */
const areaShare = 0.2;

export const setWorth = (state: State, worth: Float64Array): void => {
  const { area, width } = state.lies;
  state.worth = worth;
  state.soft = worth.map((y, k) => (1 - areaShare) * y + (areaShare * (area[k] as number)) / width);
};

/** Takes a bound, raised to the next length that strips can have, if it is better than the one there is. */
export const raiseBound = (state: State, bound: number, kind: BoundKind): void => {
  const up = Math.min(state.length, attainableFrom(bound, [...state.lies.heights]));
  if (up <= state.bound) return;
  state.bound = up;
  state.boundKind = kind;
  state.shown = null;
};

export const isProven = (state: State): boolean => state.length <= state.bound;

/** Takes a layout if it is shorter, and remembers its strips. */
export const offer = (state: State, strips: readonly Strip[] | null): void => {
  if (strips === null) return;
  for (const strip of strips) state.pool.add(strip);
  const length = lengthOfStrips(strips);
  if (length >= state.length) return;
  state.best = [...strips];
  state.length = length;
  state.shown = null;
};

/** The best so far, in the job's own units. */
export const foundIn = (state: State): StripsFound => {
  const { lies, best, length, bound, boundKind } = state;
  state.shown ??= {
    strips: toStripUses(lies, best),
    length: length * lies.heightUnit,
    bound: bound * lies.heightUnit,
    boundKind,
  };
  return state.shown;
};
