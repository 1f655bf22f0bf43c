// How well does each explanation agree with the sizes measured? Every one is fitted by least squares, sizes of one block
// being uncertain together (they go over the same pieces and seams), and judged by how well it fits and how much it assumes.
import { type Care, partsOf, type SizeModel, sensitivity } from '#craft/accuracy';
import { type Length, length } from '#craft/measure';
import { type Fit, fitOf, inNinetyFive, type Matrix, product, type Whitener, whitenerFor } from '#ground/least-squares';
import type { Candidate, Explanation } from './explanations.ts';
import type { Reading } from './readings.ts';

export interface Weighed {
  readonly candidate: Candidate;
  /** Of all that was weighed: together 1. */
  readonly share: number;
  /** How much wider each allowance is than it should be, and 95 % limits of that; below zero: narrower. */
  readonly allowance: Interval;
  /** How much larger than it should be the piece is cut; null where the explanation has no such thing. */
  readonly cut: Interval | null;
  readonly chiSquare: number;
  /** Readings less what was found from them. */
  readonly degrees: number;
}

export interface Interval {
  readonly value: Length;
  readonly low: Length;
  readonly high: Length;
}

/** Different sizes that were measured. */
export interface Evidence {
  readonly models: readonly SizeModel[];
  /** By model: the mean of what was read, less what is expected of pieces cut on their marks. */
  readonly off: readonly number[];
  readonly covariance: Matrix;
  readonly whiten: Whitener;
  /** How a further size varies together with each of them. */
  readonly like: (model: SizeModel) => readonly number[];
}

/** @source docs/formulas.md#diagnosis */
export const evidenceFor = (of: {
  readonly readings: readonly Reading[];
  readonly models: readonly SizeModel[];
  readonly fineness: Length;
  readonly care: Care;
}): Evidence => {
  const sizes = new Map<string, { readonly model: SizeModel; readonly parts: Parts; readonly off: number[] }>();
  const known = new Map(of.models.map((model) => [`${model.step} ${model.way}`, model]));
  for (const { step, way, size } of of.readings) {
    const model = known.get(`${step} ${way}`) as SizeModel;
    const parts = deviationsOf(model, of.care);
    const name = nameOf(parts);
    const before = sizes.get(name);
    if (before) before.off.push(size - model.expected);
    else sizes.set(name, { model, parts, off: [size - model.expected] });
  }
  const measured = [...sizes.values()];
  const reading = readingVariance(of.fineness);
  const covariance = measured.map((a, i) =>
    measured.map((b, j) => together(a.parts, b.parts) + (i === j ? reading : 0)),
  );
  return {
    models: measured.map(({ model }) => model),
    off: measured.map(({ off }) => off.reduce((all, by) => all + by, 0) / off.length),
    covariance,
    whiten: whitenerFor(covariance),
    like: (model) => {
      const parts = deviationsOf(model, of.care);
      return measured.map((one) => together(one.parts, parts));
    },
  };
};

/** Read to the nearest mark, a size is anywhere within half a mark. @source NIST Technical Note 1297, 4.6 */
export const readingVariance = (fineness: Length): number => fineness ** 2 / 12;

/** What a size goes over, and the deviation that each brings into it. */
type Parts = ReadonlyMap<string, number>;

const deviationsOf = (model: SizeModel, care: Care): Parts =>
  new Map(partsOf(model, care).map(({ name, limit }) => [name, limit / Math.sqrt(3)]));

/** How two sizes vary together: through the pieces and the seams that both go over. */
const together = (a: Parts, b: Parts): number => {
  let all = 0;
  for (const [part, deviation] of b) all += (a.get(part) ?? 0) * deviation;
  return all;
};

/** How much a size varies by itself, the reading not counted. */
export const ownVariance = (model: SizeModel, care: Care): number => {
  const parts = deviationsOf(model, care);
  return together(parts, parts);
};

/** Sizes over the same pieces and seams are one: read again after the next step, it is rounded to the same mark again. */
const nameOf = (parts: Parts): string => [...parts.keys()].sort().join();

export const sizeName = (model: SizeModel, care: Care): string => nameOf(deviationsOf(model, care));

/** What the size grows by for each unit that the allowances are too wide. */
export const allowanceMoves = (model: SizeModel): number => -sensitivity(model).allowance;

/** The likeliest first; of equal ones as they were given. */
export const weigh = (evidence: Evidence, candidates: readonly Candidate[]): readonly Weighed[] => {
  const counts = countKinds(candidates);
  const fitted = candidates.flatMap((candidate) => {
    const one = fittedTo(evidence, candidate);
    if (one === null) return [];
    const free = candidate.isFree ? 2 : 1;
    const kind = candidate.explanation.kind;
    const score =
      one.chiSquare +
      free * Math.log(evidence.off.length) -
      2 * Math.log(priorShare[kind] / (counts.get(kind) as number));
    return [{ ...one, score }];
  });
  const least = Math.min(...fitted.map(({ score }) => score));
  const weights = fitted.map(({ score }) => Math.exp((least - score) / 2));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return fitted
    .map(({ score, ...one }, i) => ({ ...one, share: (weights[i] as number) / all, score }))
    .sort((a, b) => a.score - b.score)
    .map(({ score, ...one }) => one);
};

/** How often each is to blame before anything is measured; our own guess, shared out evenly among its like. */
const priorShare: Readonly<Record<Explanation['kind'], number>> = { habit: 0.45, cut: 0.5, one: 0.25, swap: 0.05 };

const countKinds = (candidates: readonly Candidate[]): ReadonlyMap<Explanation['kind'], number> => {
  const counts = new Map<Explanation['kind'], number>();
  for (const { explanation } of candidates) counts.set(explanation.kind, (counts.get(explanation.kind) ?? 0) + 1);
  return counts;
};

/** Null where these readings cannot tell what the explanation leaves open. */
const fittedTo = (evidence: Evidence, candidate: Candidate): Omit<Weighed, 'share'> | null => {
  const moved = evidence.models.map(candidate.moves);
  if (candidate.explanation.kind !== 'habit' && moved.every((by) => Math.abs(by) < 1e-12)) return null;
  const values = candidate.isFree ? evidence.off : evidence.off.map((off, i) => off - (moved[i] as number));
  const habit = evidence.models.map(allowanceMoves);
  const columns = candidate.isFree ? [habit, moved] : [habit];
  const fit = fitOf(evidence.whiten(values), columns.map(evidence.whiten));
  if (fit === null) return null;
  return {
    candidate,
    allowance: intervalOf(fit, 0),
    cut: candidate.isFree ? intervalOf(fit, 1) : null,
    chiSquare: fit.chiSquare,
    degrees: evidence.off.length - columns.length,
  };
};

const intervalOf = (fit: Fit, i: number): Interval => {
  const value = fit.coefficients[i] as number;
  const deviation = Math.sqrt(fit.covariance[i]?.[i] as number);
  const half = inNinetyFive * deviation;
  return { value: length(value), low: length(value - half), high: length(value + half) };
};

/** What a further size would come out at, if the explanation is right, from all that was measured. */
export const foretold = (evidence: Evidence, weighed: Weighed, model: SizeModel): Length => {
  const by = (one: SizeModel): number =>
    allowanceMoves(one) * weighed.allowance.value +
    weighed.candidate.moves(one) * (weighed.cut === null ? 1 : weighed.cut.value);
  const rest = evidence.models.map((one, i) => (evidence.off[i] as number) - by(one));
  const like = evidence.whiten(evidence.like(model));
  return length(model.expected + by(model) + product(like, evidence.whiten(rest)));
};
