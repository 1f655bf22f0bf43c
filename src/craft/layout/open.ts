// A layout search as a thing to hold on to: led on by steps for as long as its holder likes, in a worker or out of it.
import type { StripsFound } from '#craft/strips';
import { type LayoutSearchTask, searchLayout } from './search.ts';

export interface LayoutSearch {
  /** The best so far; a whole valid layout from the beginning. */
  readonly found: () => StripsFound;
  /** Whether the best is proven least, or nothing more is known to try. */
  readonly isDone: () => boolean;
  /** Searches on for so many steps, each of some milliseconds. @returns whether the best or its bound changed */
  readonly advance: (steps: number) => boolean;
}

/** Works out the first layout. To give up a search is to forget it: it holds nothing open. */
export const openLayoutSearch = (task: LayoutSearchTask): LayoutSearch => {
  const search = searchLayout(task);
  let last = search.next();
  return {
    found: () => last.value,
    isDone: () => last.done === true || last.value.bound >= last.value.length,
    advance: (steps) => {
      const before = last.value;
      for (let step = 0; step < steps && last.done !== true && last.value.bound < last.value.length; step++)
        last = search.next();
      return last.value.length !== before.length || last.value.bound !== before.bound;
    },
  };
};
