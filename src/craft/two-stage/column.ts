// One way to fill a strip, as a column of the programs: a level and so many pieces of each kind.
import { patternOf, type StripPattern, type StripUse, stackOf } from '#craft/strips';
import { runIn, type Task } from './task.ts';

export interface Column {
  readonly level: number;
  /** Kinds in rising order, none twice, with their counts. */
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

export interface ColumnUse {
  readonly column: Column;
  readonly times: number;
}

/** The column that gives these counts from the lowest strip that holds them; null when there is none. */
export const columnOf = (task: Task, counts: ArrayLike<number>): Column | null => {
  const kinds: number[] = [];
  const times: number[] = [];
  let level = 0;
  for (let i = 0; i < task.kinds; i++) {
    const n = counts[i] as number;
    if (n === 0) continue;
    kinds.push(i);
    times.push(n);
    level = Math.max(level, task.lowest[i] as number);
  }
  for (; level < task.heights.length; level++) {
    let used = 0;
    for (let e = 0; e < kinds.length; e++)
      used += (times[e] as number) * (task.widths[level * task.kinds + (kinds[e] as number)] as number);
    if (used <= task.room) return { level, kinds, counts: times };
  }
  return null;
};

/** What a strip costs beyond the worth of its pieces. */
export const lossAt = ({ level, kinds, counts }: Column, prices: Float64Array, costs: Float64Array): number => {
  let loss = costs[level] as number;
  for (let e = 0; e < kinds.length; e++) loss -= (prices[kinds[e] as number] as number) * (counts[e] as number);
  return loss;
};

export const columnKey = (column: Column): string => {
  let key = `${column.level}`;
  for (let e = 0; e < column.kinds.length; e++) key += `,${column.kinds[e]}*${column.counts[e]}`;
  return key;
};

export const heightAt = (task: Task, column: Column): number => task.heights[column.level] as number;

export const lengthOfUses = (task: Task, uses: readonly ColumnUse[]): number =>
  uses.reduce((sum, use) => sum + use.times * heightAt(task, use.column), 0);

/** Pieces of each kind. */
export const countsOfUses = (task: Task, uses: readonly ColumnUse[]): Int32Array => {
  const counts = new Int32Array(task.kinds);
  for (const { column, times } of uses) takeFrom(counts, column, -times);
  return counts;
};

/** Equal strips counted together. */
export const merged = (uses: readonly ColumnUse[]): readonly ColumnUse[] => {
  const all = new Map<string, { readonly column: Column; times: number }>();
  for (const { column, times } of uses) {
    const key = columnKey(column);
    const known = all.get(key);
    if (known === undefined) all.set(key, { column, times });
    else known.times += times;
  }
  return [...all.values()];
};

/** Whether a strip holds no more of any kind than is left. */
export const holdsAtMost = (column: Column, left: ArrayLike<number>): boolean => {
  for (let e = 0; e < column.kinds.length; e++)
    if ((column.counts[e] as number) > (left[column.kinds[e] as number] as number)) return false;
  return true;
};

/** How often a strip can be cut before something it holds is no longer needed. */
export const timesWithin = (column: Column, left: ArrayLike<number>): number => {
  let times = Number.POSITIVE_INFINITY;
  for (let e = 0; e < column.kinds.length; e++)
    times = Math.min(times, Math.floor((left[column.kinds[e] as number] as number) / (column.counts[e] as number)));
  return times;
};

export const takeFrom = (left: Int32Array, column: Column, times: number): void => {
  for (let e = 0; e < column.kinds.length; e++) {
    const kind = column.kinds[e] as number;
    left[kind] = (left[kind] as number) - times * (column.counts[e] as number);
  }
};

export const stripsOf = (task: Task, uses: readonly ColumnUse[]): readonly StripUse[] =>
  uses.map(({ column, times }) => ({ pattern: stripOf(task, column), times }));

const stripOf = (task: Task, column: Column): StripPattern =>
  patternOf(
    column.kinds.map((kind, e) => ({
      stack: stackOf(task.job, [runIn(task, kind, column.level)]),
      times: column.counts[e] as number,
    })),
  );
