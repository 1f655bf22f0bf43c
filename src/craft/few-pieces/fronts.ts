// Pairs of a width and a height for each way to take pieces, none of which is beaten both ways by another of its way.

export interface Fronts {
  /** Where each way's pairs begin in the lists; one more than there are ways. */
  readonly starts: Int32Array;
  readonly widths: readonly number[];
  readonly heights: readonly number[];
}

/** The pairs of one way while they are gathered. */
export interface Gathering {
  readonly widths: number[];
  readonly heights: number[];
}

/** Adds a pair unless one at hand is as narrow and as low; those that it beats go. */
export const gather = ({ widths, heights }: Gathering, width: number, height: number): void => {
  for (let i = 0; i < widths.length; i++)
    if ((widths[i] as number) <= width && (heights[i] as number) <= height) return;
  let kept = 0;
  for (let i = 0; i < widths.length; i++) {
    if ((widths[i] as number) >= width && (heights[i] as number) >= height) continue;
    widths[kept] = widths[i] as number;
    heights[kept] = heights[i] as number;
    kept++;
  }
  widths.length = kept;
  heights.length = kept;
  widths.push(width);
  heights.push(height);
};

/** Pairs looked at between two yields: about 10 ms. */
const pairsAtOnce = 150_000;

/**
 * Fronts way by way in rising order; each may be made of those before it.
 *
 * @param fill gathers the pairs of one way; tells how many it looked at
 */
export function* frontsBy(
  size: number,
  fill: (way: number, gathering: Gathering, before: Fronts) => number,
): Generator<void, Fronts, void> {
  const starts = new Int32Array(size + 1);
  const widths: number[] = [];
  const heights: number[] = [];
  const before: Fronts = { starts, widths, heights };
  const gathering: Gathering = { widths: [], heights: [] };
  let looked = 0;
  for (let way = 0; way < size; way++) {
    gathering.widths.length = 0;
    gathering.heights.length = 0;
    looked += fill(way, gathering, before);
    if (looked > pairsAtOnce) {
      looked = 0;
      yield;
    }
    for (let i = 0; i < gathering.widths.length; i++) {
      widths.push(gathering.widths[i] as number);
      heights.push(gathering.heights[i] as number);
    }
    starts[way + 1] = widths.length;
  }
  return before;
}

/** Whether a way has any pairs. */
export const isIn = ({ starts }: Fronts, way: number): boolean => starts[way] !== starts[way + 1];

/** Least width of a way's pairs that are no higher than this; Infinity when none is. */
export const narrowest = ({ starts, widths, heights }: Fronts, way: number, height: number): number => {
  let best = Number.POSITIVE_INFINITY;
  for (let i = starts[way] as number; i < (starts[way + 1] as number); i++)
    if ((heights[i] as number) <= height && (widths[i] as number) < best) best = widths[i] as number;
  return best;
};

/** Least height of a way's pairs; Infinity when it has none. */
export const lowest = ({ starts, heights }: Fronts, way: number): number => {
  let best = Number.POSITIVE_INFINITY;
  for (let i = starts[way] as number; i < (starts[way + 1] as number); i++)
    if ((heights[i] as number) < best) best = heights[i] as number;
  return best;
};
