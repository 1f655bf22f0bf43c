// How much cloth do pieces take, and how little could they, searched on for as long as somebody wants to know? For the two lengths
// alone: nothing is drawn.
import { openLayoutSearch } from '#craft/layout';
import { type Length, length } from '#craft/measure';
import { lowerBoundFor } from '#craft/strips';
import type { Demand } from './cloth.ts';
import { scaledJobFor } from './kinds.ts';

export interface OpenLayout {
  /** In the document's unit, before squaring and shrinkage: of the best layout so far. */
  readonly length: () => Length;
  /** No layout in strips is shorter. */
  readonly bound: () => Length;
  /** Whether the best is proven least, or nothing more is known to try. */
  readonly isDone: () => boolean;
  /** Each step takes some milliseconds, always the same for the same pieces. */
  readonly advance: (steps: number) => void;
}

/** Makes the first layout. The pieces fit the width, and there are some. */
export const openLayout = (of: { readonly width: Length; readonly demands: readonly Demand[] }): OpenLayout => {
  const { job, grid, unit, loose } = scaledJobFor({ ...of, turning: 'as-demanded' });
  const search = openLayoutSearch({ job, cutting: { stages: 3, stripHeights: 'any' }, shop: null, solver: null });
  const toLength = (units: number): Length => length((units * unit) / grid.per);
  const found = (): Length => toLength(search.found().length);
  if (!grid.exact) {
    // sizes were rounded up: only those rounded down bound anything
    const bound = length(lowerBoundFor(loose, Math.ceil(found() * grid.per)) / grid.per);
    return { length: found, bound: () => bound, isDone: search.isDone, advance: search.advance };
  }
  const area = toLength(lowerBoundFor(job, search.found().length));
  return {
    length: found,
    bound: () => length(Math.max(area, toLength(search.found().bound))),
    isDone: search.isDone,
    advance: search.advance,
  };
};
