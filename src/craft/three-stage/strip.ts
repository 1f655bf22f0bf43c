// A strip while layouts are searched: numbers only, and what it gives of each kind.
import { patternOf, type Run, type Stack, type StripPattern, type StripUse, stackOf } from '#craft/strips';
import { type Lies, stripHeightFor } from './lies.ts';

/** Ways of lying in a stack, each followed by how often. */
export type Pile = readonly number[];

export interface Strip {
  /** Units of height that it is cut at. */
  readonly height: number;
  readonly piles: readonly Pile[];
  /** Kinds in it, each followed by how many pieces; kinds rise. */
  readonly gives: readonly number[];
  /** Area of its pieces. */
  readonly filled: number;
}

export const pileHeight = (lies: Lies, pile: Pile): number => {
  let height = 0;
  for (let i = 0; i < pile.length; i += 2) height += (lies.tall[pile[i] as number] as number) * (pile[i + 1] as number);
  return height;
};

export const pileWidth = (lies: Lies, pile: Pile): number => {
  let width = 0;
  for (let i = 0; i < pile.length; i += 2) width = Math.max(width, lies.wide[pile[i] as number] as number);
  return width;
};

export const stripOf = (lies: Lies, piles: readonly Pile[]): Strip => {
  let tallest = 0;
  const counts = new Map<number, number>();
  for (const pile of piles) {
    tallest = Math.max(tallest, pileHeight(lies, pile));
    for (let i = 0; i < pile.length; i += 2) {
      const kind = lies.kind[pile[i] as number] as number;
      counts.set(kind, (counts.get(kind) ?? 0) + (pile[i + 1] as number));
    }
  }
  let filled = 0;
  const gives: number[] = [];
  for (const kind of [...counts.keys()].sort((a, b) => a - b)) {
    const times = counts.get(kind) as number;
    gives.push(kind, times);
    filled += times * (lies.area[kind] as number);
  }
  return { height: stripHeightFor(lies, tallest), piles, gives, filled };
};

/** How often a strip can be cut before some kind runs out. */
export const timesWithin = (strip: Strip, left: ArrayLike<number>): number => {
  let times = Number.POSITIVE_INFINITY;
  for (let i = 0; i < strip.gives.length; i += 2)
    times = Math.min(times, Math.floor((left[strip.gives[i] as number] as number) / (strip.gives[i + 1] as number)));
  return strip.gives.length === 0 ? 0 : times;
};

/** Takes a strip's pieces so many times from what is left; a count below zero puts them back. */
export const takeFrom = (strip: Strip, left: Int32Array, times = 1): void => {
  for (let i = 0; i < strip.gives.length; i += 2) {
    const kind = strip.gives[i] as number;
    left[kind] = (left[kind] as number) - times * (strip.gives[i + 1] as number);
  }
};

export const worthOf = (strip: Strip, worth: Float64Array): number => {
  let all = 0;
  for (let i = 0; i < strip.gives.length; i += 2)
    all += (worth[strip.gives[i] as number] as number) * (strip.gives[i + 1] as number);
  return all;
};

export const lengthOfStrips = (strips: readonly Strip[]): number => strips.reduce((all, s) => all + s.height, 0);

/** The same for strips that give the same pieces at the same height: which way they lie makes no difference to a search. */
export const giveKey = (strip: Strip): string => `${strip.height}:${strip.gives.join(',')}`;

/** The strips in the job's own units, equal ones counted. */
export const toStripUses = (lies: Lies, strips: readonly Strip[]): readonly StripUse[] => {
  const counted = new Map<Strip, number>();
  for (const strip of strips) counted.set(strip, (counted.get(strip) ?? 0) + 1);
  return [...counted.entries()].map(([strip, times]) => ({ pattern: toPattern(lies, strip), times }));
};

const toPattern = (lies: Lies, strip: Strip): StripPattern => {
  const stacks = strip.piles.map((pile): Stack => {
    const runs: Run[] = [];
    for (let i = 0; i < pile.length; i += 2) {
      const lie = pile[i] as number;
      const kind = lies.kind[lie] as number;
      runs.push({ kind, turned: lies.turned[lie] === 1, times: pile[i + 1] as number });
    }
    return stackOf(lies.job, runs);
  });
  const pattern = patternOf(stacks.map((stack) => ({ stack, times: 1 })));
  return { ...pattern, height: strip.height * lies.heightUnit };
};

/** Strips of a layout that exists, as this search holds them. */
export const fromStripUses = (lies: Lies, uses: readonly StripUse[]): readonly Strip[] => {
  const place = new Map<string, number>();
  for (let i = 0; i < lies.size; i++) place.set(`${lies.kind[i]}:${lies.turned[i]}`, i);
  return uses.flatMap(({ pattern, times }) => {
    const piles = pattern.parts.flatMap((part) => {
      const pile = part.stack.runs.flatMap((run) => [
        place.get(`${run.kind}:${run.turned ? 1 : 0}`) ?? (place.get(`${run.kind}:0`) as number),
        run.times,
      ]);
      return Array.from({ length: part.times }, () => pile);
    });
    const strip = stripOf(lies, piles);
    return Array.from({ length: times }, () => strip);
  });
};
