// How short could a layout be if strips could be cut in fractions, but only so many of them were at least so high? The linear
// program over all strips under such limits, made of the few that matter; each height is priced together with its limits.
import { type LinearProgram, linearProgramFor } from '#ground/search';
import { singlesFor } from './dive.ts';
import type { Filler } from './fill.ts';
import { betterStrips } from './height-prices.ts';
import type { Lies } from './lies.ts';
import { type Limit, leastOf } from './limit.ts';
import type { Strip } from './strip.ts';

export interface Relaxed {
  /** No layout within the limits is shorter; units of height, not rounded. Far above `longest` where there is none. */
  readonly bound: number;
  /** Heights of the strips that the program takes, from the greatest down, and how many of each; none where it was not solved. */
  readonly taken: readonly (readonly [height: number, strips: number])[];
  /** Length that a piece of each kind costs under the limits. */
  readonly worth: Float64Array;
}

export interface HeightProgram {
  /**
   * Solves under these limits and no others. One round of new strips a step.
   *
   * @param longest bounds above it are not driven further
   */
  readonly within: (limits: readonly Limit[], longest: number) => Generator<void, Relaxed, void>;
  /** Strips that the program takes at present, with the fractions. */
  readonly support: () => readonly (readonly [Strip, number])[];
}

/** The strips known, and the program over them under the limits of the moment. */
interface Going {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly heights: Int32Array;
  readonly round: (bound: number) => number;
  readonly singles: readonly Strip[];
  columns: Column[];
  program: LinearProgram;
  rows: readonly Limit[];
  /** How often limits were set. */
  turn: number;
}

interface Column {
  /** Null for the stopgap. */
  readonly strip: Strip | null;
  readonly height: number;
  /** Turn in which the program took it last. */
  taken: number;
}

/** The stopgap costs so many times the highest strip. */
const stopgapCost = 1e4;
/** Strips that one set of limits hands on to the next: those that were taken last. */
const mostKept = 250;
/** Rounds of new strips under the same limits. */
const mostRounds = 60;

/**
 * @param of.heights that strips may have, rising; strips higher than the last are of no use
 * @param of.strips to begin with
 * @param of.round  raises a bound to a length that a layout can have
 */
export const heightProgramFor = (of: {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly heights: Int32Array;
  readonly strips: readonly Strip[];
  readonly round: (bound: number) => number;
}): HeightProgram => {
  const { lies, heights } = of;
  const highest = heights.at(-1) as number;
  const strips = [...new Set(of.strips)].filter(({ height }) => height <= highest);
  const going: Going = {
    ...of,
    singles: singlesFor(lies),
    columns: strips.map((strip) => ({ strip, height: strip.height, taken: 0 })),
    program: linearProgramFor(lies.demand),
    rows: [],
    turn: 0,
  };
  return {
    within: (limits, longest) => solvedWithin(going, limits, longest),
    support: () =>
      going.program.support().flatMap(([j, x]) => {
        const { strip } = going.columns[j] as Column;
        return strip === null ? [] : [[strip, x] as const];
      }),
  };
};

/** A program of its own for these limits: rows of others would only be in the way. */
const setLimits = (going: Going, limits: readonly Limit[]): void => {
  const { lies, heights, singles } = going;
  going.turn++;
  going.rows = limits;
  going.program = linearProgramFor([...lies.demand, ...limits.map(leastOf)]);
  const kept = going.columns
    .filter(({ strip }) => strip !== null && !singles.includes(strip))
    .sort((a, b) => b.taken - a.taken)
    .slice(0, mostKept);
  going.columns = [];
  addColumn(going, { strip: null, height: Number.POSITIVE_INFINITY, taken: going.turn });
  for (const strip of singles) {
    if (strip.height > (heights.at(-1) as number)) continue;
    addColumn(going, { strip, height: strip.height, taken: going.turn });
  }
  for (const column of kept) addColumn(going, column);
};

/** The stopgap meets every demand and every lower limit at a price that no layout has. */
const addColumn = (going: Going, column: Column): void => {
  const { lies, heights, program, columns } = going;
  const { strip, height } = column;
  const rows: number[] = [];
  const factors: number[] = [];
  const gives = strip?.gives ?? [...lies.demand].flatMap((n, kind) => [kind, n]);
  for (let i = 0; i < gives.length; i += 2) {
    rows.push(gives[i] as number);
    factors.push(gives[i + 1] as number);
  }
  going.rows.forEach((limit, i) => {
    const factor = factorIn(limit, column);
    if (factor === 0) return;
    rows.push(lies.kinds + i);
    factors.push(factor);
  });
  program.addColumn(strip === null ? stopgapCost * (heights.at(-1) as number) : height, rows, factors);
  columns.push(column);
};

const factorIn = ({ way, height, strips }: Limit, column: Column): number => {
  if (column.strip === null) return way === 'least' ? strips : 0;
  if (column.height < height) return 0;
  return way === 'least' ? 1 : -1;
};

/**
 * The bound of a round: worths scaled down until no strip of any height is worth more than it costs are a feasible dual.
 *
 * @source Farley 1990; from memory
 */
function* solvedWithin(going: Going, limits: readonly Limit[], longest: number): Generator<void, Relaxed, void> {
  setLimits(going, limits);
  const { lies, program, rows, round } = going;
  let bound = 0;
  let worth = new Float64Array(lies.kinds);
  for (let n = 0; n < mostRounds; n++) {
    const status = program.solve();
    // the stopgap meets every limit: only rounding brings us here
    if (status === 'infeasible') return { bound, taken: [], worth };
    const duals = program.duals().map((y) => Math.max(0, y));
    const pieces = duals.slice(0, lies.kinds);
    const total =
      pieces.reduce((all, y, k) => all + y * (lies.demand[k] as number), 0) +
      rows.reduce((all, row, i) => all + leastOf(row) * (duals[lies.kinds + i] as number), 0);
    const { fresh, excess } = betterStrips({ ...going, worth: pieces, extras: duals.subarray(lies.kinds) });
    if (total / excess > bound) {
      bound = total / excess;
      worth = pieces;
    }
    // further strips could not bring the bound to the next length that a layout can have
    if (fresh.length === 0 || bound > longest + 1e-6 || round(bound) >= round(program.objective())) break;
    for (const { strip, height } of fresh) addColumn(going, { strip, height, taken: going.turn });
    yield;
  }
  return { bound, taken: takenBy(going), worth };
}

const takenBy = ({ program, columns, turn }: Going): readonly (readonly [number, number])[] => {
  const taken = new Map<number, number>();
  for (const [j, x] of program.support()) {
    const column = columns[j] as Column;
    column.taken = turn;
    if (column.strip !== null) taken.set(column.height, (taken.get(column.height) ?? 0) + x);
  }
  return [...taken].sort((a, b) => b[0] - a[0]);
};
