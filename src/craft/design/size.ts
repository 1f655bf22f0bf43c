// How large is a block, finished? From its drawing, or for a log cabin from its recipe.
import { add, type Rational } from '#ground/exact';
import type { BlockDesign, LogCabinDesign } from './quilt.ts';

export type ExactSize = readonly [width: Rational, height: Rational];

/** Exact, in the document's unit, at turn 0. */
export const sizeOf = (shape: BlockDesign['shape']): ExactSize =>
  shape.kind === 'patches' ? shape.size : logCabinSize(shape);

/** A log at the left or right adds its width to the block's width, one at the top or bottom to its height. */
const logCabinSize = (shape: LogCabinDesign): ExactSize =>
  shape.logs.reduce<ExactSize>(
    ([width, height], log) =>
      log.side === 'left' || log.side === 'right' ? [add(width, log.width), height] : [width, add(height, log.width)],
    shape.centre,
  );
