// A drafted block made larger or smaller as a whole.
import type { DraftedBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { mul, type Rational, toNumber } from '#ground/exact';
import { at } from '#ground/plane';

/** @param by above zero */
export const scaled = (block: DraftedBlock, by: Rational): DraftedBlock => {
  const [width, height] = block.exactSize.map((side) => mul(side, by)) as [Rational, Rational];
  const times = toNumber(by);
  return {
    ...block,
    exactSize: [width, height],
    size: [length(toNumber(width)), length(toNumber(height))],
    patches: block.patches.map((patch) => ({
      ...patch,
      points: patch.points.map((p) => at(p.x * times, p.y * times)),
    })),
  };
};
