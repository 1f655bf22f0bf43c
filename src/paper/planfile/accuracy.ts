// How true the check sizes of a block come out, as the plan file has it: what they go over, and how far they may be off.
import type { BlockPlan, QuiltPlan } from '#craft';
import { bestTrimming, type SizeModel, sensitivity, sizeModels, spreadOf, trueHabit, usualCare } from '#craft/accuracy';
import { length } from '#craft/measure';
import { toNumber } from '#ground/exact';

export interface AccuracyEntries {
  /** By step. */
  readonly steps: readonly unknown[];
  readonly trimming: unknown;
}

export const accuracyEntries = ({ quilt }: Pick<QuiltPlan, 'quilt'>, block: BlockPlan): AccuracyEntries => {
  const seam = length(toNumber(quilt.seam));
  const care = usualCare(quilt.unit);
  const models = sizeModels(block, seam);
  const entry = (step: number, way: SizeModel['way']): unknown => {
    const model = models.find((one) => one.step === step && one.way === way);
    if (model === undefined) return null;
    const { deviation, rootSumSquare, worst } = spreadOf(model, care, trueHabit);
    const takes = sensitivity(model);
    return {
      seams: model.seams.length,
      allowance: 0 - takes.allowance,
      fold: 0 - takes.fold,
      likely: rounded(2 * deviation),
      rootSumSquare: rounded(rootSumSquare),
      worst: rounded(worst),
    };
  };
  const best = block.steps.length < 2 ? null : bestTrimming({ block, seam, care, ruler: quilt.ruler });
  return {
    steps: block.steps.map((_, step) => ({ across: entry(step, 'across'), down: entry(step, 'down') })),
    trimming:
      best === null || best.trimmed >= best.untrimmed
        ? null
        : {
            step: best.step + 1,
            to: best.to,
            oversize: best.oversize,
            pieces: best.pieces,
            likely: [rounded(best.untrimmed), rounded(best.trimmed)],
          },
  };
};

/** An estimate has no more places. */
const rounded = (value: number): number => Math.round(1e4 * value) / 1e4;
