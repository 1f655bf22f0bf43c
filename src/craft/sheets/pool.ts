// Which of all sheets cut so far are worth keeping, to make new plans of? Those that, at the prices of the plan in fractions,
// cost least more than what they hold.
import type { SheetPattern, SheetTask } from './fill.ts';
import type { Sheet } from './job.ts';
import { keyOf } from './linear.ts';

interface Kept {
  readonly pattern: SheetPattern;
  readonly key: string;
  /** Cost less worth. */
  readonly dear: number;
}

export interface Pool {
  readonly offer: (pattern: SheetPattern) => void;
  /** At most so many, best first. */
  readonly best: (most: number) => readonly SheetPattern[];
}

/** Kept when there are twice as many. */
const mostKept = 4000;

/** @param prices of one piece of each kind, costs divided by `scale` */
export const poolFor = (task: SheetTask, prices: Float64Array, scale: number): Pool => {
  let kept: Kept[] = [];
  const keys = new Set<string>();
  const sort = (): void => {
    kept.sort((a, b) => a.dear - b.dear || (a.key < b.key ? -1 : 1));
  };
  return {
    offer: (pattern) => {
      const key = keyOf(pattern);
      if (keys.has(key)) return;
      keys.add(key);
      const worth = pattern.counts.reduce((sum, n, i) => sum + n * (prices[i] as number), 0);
      kept.push({ pattern, key, dear: (task.job.sheets[pattern.sheet] as Sheet).cost / scale - worth });
      if (kept.length < 2 * mostKept) return;
      sort();
      for (const { key: gone } of kept.slice(mostKept)) keys.delete(gone);
      kept = kept.slice(0, mostKept);
    },
    best: (most) => {
      sort();
      return kept.slice(0, most).map(({ pattern }) => pattern);
    },
  };
};
