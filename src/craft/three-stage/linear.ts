// How short could a layout be if strips could be cut in fractions? The linear program over all strips, made of the few that
// matter: each round asks the worths of the pieces for better strips. Gives a bound, and what pieces are worth.
import { type LinearProgram, linearProgramFor } from '#ground/search';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import type { Strip } from './strip.ts';
import { fillAcross, filledAcross } from './worth-most.ts';

export interface Linear {
  /** No layout in strips of the heights asked for is shorter; units of height, not rounded. */
  readonly bound: number;
  /** Length that one more piece of a kind costs, at the best bound so far. */
  readonly worth: Float64Array;
  /** Strips with the fractions that the program takes of them. */
  readonly support: readonly (readonly [Strip, number])[];
  readonly done: boolean;
}

/** So many strips at least have this height or more. */
export interface Level {
  readonly height: number;
  readonly least: number;
}

export interface LinearTask {
  readonly lies: Lies;
  readonly filler: Filler;
  /** Pieces of each kind. */
  readonly demand: Int32Array;
  readonly levels: readonly Level[];
  /** What a strip costs: its height, or where strips are counted the same for each, the greatest of `heights`. */
  readonly cost: 'own-height' | 'one-height';
  /** Heights that strips may have, rising. */
  readonly heights: Int32Array;
  /** Strips to begin with; every kind is in one of them. */
  readonly strips: readonly Strip[];
}

/** One round of new strips a step. The bound holds for layouts of strips of the given heights. */
export function* linearOver(task: LinearTask): Generator<Linear, Linear, void> {
  const { lies, demand, levels } = task;
  const program = linearProgramFor([...demand, ...levels.map((level) => level.least)]);
  const columns: Strip[] = [];
  for (const strip of new Set(task.strips)) addStrip({ program, columns, strip, task });
  let bound = 0;
  let worth = lies.area.map((a) => a / lies.width);
  for (;;) {
    while (program.solve(pivotsAtOnce) === 'stopped') yield { bound, worth, support: [], done: false };
    const duals = program.duals().map((y) => Math.max(0, y));
    const pieces = duals.slice(0, lies.kinds);
    const above = levels.map((level, i) => ({ height: level.height, worth: duals[lies.kinds + i] as number }));
    const { fresh, excess } = betterStrips({ task, worth: pieces, above });
    const total =
      pieces.reduce((all, y, k) => all + y * (demand[k] as number), 0) +
      levels.reduce((all, level, i) => all + level.least * (duals[lies.kinds + i] as number), 0);
    if (total / excess > bound) {
      bound = total / excess;
      worth = pieces;
    }
    for (const strip of fresh) addStrip({ program, columns, strip, task });
    const support = program.support().map(([j, x]) => [columns[j] as Strip, x] as const);
    const linear = { bound, worth, support, done: fresh.length === 0 || total - bound < 1e-7 * total };
    if (linear.done) return linear;
    yield linear;
  }
}

const addStrip = (of: {
  readonly program: LinearProgram;
  readonly columns: Strip[];
  readonly strip: Strip;
  readonly task: LinearTask;
}): void => {
  const { program, columns, strip, task } = of;
  const rows: number[] = [];
  const factors: number[] = [];
  for (let i = 0; i < strip.gives.length; i += 2) {
    rows.push(strip.gives[i] as number);
    factors.push(strip.gives[i + 1] as number);
  }
  task.levels.forEach((level, i) => {
    if (strip.height < level.height) return;
    rows.push(task.lies.kinds + i);
    factors.push(1);
  });
  program.addColumn(task.cost === 'own-height' ? strip.height : (task.heights.at(-1) as number), rows, factors);
  columns.push(strip);
};

/** Pivots in one step: few, so that a step is short. */
const pivotsAtOnce = 60;
/** Strips added in one round at most. */
const mostFresh = 24;
/** How far worths of a strip may lie above its height for want of digits. */
const near = 1e-8;

/**
 * For each height the strip worth most, if it is worth more than its height.
 *
 * @returns excess: the greatest worth of any strip by its height, at least 1; worths divided by it suit every strip
 */
const betterStrips = (of: {
  readonly task: LinearTask;
  readonly worth: Float64Array;
  /** What a strip is worth for being at least so high. */
  readonly above: readonly { readonly height: number; readonly worth: number }[];
}): { readonly fresh: readonly Strip[]; readonly excess: number } => {
  const { task, worth, above } = of;
  const { lies, filler, heights, demand } = task;
  const highest = heights.at(-1) as number;
  filler.stacks.build({ worth, left: demand, height: highest, widest: lies.width });
  const found: { readonly rate: number; readonly strip: Strip }[] = [];
  let excess = 1;
  for (const height of heights) {
    const own = fillAcross({ lies, filler, demand, height });
    const levels = above.reduce((all, level) => (level.height <= height ? all + level.worth : all), 0);
    const rate = (own + levels) / height;
    excess = Math.max(excess, rate);
    if (rate <= 1 + near || own === 0) continue;
    found.push({ rate, strip: filledAcross({ lies, filler, height }) });
  }
  found.sort((a, b) => b.rate - a.rate || a.strip.height - b.strip.height);
  return { fresh: found.slice(0, mostFresh).map((f) => f.strip), excess };
};
