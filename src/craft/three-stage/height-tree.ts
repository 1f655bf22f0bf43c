// The proof: how many strips of some height or higher are cut? Where the linear program takes a fraction of one, either fewer are cut
// or more, and each answer is a program of its own with a higher bound. The lowest bound of what is open holds for all layouts.
import type { HeightProgram } from './height-program.ts';
import { type Limit, tellingOf } from './limit.ts';

/** One part of the question: layouts whose strips keep within these limits, or have exactly these heights. */
type Part = { readonly bound: number; readonly number: number } & (
  | { readonly limits: readonly Limit[] }
  | { readonly whole: WholeStrips }
);

/** So many strips of each height, from the greatest down. */
export type StripCounts = readonly (readonly [height: number, strips: number])[];

/** Heights that the program takes whole strips of. */
export interface WholeStrips {
  readonly heights: StripCounts;
  /** Of all of them together. */
  readonly length: number;
  readonly worth: Float64Array;
  /** How often it was tried in vain to fill or to refute them. */
  readonly tries: number;
}

export interface Advance {
  readonly longest: number;
  readonly retries: 'now' | 'later';
}

export interface HeightTree {
  /** No layout is shorter than this, those longer than was of interest aside. */
  readonly bound: () => number;
  /** Nothing is left that could be split. */
  readonly isOver: () => boolean;
  /**
   * Looks at the part with the lowest bound; yields between pieces of the work.
   *
   * @param of.longest layouts longer than this are of no interest
   * @param of.retries whether whole strips that were tried in vain may be handed out again
   * @returns strips to be tried, which `settle` must be told of
   */
  readonly advance: (of: Advance) => Generator<void, WholeStrips | null, void>;
  /** @param answer 'none' when no layout has strips of exactly these heights, 'open' when it was tried in vain */
  readonly settle: (whole: WholeStrips, answer: 'none' | 'open') => void;
}

/** @param of.round raises a bound to a length that a layout can have */
export const heightTreeFor = (of: {
  readonly program: HeightProgram;
  readonly round: (bound: number) => number;
}): HeightTree => {
  const { program, round } = of;
  const open: Part[] = [{ limits: [], bound: 0, number: 0 }];
  /** Of the parts that are not looked at any more. */
  let closed = Number.POSITIVE_INFINITY;
  let numbered = 1;
  const put = (limits: readonly Limit[], bound: number): void => {
    open.push({ limits, bound, number: numbered++ });
  };
  const putWhole = (whole: WholeStrips, bound: number): void => {
    open.push({ whole, bound, number: numbered++ });
  };

  function* advance({ longest, retries }: Advance): Generator<void, WholeStrips | null, void> {
    const part = lowestOf(retries === 'later' ? open.filter(isSplit) : open);
    if (part === null) return null;
    if (part.bound > longest || 'whole' in part) takeOut(open, part);
    if (part.bound > longest) closed = Math.min(closed, part.bound);
    if (part.bound > longest) return null;
    if ('whole' in part) return part.whole;
    // the part stays open, with what is known of it, while it is looked at
    const { taken, bound: relaxed, worth } = yield* program.within(tellingOf(part.limits), longest);
    takeOut(open, part);
    const bound = Math.max(part.bound, round(relaxed));
    if (bound > longest || taken.length === 0) {
      closed = Math.min(closed, bound);
      return null;
    }
    const cut = fractionOf(taken);
    if (cut !== null) {
      const { height, strips } = cut;
      put([...part.limits, { height, way: 'most', strips: Math.floor(strips) }], bound);
      put([...part.limits, { height, way: 'least', strips: Math.ceil(strips) }], bound);
      return null;
    }
    const heights = taken.map(([height, x]) => [height, Math.round(x)] as const).filter(([, strips]) => strips > 0);
    const length = heights.reduce((all, [height, strips]) => all + height * strips, 0);
    for (const limits of othersThan(heights)) put([...part.limits, ...limits], bound);
    return { heights, length, worth, tries: 0 };
  }

  return {
    bound: () => open.reduce((least, part) => Math.min(least, part.bound), closed),
    isOver: () => open.length === 0,
    advance,
    settle: (whole, answer) => {
      if (answer === 'none') return;
      if (whole.tries < mostTries) putWhole({ ...whole, tries: whole.tries + 1 }, whole.length);
      else closed = Math.min(closed, whole.length);
    },
  };
};

/** Of one set of heights, each with more effort than the one before. */
const mostTries = 4;

/** Whether it can be split further: whole strips are tried again as they are. */
const isSplit = (part: Part): boolean => !('whole' in part);

/** Of equal ones the last that was put in: it asks for most. */
const lowestOf = (open: readonly Part[]): Part | null =>
  open.reduce<Part | null>(
    (best, part) =>
      best === null || part.bound < best.bound || (part.bound === best.bound && part.number > best.number)
        ? part
        : best,
    null,
  );

const takeOut = (open: Part[], part: Part): void => {
  open.splice(open.indexOf(part), 1);
};

/** The height whose number of strips so high or higher is most in between, weighed by how far down the next height is. */
const fractionOf = (
  taken: readonly (readonly [number, number])[],
): { readonly height: number; readonly strips: number } | null => {
  let best: { readonly height: number; readonly strips: number } | null = null;
  let most = 0;
  let strips = 0;
  taken.forEach(([height, x], i) => {
    strips += x;
    const between = Math.min(strips - Math.floor(strips), Math.ceil(strips) - strips);
    const weight = between * (1 + height - (taken[i + 1]?.[0] ?? 0));
    if (between < 1e-5 || weight <= most) return;
    most = weight;
    best = { height, strips };
  });
  return best;
};

/**
 * Limits that together leave out nothing but exactly these strips: from the greatest height down, as before so far, and then one strip
 * more above this height, or one less of it; or one more strip lower than all.
 */
const othersThan = (heights: StripCounts): readonly (readonly Limit[])[] => {
  const others: Limit[][] = [];
  const asBefore: Limit[] = [];
  let above = 0;
  for (const [height, strips] of heights) {
    const noneBetween: Limit = { height: height + 1, way: 'most', strips: above };
    others.push([...asBefore, { height: height + 1, way: 'least', strips: above + 1 }]);
    others.push([...asBefore, noneBetween, { height, way: 'most', strips: above + strips - 1 }]);
    above += strips;
    asBefore.push(noneBetween, { height, way: 'least', strips: above });
  }
  others.push([...asBefore, { height: 1, way: 'least', strips: above + 1 }]);
  return others;
};
