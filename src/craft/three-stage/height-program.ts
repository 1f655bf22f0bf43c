// How short could a layout be if strips could be cut in fractions, but only so many of them were at least so high? The linear
// program over all strips under such limits, made of the few that matter; each height is priced together with its limits.
import { type LinearProgram, linearProgramFor } from '#ground/search';
import { singlesFor } from './dive.ts';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import type { Strip } from './strip.ts';
import { fillAcross, filledAcross } from './worth-most.ts';

/** At least or at most so many strips are as high as this or higher. */
export interface Limit {
  readonly height: number;
  readonly way: 'least' | 'most';
  readonly strips: number;
}

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
/** Strips added in one round at most. */
const mostFresh = 12;
/** How far worths of a strip may lie above its height for want of digits. */
const near = 1e-8;

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

const leastOf = ({ way, strips }: Limit): number => (way === 'least' ? strips : -strips);

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
    const { fresh, excess } = priced(going, pieces, duals.subarray(lies.kinds));
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

interface Fresh {
  readonly strip: Strip;
  readonly height: number;
  readonly rate: number;
}

/** A run of heights without a limit inside it: strips of all of them get the same for their height. */
interface Span {
  readonly first: number;
  readonly last: number;
  /** What a strip is worth for being so high. */
  readonly extra: number;
}

/**
 * Strips worth more than their height, and the greatest worth of any strip by its height, at least 1. A strip is worth no more
 * than a higher one with room for it: runs of heights whose highest is not worth the lowest's cost are passed over whole.
 */
const priced = (
  going: Going,
  worth: Float64Array,
  extras: Float64Array,
): { readonly fresh: readonly Fresh[]; readonly excess: number } => {
  const { lies, heights, filler } = going;
  filler.stacks.build({ worth, left: lies.demand, height: heights.at(-1) as number, widest: lies.width });
  const fresh: Fresh[] = [];
  let excess = 1;
  const look = ({ first, last, extra }: Span): void => {
    const low = heights[first] as number;
    const high = heights[last] as number;
    const value = fillAcross({ lies, filler, demand: lies.demand, height: high });
    // of all heights of the run none has a higher rate
    if ((value + extra) / low <= excess + near) return;
    const rate = (value + extra) / high;
    if (rate > 1 + near && value > 0) {
      const strip = filledAcross({ lies, filler, height: high });
      fresh.push({ strip, rate, height: Math.max(low, strip.height) });
    }
    excess = Math.max(excess, rate);
    const middle = (first + last - 1) >> 1;
    if (middle + 1 < last) look({ first: middle + 1, last: last - 1, extra });
    if (first < last) look({ first, last: middle, extra });
  };
  for (const span of spansOf(going, extras)) look(span);
  fresh.sort((a, b) => b.rate - a.rate || a.height - b.height);
  return { fresh: fresh.slice(0, mostFresh), excess };
};

const spansOf = ({ heights, rows }: Going, extras: Float64Array): readonly Span[] => {
  const telling = rows
    .map((row, i) => ({ from: row.height, extra: (row.way === 'least' ? 1 : -1) * (extras[i] as number) }))
    .filter(({ extra }) => extra !== 0)
    .sort((a, b) => a.from - b.from);
  const spans: Span[] = [];
  let extra = 0;
  let first = 0;
  let next = 0;
  while (first < heights.length) {
    for (; next < telling.length && (telling[next] as Telling).from <= (heights[first] as number); next++)
      extra += (telling[next] as Telling).extra;
    const end = telling[next]?.from ?? Number.POSITIVE_INFINITY;
    let last = first;
    while (last + 1 < heights.length && (heights[last + 1] as number) < end) last++;
    spans.push({ first, last, extra });
    first = last + 1;
  }
  return spans;
};

interface Telling {
  readonly from: number;
  readonly extra: number;
}
