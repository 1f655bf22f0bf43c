// What is the least length of cloth, exactly, where the pieces are few? Every way to divide them into strips is weighed
// once. Gives up at once where there are too many ways, and leaves the job to a search.
import type { Cutting, Job, StripsFound } from '#craft/strips';
import { alikeTogether, patternKey, type StripUse } from '#craft/strips';
import { drained } from '#ground/search';
import { amongFor, type CountSpace, countSpaceFor, pairsIn, writePartsAmong } from './count-space.ts';
import { type StripTask, stripSizesBy } from './strip-sizes.ts';

/**
 * Pairs of a way to take pieces and a part of it that are looked at; the time grows with them. Of our own measure: 15 to 50 ms
 * of computing at the limit. Flat that is fifteen different pieces or six kinds of four, stacked twelve or four kinds of six.
 */
export const mostPairs = { flat: 15_000_000, stacked: 600_000 } as const;

/** The same where it is done in steps: at the limit some seconds, less where little cloth may be left over. */
export const mostPairsInSteps = 150_000_000;

export interface FewTask {
  readonly job: Job;
  readonly cutting: Cutting;
}

/**
 * @returns the least length there is, with exactly the pieces demanded, and its strips; null where the pieces are too many, or one
 *   of them fits the cloth neither way
 */
export const fewPieces = ({ job, cutting }: FewTask): StripsFound | null => {
  const space = spaceWithin(job, cutting);
  if (space === null) return null;
  const any = { mostHeight: Number.POSITIVE_INFINITY, mostWaste: Number.POSITIVE_INFINITY };
  const flat = drained(leastWithin({ job, cutting: { stages: 2 }, space, ...any }));
  if (flat === null || cutting.stages === 2) return flat;
  // no strip of the shortest layout is higher than a layout in two stages is long
  return drained(leastWithin({ job, cutting, space, ...any, mostHeight: flat.length }));
};

/**
 * The least length where it is at most `longest`, of some more pieces; one step a `next()`, and nothing can be told before the
 * last.
 *
 * @returns 'none' where every layout is longer; null where the pieces are too many
 */
export function* fewPiecesWithin(
  task: FewTask & { readonly longest: number },
): Generator<void, StripsFound | 'none' | null, void> {
  const { job, cutting, longest } = task;
  const space = spaceFor(job, mostPairsInSteps);
  if (space === null) return null;
  const area = job.kinds.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
  const mostWaste = job.width * longest - area;
  if (mostWaste < 0) return 'none';
  const found = yield* leastWithin({ job, cutting, space, mostHeight: longest, mostWaste });
  return found === null || found.length > longest ? 'none' : found;
}

function* leastWithin(task: StripTask): Generator<void, StripsFound | null, void> {
  const { space } = task;
  const { least, stripFor } = yield* stripSizesBy(task);
  const { lengths, firsts } = yield* leastSums(space, least);
  const length = lengths[space.size - 1] as number;
  if (length === Number.POSITIVE_INFINITY) return null;
  const strips = together(stripWays(space.size - 1, firsts).map(stripFor));
  return { strips, length, bound: length, boundKind: 'integer' };
}

/** Counts small enough to look at all; null where they are not. */
export const spaceWithin = (job: Job, cutting: Cutting): CountSpace | null =>
  spaceFor(job, cutting.stages === 2 ? mostPairs.flat : mostPairs.stacked);

const spaceFor = (job: Job, most: number): CountSpace | null => {
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
export function* leastSums(space: CountSpace, stripHeights: Float64Array): Generator<void, LeastSums, void> {
  const lengths = new Float64Array(space.size).fill(Number.POSITIVE_INFINITY);
  const firsts = new Int32Array(space.size);
  const parts = new Int32Array(space.size);
  lengths[0] = 0;
  const among = amongFor(space, (way) => stripHeights[way] !== Number.POSITIVE_INFINITY);
  let work = 0;
  for (let way = 1; way < space.size; way++) {
    const count = writePartsAmong(among, way, parts);
    work += perWay + count;
    if (work > sumsAtOnce) {
      work = 0;
      yield;
    }
    for (let p = 0; p < count; p++) {
      const part = parts[p] as number;
      const length = (stripHeights[part] as number) + (lengths[way - part] as number);
      if (length >= (lengths[way] as number)) continue;
      lengths[way] = length;
      firsts[way] = part;
    }
  }
  return { lengths, firsts };
}

/** Sums between two yields: about 10 ms. */
const sumsAtOnce = 1_000_000;
/** What a way takes beside its sums. */
const perWay = 300;

/** The ways of all strips that a way is divided into. */
export const stripWays = (way: number, firsts: Int32Array): readonly number[] => {
  const ways: number[] = [];
  for (let rest = way; rest > 0; rest -= firsts[rest] as number) ways.push(firsts[rest] as number);
  return ways;
};

/** Equal strips once, with how often they are cut; the highest first. */
export const together = (patterns: readonly StripUse['pattern'][]): readonly StripUse[] =>
  alikeTogether(patterns.map((pattern) => ({ pattern, times: 1 })))
    .map((use) => ({ use, key: patternKey(use.pattern) }))
    .sort((a, b) => b.use.pattern.height - a.use.pattern.height || (a.key < b.key ? -1 : 1))
    .map(({ use }) => use);
