// After which step is a block best trimmed, if once before the end, and how much larger must its pieces be cut for that? A trimmed
// unit is true again, whatever went before; what is sewn after it wanders anew.
import { type Length, length, upToMark } from '#craft/measure';
import type { Rational } from '#ground/exact';
import { type Care, trueHabit } from './care.ts';
import { seamSteps } from './seam-steps.ts';
import type { SewnBlock } from './sewn-block.ts';
import { type SizeModel, sizeModels } from './size-model.ts';
import { spreadOf } from './spread.ts';

export interface Trimming {
  /** Index of the step after which to trim. */
  readonly step: number;
  readonly to: readonly [Length, Length];
  /** By how much the pieces at its edges are to be cut wider for that, on a mark. */
  readonly oversize: Length;
  /** Labels of those pieces, in the order of the alphabet. */
  readonly pieces: readonly string[];
  /** Two standard deviations of the block's size, trimmed so and not trimmed: about 95 of 100 blocks come out within them. */
  readonly trimmed: Length;
  readonly untrimmed: Length;
}

/**
 * The step with the least of what is larger: how far its units come out off their size, which trimming takes off their outer pieces,
 * or how far the block comes out afterwards. Of equal ones the later.
 *
 * @returns null where no unit before the last is measured both ways
 * @source docs/formulas.md#accuracy
 */
export const bestTrimming = (of: {
  readonly block: SewnBlock;
  readonly seam: Length;
  readonly care: Care;
  readonly ruler: Rational;
}): Trimming | null => {
  const { block, care } = of;
  const models = sizeModels(block, of.seam);
  const last = block.steps.length - 1;
  const whole = models.filter(({ step }) => step === last);
  const likely = (some: readonly SizeModel[]): number =>
    Math.max(0, ...some.map((model) => 2 * spreadOf(model, care, trueHabit).deviation));
  const without = withoutUnits(block);
  const ways = block.steps.slice(0, last).flatMap((made, step) => {
    const measured = models.filter((model) => model.step === step);
    if (measured.length < 2) return [];
    const before = likely(measured);
    const after = likely(whole.map((model) => without(model, step)));
    return [{ step, to: made.unfinished, before, after, measured }];
  });
  const best = ways.reduce<(typeof ways)[number] | null>(
    (a, b) => (a === null || Math.max(b.before, b.after) <= Math.max(a.before, a.after) + 1e-9 ? b : a),
    null,
  );
  return best === null
    ? null
    : {
        step: best.step,
        to: best.to,
        oversize: upToMark(length(best.before), of.ruler).size,
        pieces: outerPieces(best.measured),
        trimmed: length(best.after),
        untrimmed: length(likely(whole)),
      };
};

const outerPieces = (measured: readonly SizeModel[]): readonly string[] =>
  [...new Set(measured.flatMap(({ cuts }) => [cuts[0], cuts.at(-1)].flatMap((term) => term?.piece ?? [])))].sort();

/** A model with nothing left in it of what lies in units that a step makes. */
const withoutUnits = (block: SewnBlock): ((model: SizeModel, step: number) => SizeModel) => {
  const { stepsOf } = seamSteps(block, block.steps.length - 1);
  return (model, step) => {
    const isIn = (patch: number): boolean => stepsOf(patch).includes(step);
    const isWithin = ({ step: sewn, between: [a, b] }: SizeModel['seams'][number]): boolean => {
      const steps = stepsOf(a);
      return sewn !== null && isIn(a) && isIn(b) && steps.indexOf(sewn) >= steps.indexOf(step);
    };
    return {
      ...model,
      cuts: model.cuts.filter(({ patch }) => !isIn(patch)),
      seams: model.seams.filter((seam) => !isWithin(seam)),
    };
  };
};
