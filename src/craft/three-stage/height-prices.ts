// Which strips of which heights are worth more than they cost, where it costs or saves something for a strip to be so high? Runs of heights that
// cannot hold any are passed over whole.
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import type { Limit } from './limit.ts';
import type { Strip } from './strip.ts';
import { fillAcross, filledAcross } from './worth-most.ts';

export interface Pricing {
  readonly lies: Lies;
  readonly filler: Filler;
  /** That strips may have, rising. */
  readonly heights: Int32Array;
  readonly rows: readonly Limit[];
  /** Of one piece of each kind. */
  readonly worth: Float64Array;
  /** Of one strip more in each of the rows. */
  readonly extras: Float64Array;
}

/** Strips added in one round at most. */
const mostFresh = 12;
/** How far worths of a strip may lie above its height for want of digits. */
const near = 1e-8;

interface Fresh {
  readonly strip: Strip;
  readonly height: number;
  readonly rate: number;
}

/** A run of heights without a limit inside it: strips of all of them get the same for their height. */
interface Span {
  readonly first: number;
  readonly last: number;
  /** What a strip is worth for being so high. */
  readonly extra: number;
}

/**
 * Strips worth more than their height, and the greatest worth of any strip by its height, at least 1. A strip is worth no more
 * than a higher one with room for it: runs of heights whose highest is not worth the lowest's cost are passed over whole.
 */
export const betterStrips = (of: Pricing): { readonly fresh: readonly Fresh[]; readonly excess: number } => {
  const { lies, heights, filler, worth } = of;
  filler.stacks.build({ worth, left: lies.demand, height: heights.at(-1) as number, widest: lies.width });
  const fresh: Fresh[] = [];
  let excess = 1;
  const look = ({ first, last, extra }: Span): void => {
    const low = heights[first] as number;
    const high = heights[last] as number;
    const value = fillAcross({ lies, filler, demand: lies.demand, height: high });
    // of all heights of the run none has a higher rate
    if ((value + extra) / low <= excess + near) return;
    const rate = (value + extra) / high;
    if (rate > 1 + near && value > 0) {
      const strip = filledAcross({ lies, filler, height: high });
      fresh.push({ strip, rate, height: Math.max(low, strip.height) });
    }
    excess = Math.max(excess, rate);
    const middle = (first + last - 1) >> 1;
    if (middle + 1 < last) look({ first: middle + 1, last: last - 1, extra });
    if (first < last) look({ first, last: middle, extra });
  };
  for (const span of spansOf(of)) look(span);
  fresh.sort((a, b) => b.rate - a.rate || a.height - b.height);
  return { fresh: fresh.slice(0, mostFresh), excess };
};

const spansOf = ({ heights, rows, extras }: Pricing): readonly Span[] => {
  const telling = rows
    .map((row, i) => ({ from: row.height, extra: (row.way === 'least' ? 1 : -1) * (extras[i] as number) }))
    .filter(({ extra }) => extra !== 0)
    .sort((a, b) => a.from - b.from);
  const spans: Span[] = [];
  let extra = 0;
  let first = 0;
  let next = 0;
  while (first < heights.length) {
    for (; next < telling.length && (telling[next] as Telling).from <= (heights[first] as number); next++)
      extra += (telling[next] as Telling).extra;
    const end = telling[next]?.from ?? Number.POSITIVE_INFINITY;
    let last = first;
    while (last + 1 < heights.length && (heights[last + 1] as number) < end) last++;
    spans.push({ first, last, extra });
    first = last + 1;
  }
  return spans;
};

interface Telling {
  readonly from: number;
  readonly extra: number;
}
