// One cloth with the pieces that some choices ask of it: how long its layout is so far, and how short it could be.
import { type ClothNature, type OpenLayout, openLayout } from '#craft/cutting';
import type { ClothAsk } from './cloth-asks.ts';
import { widestOf } from './cloth-prices.ts';

export interface LaidCloth {
  /** No layout in strips is shorter. */
  readonly bound: () => number;
  /** Infinite before it is laid. Of sheets, and where ends at hand may take some of it, no more than the bound is known. */
  readonly length: () => number;
  /** Whether a search may bring the two nearer to each other. */
  readonly isOpen: () => boolean;
  readonly advance: () => void;
}

/** Steps of the search of one cloth, at most: our own figure. After that little more is found in the time. */
const mostSteps = 60;

/** Steps made at once. */
const stride = 2;

/** @param of.ends area of what is at hand of the cloth */
export const laidCloth = (of: {
  readonly ask: ClothAsk;
  readonly nature: ClothNature;
  readonly ends: number;
}): LaidCloth => {
  const { ask, nature, ends } = of;
  const area = Math.max(0, ask.area - ends) / widestOf(nature);
  const isByLength = nature.length === null && nature.stock === undefined && ends === 0;
  if (!isByLength || ask.demands.length === 0)
    return { bound: () => area, length: () => area, isOpen: () => false, advance: () => undefined };
  let search: OpenLayout | null = null;
  let steps = 0;
  return {
    bound: () => Math.max(area, search?.bound() ?? 0),
    length: () => Math.max(area, search?.length() ?? Number.POSITIVE_INFINITY),
    isOpen: () => search === null || (steps < mostSteps && !search.isDone()),
    advance: () => {
      if (search === null) search = openLayout({ width: nature.width, demands: ask.demands });
      else search.advance(stride);
      steps += stride;
    },
  };
};
