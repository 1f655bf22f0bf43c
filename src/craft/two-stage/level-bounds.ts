// How many strips of some height or higher must every layout have? Pieces that are that high however they lie need strips
// that high, and a number of strips is whole: what the fractions of the linear program do not see.
import type { Column } from './column.ts';
import { type Master, masterFor, type Relaxed, setFloor, solveByColumns } from './master.ts';
import { type Task, taskFor } from './task.ts';

export interface LevelBounds {
  /** Strips needed by width alone: the widths of all pieces that are so high, over what a strip can hold. */
  readonly byWidth: Int32Array;
  /** Strips needed by the ways in which those widths fit together; worked out when first asked for. */
  readonly byFitting: (level: number) => number;
  readonly isKnown: (level: number) => boolean;
  readonly mayTurn: boolean;
}

/** @source the bound of level packing by the widths of the higher pieces, made whole level by level: docs/formulas.md#layout */
export const levelBoundsFor = (task: Task): LevelBounds => {
  const known = new Map<number, number>();
  return {
    mayTurn: task.lies.some((l) => l.turned),
    byWidth: stripsByWidth(task, task.demand),
    isKnown: (level) => known.has(level),
    byFitting: (level) => {
      const found = known.get(level) ?? stripsFitting(task, level);
      known.set(level, found);
      return found;
    },
  };
};

/** Strips of each level or higher that these pieces need by width alone. */
export const stripsByWidth = (task: Task, left: Int32Array): Int32Array => {
  const levels = task.heights.length;
  const top = (levels - 1) * task.kinds;
  const wide = new Float64Array(levels);
  for (let kind = 0; kind < task.kinds; kind++) {
    const n = left[kind] as number;
    if (n === 0) continue;
    const level = task.lowest[kind] as number;
    wide[level] = (wide[level] as number) + n * narrowest(task, kind, top);
  }
  const needed = new Int32Array(levels);
  let sum = 0;
  for (let level = levels - 1; level >= 0; level--) {
    sum += wide[level] as number;
    needed[level] = Math.ceil(sum / task.fullest);
  }
  return needed;
};

const narrowest = (task: Task, kind: number, top: number): number => task.widths[top + kind] as number;

/** The same question without heights: strips are alike, and pieces are told apart by width alone. */
const stripsFitting = (task: Task, level: number): number => {
  const top = (task.heights.length - 1) * task.kinds;
  const byWidth = new Map<number, number>();
  for (let kind = 0; kind < task.kinds; kind++) {
    if ((task.lowest[kind] as number) < level || task.demand[kind] === 0) continue;
    const w = narrowest(task, kind, top);
    byWidth.set(w, (byWidth.get(w) ?? 0) + (task.demand[kind] as number));
  }
  if (byWidth.size === 0) return 0;
  const kinds = [...byWidth].map(([width, count]) => ({ width, height: 1, count, mayTurn: false }));
  const flat = taskFor({ width: task.room, kinds });
  const { bound } = solveByColumns(masterFor(flat), { rounds: 200, cutoff: Number.POSITIVE_INFINITY });
  return Math.ceil(bound - 1e-6);
};

/** Strips of this level or higher in the program's answer. */
export const stripCounts = (master: Master): Float64Array => {
  const counts = new Float64Array(master.task.heights.length);
  for (const [c, x] of master.lp.support()) {
    const { level } = master.columns[c] as Column;
    for (let k = 0; k <= level; k++) counts[k] = (counts[k] as number) + x;
  }
  return counts;
};

/** Levels looked at by fitting in one go: each is a program of its own. */
const fittingsAtOnce = ({ kinds }: Task): number => (kinds > 50 ? 1 : 2);

/** Asks for the strips that levels need, where the program's answer has fewer. @returns whether there may be more to ask */
export const askForStrips = (master: Master, bounds: LevelBounds): boolean => {
  const counts = stripCounts(master);
  let asked = false;
  let fittings = 0;
  for (let level = 0; level < counts.length; level++) {
    const now = counts[level] as number;
    const whole = Math.ceil(now - 1e-6);
    if (whole - now < 1e-6 || whole <= (master.floors[level] as number)) continue;
    const wide = bounds.byWidth[level] as number;
    // pieces that turn leave the high strips: what those then need by fitting rarely reaches what the program takes
    const isFar = bounds.mayTurn && wide < whole - 1;
    const isByWidth = wide > now + 1e-6 || isFar;
    if (!isByWidth && !bounds.isKnown(level) && ++fittings > fittingsAtOnce(master.task)) return true;
    const needed = isByWidth ? wide : bounds.byFitting(level);
    if (needed <= now + 1e-6) continue;
    setFloor(master, level, needed);
    asked = true;
  }
  return asked;
};

/** The same by width alone, for the pieces left: quick enough to ask at every choice. */
export const askByWidth = (master: Master): boolean => {
  const counts = stripCounts(master);
  const needed = stripsByWidth(master.task, master.left);
  let asked = false;
  for (let level = 0; level < counts.length; level++) {
    const least = needed[level] as number;
    if (least <= (counts[level] as number) + 1e-6 || least <= (master.floors[level] as number)) continue;
    setFloor(master, level, least);
    asked = true;
  }
  return asked;
};

/** Of the tables of prices, filled between two yields. */
const cellsAtOnce = 1e6;
/** Of all rounds between two yields: with many kinds a round takes many steps of the simplex. */
const kindsAtOnce = 250;

/** Solves with the rows of the level bounds, added as they are found to be short. */
export function* solveWithLevels(master: Master, bounds: LevelBounds): Generator<Relaxed, Relaxed, void> {
  let best = 0;
  const { room, lies, kinds } = master.task;
  const byTables = Math.floor(cellsAtOnce / (room * lies.length));
  const rounds = Math.max(1, Math.min(6, byTables, Math.floor(kindsAtOnce / kinds)));
  for (;;) {
    const relaxed = solveByColumns(master, { rounds, cutoff: Number.POSITIVE_INFINITY });
    best = Math.max(best, relaxed.bound);
    const now = { ...relaxed, bound: best };
    if (relaxed.status === 'infeasible' || (relaxed.status === 'whole' && !askForStrips(master, bounds))) return now;
    yield now;
  }
}
