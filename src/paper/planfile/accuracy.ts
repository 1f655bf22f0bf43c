// How true the check sizes of blocks and top come out, as the plan file has it: what they go over, and how far they may be off.
import type { BlockPlan, QuiltPlan } from '#craft';
import {
  bestTrimming,
  type Care,
  type SizeModel,
  seamsCrossed,
  sensitivity,
  sizeModels,
  spreadOf,
  trueHabit,
  usualCare,
} from '#craft/accuracy';
import { length } from '#craft/measure';
import { topSizes } from '#craft/top-sizes';
import { toNumber } from '#ground/exact';

export interface AccuracyEntries {
  /** By step. */
  readonly steps: readonly unknown[];
  readonly trimming: unknown;
}

export const accuracyEntries = ({ quilt }: Pick<QuiltPlan, 'quilt'>, block: BlockPlan): AccuracyEntries => {
  const seam = length(toNumber(quilt.seam));
  const care = usualCare(quilt.unit);
  const best = block.steps.length < 2 ? null : bestTrimming({ block, seam, care, ruler: quilt.ruler });
  return {
    steps: sizeEntries(sizeModels(block, seam), { steps: block.steps.length, care }),
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

/** By step of the top. */
export const topAccuracyEntries = ({ quilt, top, blocks }: QuiltPlan): readonly unknown[] =>
  sizeEntries(topSizes({ top, blocks, seam: length(toNumber(quilt.seam)) }), {
    steps: top.steps.length,
    care: usualCare(quilt.unit),
  });

const sizeEntries = (
  models: readonly SizeModel[],
  of: { readonly steps: number; readonly care: Care },
): readonly unknown[] => {
  const known = new Map(models.map((model) => [`${model.step} ${model.way}`, model]));
  const entry = (step: number, way: SizeModel['way']): unknown => {
    const model = known.get(`${step} ${way}`);
    if (model === undefined) return null;
    const { deviation, rootSumSquare, worst } = spreadOf(model, of.care, trueHabit);
    const takes = sensitivity(model);
    return {
      seams: seamsCrossed(model),
      allowance: 0 - takes.allowance,
      fold: 0 - takes.fold,
      likely: rounded(2 * deviation),
      rootSumSquare: rounded(rootSumSquare),
      worst: rounded(worst),
    };
  };
  return Array.from({ length: of.steps }, (_, step) => ({ across: entry(step, 'across'), down: entry(step, 'down') }));
};

/** An estimate has no more places. */
const rounded = (value: number): number => Math.round(1e4 * value) / 1e4;
