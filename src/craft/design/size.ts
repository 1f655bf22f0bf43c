// How large is a block, finished, and of how many patches? From its drawing, or from its recipe.
import { add, mul, type Rational, sum, two } from '#ground/exact';
import type { BlockShape, LogCabinDesign } from './quilt.ts';

export type ExactSize = readonly [width: Rational, height: Rational];

/** Exact, in the document's unit, at turn 0; frames included. */
export const sizeOf = (shape: BlockShape): ExactSize => {
  switch (shape.kind) {
    case 'log-cabin':
      return logCabinSize(shape);
    case 'framed': {
      const around = mul(two, sum(shape.frames.map((frame) => frame.width)));
      const [width, height] = sizeOf(shape.inner);
      return [add(width, around), add(height, around)];
    }
    default:
      return shape.size;
  }
};

/** A drawing has as many as it has tones: one a patch. */
export const patchCount = (shape: BlockShape): number => {
  switch (shape.kind) {
    case 'log-cabin':
      return shape.logs.length + (shape.centreBlock === null ? 1 : patchCount(shape.centreBlock.shape));
    case 'patches':
      return shape.patches.length;
    case 'units':
      return shape.units.reduce((all, { unit, tones }) => all + (patchesOfUnit[unit] ?? tones.length), 0);
    case 'drawing':
      return shape.tonesAt.length;
    case 'collection':
      return patchCount(shape.shape);
    case 'elsewhere':
      return 0;
    case 'framed':
      return patchCount(shape.inner) + 4 * shape.frames.length;
  }
};

/** Rails have one for each tone. */
const patchesOfUnit: Readonly<Record<string, number>> = {
  square: 1,
  'half-square': 2,
  'quarter-square': 4,
  'flying-geese': 3,
  'square-in-square': 5,
  'four-patch': 4,
};

/** A log at the left or right adds its width to the block's width, one at the top or bottom to its height. */
const logCabinSize = (shape: LogCabinDesign): ExactSize =>
  shape.logs.reduce<ExactSize>(
    ([width, height], log) =>
      log.side === 'left' || log.side === 'right' ? [add(width, log.width), height] : [width, add(height, log.width)],
    shape.centre,
  );
