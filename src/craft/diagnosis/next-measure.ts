// What should be measured next? Where it is not known yet how wide the seams are, the size that narrows that down most; where two
// explanations agree with what was measured, the size about which they disagree most.
import { type Care, type SizeModel, sensitivity, type Way } from '#craft/accuracy';
import type { Length } from '#craft/measure';
import { fitOf, product, whitenerFor } from '#ground/least-squares';
import { type Evidence, ownVariance, readingVariance, sizeName } from './evidence.ts';
import { allowanceMoves, foretold, type Weighed } from './weigh.ts';

export interface NextMeasure {
  readonly step: number;
  readonly way: Way;
  /** What each of two explanations would have it come to; none where it is to say how wide the seams are. */
  readonly comesTo: readonly Length[];
  /** The same where she has sewn no further than what she measured, and a step more; null where that is no other. */
  readonly sooner: { readonly step: number; readonly way: Way } | null;
}

interface Search {
  readonly evidence: Evidence;
  readonly models: readonly SizeModel[];
  readonly care: Care;
  readonly fineness: Length;
}

/** Sizes looked at, the last of the block; our own figure. */
const mostSizes = 80;

/** Null where every size is measured, or none goes over a seam. */
export const narrowing = (search: Search): NextMeasure | null => {
  const worthOf = (one: SizeModel): number => precisionWith(search, one);
  const model = best(search, worthOf);
  if (model === null) return null;
  const reached = Math.max(...search.evidence.models.map(({ step }) => step)) + 1;
  const near = best({ ...search, models: search.models.filter(({ step }) => step <= reached) }, worthOf);
  const sooner = near === null || model.step <= reached ? null : { step: near.step, way: near.way };
  return { step: model.step, way: model.way, comesTo: [], sooner };
};

/** Of the allowance, if that size were measured too. */
const precisionWith = ({ evidence, care, fineness }: Search, model: SizeModel): number => {
  if (Math.abs(sensitivity(model).allowance) < 1e-9) return 0;
  const like = evidence.like(model);
  const own = ownVariance(model, care) + readingVariance(fineness);
  const covariance = [...evidence.covariance.map((row, i) => [...row, like[i] as number]), [...like, own]];
  const column = [...evidence.models, model].map(allowanceMoves);
  const fit = fitOf(
    column.map(() => 0),
    [whitenerFor(covariance)(column)],
  );
  return 1 / (fit?.covariance[0]?.[0] ?? Number.POSITIVE_INFINITY);
};

/** Null where the two agree about all sizes there are. */
export const telling = (search: Search, pair: readonly [Weighed, Weighed]): NextMeasure | null => {
  const { evidence, care, fineness } = search;
  const comesTo = (model: SizeModel): readonly [Length, Length] => [
    foretold(evidence, pair[0], model),
    foretold(evidence, pair[1], model),
  ];
  const model = best(search, (one) => {
    const like = evidence.whiten(evidence.like(one));
    const open = ownVariance(one, care) - product(like, like) + readingVariance(fineness);
    const [first, second] = comesTo(one);
    return Math.abs(first - second) < fineness / 2 ? 0 : (first - second) ** 2 / open;
  });
  return model === null ? null : { step: model.step, way: model.way, comesTo: comesTo(model), sooner: null };
};

/** The size of highest worth above zero that is not measured yet; of equal ones the first. */
const best = ({ evidence, models, care }: Search, worthOf: (model: SizeModel) => number): SizeModel | null => {
  const measured = new Set(evidence.models.map((model) => sizeName(model, care)));
  const open = models.filter((model) => !measured.has(sizeName(model, care))).slice(-mostSizes);
  const worths = open.map((model) => ({ model, worth: worthOf(model) }));
  const most = worths.reduce((all, { worth }) => Math.max(all, worth), 0);
  return worths.find(({ worth }) => worth > 0 && worth >= most * (1 - 1e-9))?.model ?? null;
};
