// What is the least length of cloth, exactly, where the pieces are few? Every way to divide them into strips is weighed
// once. Gives up at once where there are too many ways, and leaves the job to a search.
import type { Cutting, Job, StripsFound } from '#craft/strips';
import { patternKey, type StripUse } from '#craft/strips';
import { type CountSpace, countSpaceFor, pairsIn, writeParts } from './count-space.ts';
import { type StripTask, stripSizesFor } from './strip-sizes.ts';

/**
 * Pairs of a way to take pieces and a part of it that are looked at; the time grows with them. Of our own measure: 15 to 50 ms
 * of computing at the limit. Flat that is fifteen different pieces or six kinds of four, stacked twelve or four kinds of six.
 */
export const mostPairs = { flat: 15_000_000, stacked: 600_000 } as const;

/**
 * @returns the least length there is, with exactly the pieces demanded, and its strips; null where the pieces are too many, or one
 *   of them fits the cloth neither way
 */
export const fewPieces = (task: { readonly job: Job; readonly cutting: Cutting }): StripsFound | null => {
  const { job, cutting } = task;
  const space = spaceWithin(job, cutting);
  if (space === null) return null;
  const flat = leastWithin({ job, cutting: { stages: 2 }, space, mostHeight: Number.POSITIVE_INFINITY });
  // no strip of the shortest layout is higher than a layout in two stages is long
  return flat === null || cutting.stages === 2 ? flat : leastWithin({ job, cutting, space, mostHeight: flat.length });
};

const leastWithin = (task: StripTask): StripsFound | null => {
  const { space } = task;
  const { least, stripFor } = stripSizesFor(task);
  const { lengths, firsts } = leastSums(space, least);
  const length = lengths[space.size - 1] as number;
  if (length === Number.POSITIVE_INFINITY) return null;
  const strips = together(stripWays(space.size - 1, firsts).map(stripFor));
  return { strips, length, bound: length, boundKind: 'integer' };
};

/** Counts small enough to look at all; null where they are not. */
export const spaceWithin = (job: Job, cutting: Cutting): CountSpace | null => {
  const most = cutting.stages === 2 ? mostPairs.flat : mostPairs.stacked;
  const space = countSpaceFor(
    job.kinds.map(({ count }) => count),
    most,
  );
  return space !== null && pairsIn(space) <= most ? space : null;
};

export interface LeastSums {
  /** Least length of strips that hold exactly these pieces, by the number of the way; Infinity where there are none. */
  readonly lengths: Float64Array;
  /** The way of one strip of those. */
  readonly firsts: Int32Array;
}

/** Every way is one strip, with a piece of its first kind, and the best of what is left. */
export const leastSums = (space: CountSpace, stripHeights: Float64Array): LeastSums => {
  const lengths = new Float64Array(space.size).fill(Number.POSITIVE_INFINITY);
  const firsts = new Int32Array(space.size);
  const parts = new Int32Array(space.size);
  lengths[0] = 0;
  for (let way = 1; way < space.size; way++) {
    const n = writeParts({ space, way, having: 'first', into: parts });
    for (let p = 0; p < n; p++) {
      const part = parts[p] as number;
      const length = (stripHeights[part] as number) + (lengths[way - part] as number);
      if (length >= (lengths[way] as number)) continue;
      lengths[way] = length;
      firsts[way] = part;
    }
  }
  return { lengths, firsts };
};

/** The ways of all strips that a way is divided into. */
export const stripWays = (way: number, firsts: Int32Array): readonly number[] => {
  const ways: number[] = [];
  for (let rest = way; rest > 0; rest -= firsts[rest] as number) ways.push(firsts[rest] as number);
  return ways;
};

/** Equal strips once, with how often they are cut; the highest first. */
export const together = (patterns: readonly StripUse['pattern'][]): readonly StripUse[] => {
  const uses = new Map<string, StripUse>();
  for (const pattern of patterns) {
    const key = `${pattern.height}:${patternKey(pattern)}`;
    uses.set(key, { pattern, times: 1 + (uses.get(key)?.times ?? 0) });
  }
  return [...uses.entries()]
    .sort(([ka, a], [kb, b]) => b.pattern.height - a.pattern.height || (ka < kb ? -1 : 1))
    .map(([, use]) => use);
};
