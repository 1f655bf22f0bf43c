// How many strips of at least some height does a layout need? Pieces that lie no flatter than that height need strips at least as
// high, and strips are counted whole: rows that say so raise the linear program's bound where strips are few. True only where
// strips are as high as some piece.
import { singlesFor } from './dive.ts';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import { type Level, linearOver } from './linear.ts';
import type { Strip } from './strip.ts';

export interface Levelled {
  readonly lies: Lies;
  readonly filler: Filler;
  /** Strips to begin with; every kind is in one of them. */
  readonly strips: readonly Strip[];
}

/**
 * Bounds on the length in units of height, not rounded; one a step.
 *
 * @source the level bound of Lodi, Martello and Vigo 2004 made whole, here with stacks; from memory
 */
export function* levelledOver({ lies, filler, strips }: Levelled): Generator<number, void, void> {
  const singles = singlesFor(lies);
  const highest = lies.heights.slice(-1);
  const levels: Level[] = [];
  for (const height of lies.heights) {
    const demand = lies.demand.map((n, k) => ((lies.flat[k] as number) >= height ? n : 0));
    if (demand.every((n) => n === 0)) break;
    let count = 0;
    for (const { bound } of steps(
      linearOver({ lies, filler, demand, levels: [], cost: 'one-height', heights: highest, strips: singles }),
    )) {
      count = Math.ceil(bound / (highest[0] as number) - 1e-6);
    }
    levels.push({ height, least: count });
    yield 0;
  }
  // a level that asks for no more than the next one above it says nothing new
  const telling = levels.filter((level, i) => level.least > (levels[i + 1]?.least ?? 0));
  const linear = linearOver({
    lies,
    filler,
    demand: lies.demand,
    levels: telling,
    cost: 'own-height',
    heights: lies.heights,
    strips: [...singles, ...strips],
  });
  for (const { bound } of steps(linear)) yield bound;
}

/** What a generator yields, and what it returns at its end. */
function* steps<T>(all: Generator<T, T, void>): Generator<T, void, void> {
  for (;;) {
    const { value, done } = all.next();
    yield value;
    if (done === true) return;
  }
}
