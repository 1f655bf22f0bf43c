// Pairs of a width and a height for each way to take pieces, none of which is beaten both ways by another of its way.

/** Of one way the widths rise and the heights fall. */
export interface Fronts {
  /** Where each way's pairs begin in the lists; one more than there are ways. */
  readonly starts: Int32Array;
  readonly widths: readonly number[];
  readonly heights: readonly number[];
}

/** The lists while they are written: pairs of a way are put at the end. */
export interface Writing extends Fronts {
  readonly widths: number[];
  readonly heights: number[];
}

/** Pairs looked at between two yields: about 10 ms. */
const pairsAtOnce = 150_000;

/**
 * Fronts way by way in rising order; each may be made of those before it.
 *
 * @param write puts the pairs of one way at the end of the lists; tells how many it looked at
 */
export function* frontsBy(size: number, write: (way: number, into: Writing) => number): Generator<void, Fronts, void> {
  const fronts: Writing = { starts: new Int32Array(size + 1), widths: [], heights: [] };
  let looked = 0;
  for (let way = 0; way < size; way++) {
    looked += write(way, fronts);
    if (looked > pairsAtOnce) {
      looked = 0;
      yield;
    }
    fronts.starts[way + 1] = fronts.widths.length;
  }
  return fronts;
}

/** Whether a way has any pairs. */
export const isIn = ({ starts }: Fronts, way: number): boolean => starts[way] !== starts[way + 1];

/** Least width of a way's pairs that are no higher than this; Infinity when none is. */
export const narrowest = ({ starts, widths, heights }: Fronts, way: number, height: number): number => {
  for (let i = starts[way] as number; i < (starts[way + 1] as number); i++)
    if ((heights[i] as number) <= height) return widths[i] as number;
  return Number.POSITIVE_INFINITY;
};

/** Least height of a way's pairs; Infinity when it has none. */
export const lowest = (fronts: Fronts, way: number): number =>
  isIn(fronts, way) ? (fronts.heights[(fronts.starts[way + 1] as number) - 1] as number) : Number.POSITIVE_INFINITY;

/** Fronts whose heights are told by their place in a rising list of all there are. */
export interface Ranked {
  readonly fronts: Fronts;
  readonly all: readonly number[];
}

export const rankedFrom = (fronts: Fronts): Ranked => {
  const all = [...new Set(fronts.heights)].sort((a, b) => a - b);
  const places = new Map(all.map((height, place) => [height, place]));
  return { fronts: { ...fronts, heights: fronts.heights.map((height) => places.get(height) as number) }, all };
};
