// How well does each explanation agree with the sizes measured? Every one is fitted by least squares, for each way that the sizes
// may have been read and sewn, and judged by how well it fits, how likely it is beforehand and how far its slip is from none.
import { type SizeModel, sensitivity } from '#craft/accuracy';
import { type Length, length } from '#craft/measure';
import {
  type Fit,
  fitOf,
  inNinetyFive,
  limitsOfMixture,
  logDeterminant,
  type Part,
  product,
  shapeOf,
} from '#ground/least-squares';
import type { Evidence, Roughness } from './evidence.ts';
import { type Candidate, type Explanation, slipsOf } from './explanations.ts';

export interface Weighed {
  readonly candidate: Candidate;
  /** Of all that was weighed: together 1. */
  readonly share: number;
  /** How much wider each allowance is than it should be, and 95 % limits of that; below zero: narrower. */
  readonly allowance: Interval;
  /** How much larger than it should be the piece is cut; null where the explanation has no such thing. */
  readonly cut: Interval | null;
  /** The same of its other way, where it is wrong both ways. */
  readonly other: Interval | null;
  readonly chiSquare: number;
  /** Readings less what was found from them. */
  readonly degrees: number;
  /** Whether these sizes tell its slip at all: finely enough, or because it stands out. */
  readonly isTold: boolean;
  /** The allowance for each way that the sizes may have been read and sewn. */
  readonly parts: readonly Part[];
}

export interface Interval {
  readonly value: Length;
  readonly low: Length;
  readonly high: Length;
}

/** What the size grows by for each unit that the allowances are too wide. */
export const allowanceMoves = (model: SizeModel): number => -sensitivity(model).allowance;

/** One explanation, for one way that the sizes may have been read and sewn. */
interface Fitted {
  readonly candidate: Candidate;
  readonly fit: Fit;
  /** As `Roughness` has them. */
  readonly errors: Roughness['errors'];
  /** Twice what speaks against it. */
  readonly score: number;
}

/**
 * The likeliest first; of equal ones as they were given.
 *
 * @source docs/formulas.md#diagnosis
 */
export const weigh = (evidence: Evidence, candidates: readonly Candidate[]): readonly Weighed[] => {
  const told = candidates.filter((candidate) => !isUntold(evidence, candidate));
  const before = sharesBefore(candidates);
  const fitted = told.map((candidate) =>
    evidence.roughnesses.flatMap((roughness) => fittedTo(evidence, roughness, candidate, before(candidate)) ?? []),
  );
  const least = Math.min(...fitted.flat().map(({ score }) => score));
  const weightOf = ({ score }: Fitted): number => Math.exp((least - score) / 2);
  const all = fitted.flat().reduce((sum, one) => sum + weightOf(one), 0);
  return fitted
    .flatMap((fits) => (fits.length === 0 ? [] : [weighedFrom(evidence, fits, (one) => weightOf(one) / all)]))
    .map((one, i) => ({ one, i }))
    .sort((a, b) => b.one.share - a.one.share || a.i - b.i)
    .map(({ one }) => one);
};

/** How often each is to blame before anything is measured; our own guess, shared out evenly among its like. */
const priorShare: Readonly<Record<Explanation['kind'], number>> = {
  habit: 0.2,
  cut: 0.65,
  'cut-both': 0.05,
  one: 0.25,
  trim: 0.05,
  swap: 0.05,
};

/** Kinds of pieces among which a wrong cut is shared out, where a block has fewer: one of two is no likelier to be wrong. Our own guess. */
const usualPieces = 6;

const sharesBefore = (candidates: readonly Candidate[]): ((candidate: Candidate) => number) => {
  const counts = new Map<Explanation['kind'], number>();
  for (const { explanation } of candidates) counts.set(explanation.kind, (counts.get(explanation.kind) ?? 0) + 1);
  return ({ explanation: { kind } }) => {
    const count = counts.get(kind) as number;
    return priorShare[kind] / (kind === 'cut' || kind === 'cut-both' ? Math.max(usualPieces, count) : count);
  };
};

/**
 * In limits of a cut: how large slips are, told by the quartiles of them; how finely a slip must be told to count toward the seam; and how
 * coarsely it may be told to be weighed at all. Our own figures.
 */
const slips = { usual: 8, told: 2, coarsest: 16 } as const;
/** Deviations from none at which a slip counts, however coarsely it is told. Our own figure. */
const standsOut = 3;

const fittedTo = (
  evidence: Evidence,
  { whiten, errors, score, share }: Roughness,
  candidate: Candidate,
  before: number,
): Fitted | null => {
  const free = slipsOf(candidate);
  const values = candidate.isFree ? evidence.off : evidence.off.map((off, i) => off - candidate.moves(at(evidence, i)));
  const columns = [allowanceMoves, ...free].map((moves) => whiten(evidence.models.map(moves)));
  const fit = fitOf(whiten(values), columns);
  if (fit === null) return null;
  const usual = (slips.usual * evidence.care.cut) ** 2;
  const unlikely = free.reduce(
    (all, _, i) => all - 2 * Math.log(densityOf(fit.coefficients[i + 1] as number, usual + varianceOf(fit, i + 1))),
    0,
  );
  return {
    candidate,
    fit,
    errors,
    score:
      fit.chiSquare +
      score -
      logDeterminant(fit.covariance) -
      free.length * Math.log(2 * Math.PI) +
      unlikely -
      2 * Math.log(before * share),
  };
};

const at = (evidence: Evidence, i: number): SizeModel => evidence.models[i] as SizeModel;

const varianceOf = (fit: Fit, i: number): number => fit.covariance[i]?.[i] as number;

/** How likely a slip is, by Cauchy's distribution: most are small, and large ones are possible. */
const densityOf = (slip: number, variance: number): number =>
  1 / (Math.PI * Math.sqrt(variance) * (1 + slip ** 2 / variance));

/** Whether these sizes, taken as most read and sew them, say next to nothing of a slip beside the seams. */
const isUntold = (evidence: Evidence, candidate: Candidate): boolean => {
  const isUnmoved = evidence.models.every((model) => Math.abs(candidate.moves(model)) < 1e-12);
  if (candidate.explanation.kind !== 'habit' && isUnmoved) return true;
  const found = coarsenessOf(evidence, candidate);
  return found === null || found > slips.coarsest * evidence.care.cut;
};

/** The deviation of the slip that is told least; null where it is not told from the seams at all. */
const coarsenessOf = (evidence: Evidence, candidate: Candidate): number | null => {
  const columns = [allowanceMoves, ...slipsOf(candidate)].map((moves) => evidence.whiten(evidence.models.map(moves)));
  const fit = fitOf(
    evidence.off.map(() => 0),
    columns,
  );
  return fit && Math.sqrt(Math.max(0, ...columns.slice(1).map((_, i) => varianceOf(fit, i + 1))));
};

/** Pieces of which these sizes do not tell a wrong cut from the seams: what they say of the seams holds if those are right. In the order of the alphabet. */
export const untoldPieces = (evidence: Evidence, candidates: readonly Candidate[]): readonly string[] =>
  [
    ...new Set(
      candidates.flatMap((candidate) => {
        const { explanation } = candidate;
        if (explanation.kind !== 'cut') return [];
        const found = coarsenessOf(evidence, candidate);
        return found === null || found > slips.told * evidence.care.cut ? [explanation.piece] : [];
      }),
    ),
  ].toSorted();

const weighedFrom = (evidence: Evidence, fits: readonly Fitted[], shareOf: (one: Fitted) => number): Weighed => {
  const likeliest = fits.reduce((a, b) => (b.score < a.score ? b : a));
  const { candidate, fit } = likeliest;
  const parts = fits.map((one) => partOf(one, Math.max(shareOf(one), Number.MIN_VALUE)));
  const share = parts.reduce((all, part) => all + part.share, 0);
  const found = slipsOf(candidate).map((_, i) => slipFrom(fit, i + 1));
  const coarsest = slips.told * evidence.care.cut;
  return {
    candidate,
    share,
    allowance: mixed(parts),
    cut: found[0] ?? null,
    other: found[1] ?? null,
    chiSquare: fit.chiSquare,
    degrees: evidence.off.length - 1 - found.length,
    isTold:
      found.every((_, i) => Math.sqrt(varianceOf(fit, i + 1)) <= coarsest) ||
      found.some(({ value }, i) => Math.abs(value) > standsOut * Math.sqrt(varianceOf(fit, i + 1))),
    parts,
  };
};

/** Share of all below which the shape of an error is not looked at. */
const slight = 1e-4;

const partOf = ({ fit, errors }: Fitted, share: number): Part => {
  const deviation = Math.sqrt(varianceOf(fit, 0));
  const weights = fit.weights[0] as readonly number[];
  const deviations = share < slight ? [] : errors.map((error) => product(weights, error));
  return { share, value: fit.coefficients[0] as number, shape: shapeOf({ deviation, deviations }) };
};

const slipFrom = (fit: Fit, i: number): Interval => {
  const value = fit.coefficients[i] as number;
  const half = inNinetyFive * Math.sqrt(varianceOf(fit, i));
  return { value: length(value), low: length(value - half), high: length(value + half) };
};

/** What all say together, each by its share: the mean, and the limits of 95 of 100. */
export const mixed = (parts: readonly Part[]): Interval => {
  const all = parts.reduce((sum, { share }) => sum + share, 0);
  const likely = parts.filter(({ share }) => share >= slight * all);
  const [low, high] = limitsOfMixture(likely);
  const mean = parts.reduce((sum, { share, value }) => sum + (share / all) * value, 0);
  return { value: length(mean), low: length(low), high: length(high) };
};

/** What a further size would come out at, if the explanation is right, from all that was measured. */
export const foretold = (evidence: Evidence, weighed: Weighed, model: SizeModel): Length => {
  const { candidate, allowance, cut, other } = weighed;
  const by = (one: SizeModel): number =>
    allowanceMoves(one) * allowance.value +
    candidate.moves(one) * (cut === null ? 1 : cut.value) +
    (candidate.also?.(one) ?? 0) * (other?.value ?? 0);
  const rest = evidence.models.map((one, i) => (evidence.off[i] as number) - by(one));
  const like = evidence.whiten(evidence.like(model));
  return length(model.expected + by(model) + product(like, evidence.whiten(rest)));
};
