// Which strips are worth more, at given prices of the pieces, than the strip costs? One pass for all heights, and an exact
// look at single heights where a kind that may turn was counted both ways.
import { type RankedKnapsack, rankedKnapsackFor } from '#ground/search';
import { type Column, columnOf } from './column.ts';
import type { Task } from './task.ts';

export interface Pricer {
  /**
   * @param prices of one piece of each kind
   * @param limits pieces of each kind that one strip may hold at most
   * @param costs  of a strip of each level
   */
  readonly price: (prices: Float64Array, limits: Int32Array, costs: Float64Array) => Priced;
  /** The fullest worth of one strip of exactly this level. */
  readonly fillLevel: (prices: Float64Array, limits: Int32Array, level: number) => LevelFill;
  /** Cells of tables filled so far: the work done. */
  readonly work: () => number;
}

export interface Priced {
  /** Worth more than they cost. */
  readonly columns: readonly Column[];
  /** By level: no strip of that level is worth more. A view, written over by the next call. */
  readonly worths: Float64Array;
}

export interface LevelFill {
  readonly worth: number;
  /** Of each kind; written over by the next call. */
  readonly counts: Int32Array;
}

const gainful = 1e-7;

export const pricerFor = (task: Task): Pricer => {
  const { kinds, lies, heights, room } = task;
  const all = rankedKnapsackFor(
    lies.map((l) => ({ size: l.width, rank: l.height })),
    room,
  );
  const levels: (RankedKnapsack | undefined)[] = heights.map(() => undefined);
  const lieWorths = new Float64Array(lies.length);
  const lieMost = new Int32Array(lies.length);
  const taken = new Int32Array(lies.length);
  const counts = new Int32Array(kinds);
  const worths = new Float64Array(heights.length);
  let work = 0;

  const fillLevel = (prices: Float64Array, limits: Int32Array, level: number): LevelFill => {
    const one = levels[level] ?? levelKnapsack(task, level);
    levels[level] = one;
    one.fill(prices, limits);
    work += room * kinds;
    one.trace(0, room, counts);
    return { worth: one.worth(0, room), counts };
  };

  /** The counts of the last pass at a level; false when a kind was counted beyond its limit. */
  const traceAt = (level: number, limits: Int32Array): boolean => {
    all.trace(level, room, taken);
    counts.fill(0);
    for (let l = 0; l < lies.length; l++) {
      const n = taken[l] as number;
      if (n === 0) continue;
      const kind = (lies[l] as { kind: number }).kind;
      counts[kind] = (counts[kind] as number) + n;
    }
    for (let i = 0; i < kinds; i++) if ((counts[i] as number) > (limits[i] as number)) return false;
    return true;
  };

  return {
    work: () => work,
    fillLevel,
    price: (prices, limits, costs) => {
      for (let l = 0; l < lies.length; l++) {
        const kind = (lies[l] as { kind: number }).kind;
        lieWorths[l] = prices[kind] as number;
        lieMost[l] = limits[kind] as number;
      }
      all.fill(lieWorths, lieMost);
      work += room * lies.length;
      const columns: Column[] = [];
      for (let level = 0; level < heights.length; level++) {
        let worth = all.worth(level, room);
        const cost = costs[level] as number;
        if (worth > cost + gainful && !isRepeat({ level, worth, worths, costs })) {
          const within = traceAt(level, limits);
          if (!within) worth = fillLevel(prices, limits, level).worth;
          if (worth > cost + gainful) {
            // a strip higher than its pieces can be the cheaper one where a program asks for so many high strips
            const isGain = (low: number): boolean => worth > (costs[low] as number) + gainful;
            const column = columnOf(task, counts);
            if (column !== null) columns.push(isGain(column.level) ? column : { ...column, level });
          }
        }
        worths[level] = worth;
      }
      return { columns, worths };
    },
  };
};

/** The level below had this worth already, at no more cost. */
const isRepeat = (of: {
  readonly level: number;
  readonly worth: number;
  readonly worths: Float64Array;
  readonly costs: Float64Array;
}): boolean =>
  of.level > 0 &&
  of.worth <= (of.worths[of.level - 1] as number) + 1e-9 &&
  (of.costs[of.level] as number) >= (of.costs[of.level - 1] as number);

const levelKnapsack = (task: Task, level: number): RankedKnapsack =>
  rankedKnapsackFor(
    Array.from({ length: task.kinds }, (_, kind) => ({
      size: task.widths[level * task.kinds + kind] as number,
      rank: 1,
    })),
    task.room,
  );
