// Which strips can a layout within the limit hold at all? At the prices of a solved program a strip that costs more than it is
// worth adds the difference to the length; those that add too much are out, and what is left may be few enough to list.
import { type Column, columnOf, holdsAtMost } from './column.ts';
import type { Task } from './task.ts';

export interface StripsWithin {
  readonly task: Task;
  readonly prices: Float64Array;
  /** Of a strip of each level, its worth as a strip taken off. */
  readonly costs: Float64Array;
  readonly left: Int32Array;
  /** What one strip may add to the length at most. */
  readonly slack: number;
  /** Strips at most, and steps of the search for each of them: above that the list is given up. */
  readonly most: number;
}

/** Every strip, filled until nothing more fits or is needed, that adds no more than the slack; null when they are too many. */
export const stripsWithin = (of: StripsWithin): readonly Column[] | null => {
  const columns: Column[] = [];
  const budget = { steps: of.most * 40 };
  for (let level = 0; level < of.task.heights.length; level++) {
    const found = levelStrips(of, level, budget);
    if (found === null) return null;
    columns.push(...found);
    if (columns.length > of.most) return null;
  }
  return columns;
};

const levelStrips = (of: StripsWithin, level: number, budget: { steps: number }): readonly Column[] | null => {
  const { task, prices, left } = of;
  const need = (of.costs[level] as number) - of.slack - 1e-6;
  const kinds = kindsFor(of, level);
  const isTop = kinds.map((kind) => task.lowest[kind] === level || isNarrowerHere(task, kind, level));
  const width = (kind: number): number => task.widths[level * task.kinds + kind] as number;
  const best = worthsAfter(of, level, kinds);
  if ((best[0]?.[task.room] as number) < need) return [];
  const narrowest = kinds.map((_, at) => Math.min(...kinds.slice(at).map(width)));
  const counts = new Int32Array(task.kinds);
  const found: Column[] = [];
  const go = (at: number, room: number, worth: number, top: boolean): boolean => {
    if (--budget.steps < 0) return false;
    if (worth + (best[at]?.[room] as number) < need) return true;
    if (at === kinds.length || room < (narrowest[at] as number)) {
      if (!top || !isFull({ kinds, counts, left, room, width })) return true;
      const column = columnOf(task, counts);
      if (column !== null && column.level === level && holdsAtMost(column, left)) found.push(column);
      return found.length <= of.most;
    }
    const kind = kinds[at] as number;
    const w = width(kind);
    for (let n = Math.min(left[kind] as number, Math.floor(room / w)); n >= 0; n--) {
      counts[kind] = n;
      const goesOn = go(
        at + 1,
        room - n * w,
        worth + n * (prices[kind] as number),
        top || (n > 0 && (isTop[at] as boolean)),
      );
      if (!goesOn) return false;
    }
    counts[kind] = 0;
    return true;
  };
  return go(0, task.room, 0, false) ? found : null;
};

/** Dearest by width first: what they leave is soon too little or too wide. */
const kindsFor = ({ task, prices, left }: StripsWithin, level: number): readonly number[] => {
  const width = (kind: number): number => task.widths[level * task.kinds + kind] as number;
  return [...left.keys()]
    .filter((kind) => (left[kind] as number) > 0 && width(kind) <= task.room)
    .sort((a, b) => (prices[b] as number) / width(b) - (prices[a] as number) / width(a) || a - b);
};

/** A kind that can lie narrower in this level than in the one below may be what the height is for. */
const isNarrowerHere = (task: Task, kind: number, level: number): boolean =>
  level > 0 &&
  (task.widths[level * task.kinds + kind] as number) < (task.widths[(level - 1) * task.kinds + kind] as number);

/** By place in the list and room: the most worth of that kind and those after it. */
const worthsAfter = ({ task, prices, left }: StripsWithin, level: number, kinds: readonly number[]): Float64Array[] => {
  const rows: Float64Array[] = new Array(kinds.length + 1);
  rows[kinds.length] = new Float64Array(task.room + 1);
  for (let at = kinds.length - 1; at >= 0; at--) {
    const kind = kinds[at] as number;
    const w = task.widths[level * task.kinds + kind] as number;
    const row = (rows[at + 1] as Float64Array).slice();
    let copies = Math.min(left[kind] as number, Math.floor(task.room / w));
    for (let times = 1; copies > 0; times *= 2) {
      const now = Math.min(times, copies);
      copies -= now;
      const size = now * w;
      const worth = now * (prices[kind] as number);
      for (let room = task.room; room >= size; room--) {
        const sum = (row[room - size] as number) + worth;
        if (sum > (row[room] as number)) row[room] = sum;
      }
    }
    rows[at] = row;
  }
  return rows;
};

const isFull = (of: {
  readonly kinds: readonly number[];
  readonly counts: Int32Array;
  readonly left: Int32Array;
  readonly room: number;
  readonly width: (kind: number) => number;
}): boolean =>
  of.kinds.every((kind) => of.width(kind) > of.room || (of.counts[kind] as number) >= (of.left[kind] as number));
