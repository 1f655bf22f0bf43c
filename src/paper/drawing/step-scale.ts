// How large may a step be drawn?
import type { BlockPlan, PlannedStep } from '#craft';
import { patchAt } from './seam.ts';
import { thinness } from './shape.ts';

/** A first pair is drawn larger than the block would be, but not so large that it looks like another thing. */
const larger = 2.2;
/** Half the side of a square whose letter can be read at arm's length: our own figure. */
const legiblePt = 8;

/** Of the scale at which the whole top fills the picture: a pair of blocks is not drawn as large as a quilt. */
export const largerThanTop = 12;

/** Points a unit at most; patches too small to be told apart at that are drawn larger. */
export const mostStepScale = (
  of: { readonly block: BlockPlan; readonly step: PlannedStep },
  /** Points a unit at which the whole block would fill the picture. */
  whole: number,
): number => {
  const { block, step } = of;
  const thinnest = [...step.patches[0], ...step.patches[1]].reduce(
    (least, i) => Math.min(least, thinness(patchAt(block, i).points)),
    Number.POSITIVE_INFINITY,
  );
  return Math.max(whole * larger, legiblePt / thinnest);
};
