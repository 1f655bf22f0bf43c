// The best layout and the best bound so far, and the length that is worth working for next.
import {
  attainableFrom,
  type BoundKind,
  type Job,
  lengthOf,
  lengthSoldBelow,
  type ShopStep,
  type StripsFound,
  type StripUse,
  withoutSurplus,
} from '#craft/strips';
import { type ColumnUse, columnOf, countsOfUses, lengthOfUses, merged, stripsOf } from './column.ts';
import type { Task } from './task.ts';

/** All lengths in the task's height units. */
export interface Standing {
  readonly uses: () => readonly ColumnUse[];
  readonly length: () => number;
  readonly bound: () => number;
  readonly isProven: () => boolean;
  /** Takes a layout that is no longer than the best; equal ones too, to go on from elsewhere. */
  readonly accept: (uses: readonly ColumnUse[] | null) => void;
  readonly raise: (bound: number, kind: BoundKind) => void;
  /** Raises a bound to a length that a layout can have. */
  readonly round: (bound: number) => number;
  /**
   * A layout longer than this is of no use at present: what the shop sells in fewer steps than the best needs, as long as it is open
   * whether that can be had; then whatever is shorter than the best.
   */
  readonly limit: () => number;
  readonly found: () => StripsFound;
}

export const standingFor = (of: {
  readonly task: Task;
  readonly shop: ShopStep | null;
  readonly start: readonly StripUse[];
}): Standing => {
  const { task, shop } = of;
  const { job, heightUnit: unit } = task;
  let strips = of.start;
  let uses = columnsOf(task, strips);
  let length = lengthOf(strips) / unit;
  let bound = 0;
  let kind: BoundKind = 'area';
  const isShown = { now: true };
  const limit = (): number => {
    const target = shop === null ? -1 : Math.floor(lengthSoldBelow(length * unit, shop) / unit);
    return target >= bound ? target : length - 1;
  };
  return {
    uses: () => uses,
    length: () => length,
    bound: () => bound,
    isProven: () => length <= bound,
    accept: (found) => {
      if (found === null) return;
      const lean = withoutMore(task, merged(found));
      const now = lengthOfUses(task, lean);
      if (now > length) return;
      uses = lean;
      length = now;
      isShown.now = false;
    },
    raise: (to, by) => {
      if (to <= bound) return;
      bound = Math.min(to, length);
      kind = by;
    },
    round: (to) => attainableFrom(to, task.heights),
    limit,
    found: () => {
      if (!isShown.now) strips = withoutSurplus(job, stripsOf(task, uses));
      isShown.now = true;
      return { strips, length: length * unit, bound: bound * unit, boundKind: kind };
    },
  };
};

/** Strips that hold more than is needed give it back, and may be lower for it. */
const withoutMore = (task: Task, uses: readonly ColumnUse[]): readonly ColumnUse[] => {
  const counts = countsOfUses(task, uses);
  if (counts.every((n, kind) => n === task.demand[kind])) return uses;
  return columnsOf(task, withoutSurplus(task.job, stripsOf(task, uses)));
};

const columnsOf = (task: Task, strips: readonly StripUse[]): readonly ColumnUse[] =>
  strips.flatMap(({ pattern, times }) => {
    const counts = new Int32Array(task.kinds);
    for (const part of pattern.parts)
      for (const run of part.stack.runs) counts[run.kind] = (counts[run.kind] as number) + run.times * part.times;
    const column = columnOf(task, counts);
    return column === null ? [] : [{ column, times }];
  });

/** What bounds a layout at first sight: all pieces side by side over the whole cloth, and the highest piece. */
export const plainBound = (job: Job): number => {
  let area = 0;
  let tallest = 0;
  for (const k of job.kinds) {
    if (k.count === 0) continue;
    area += k.width * k.height * k.count;
    const canTurn = k.mayTurn && k.height <= job.width;
    tallest = Math.max(tallest, canTurn ? Math.min(k.width, k.height) : k.height);
  }
  return Math.max(tallest, Math.ceil(area / job.width));
};
