// A drafted block made larger or smaller as a whole.
import type { DraftedBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import type { Arc } from '#ground/arc';
import { mul, type Rational, toNumber } from '#ground/exact';
import { at, type Point } from '#ground/plane';

/** @param by above zero */
export const scaled = (block: DraftedBlock, by: Rational): DraftedBlock => {
  const [width, height] = block.exactSize.map((side) => mul(side, by)) as [Rational, Rational];
  const times = toNumber(by);
  const larger = (p: Point): Point => at(p.x * times, p.y * times);
  return {
    ...block,
    exactSize: [width, height],
    size: [length(toNumber(width)), length(toNumber(height))],
    patches: block.patches.map((patch) => ({
      ...patch,
      points: patch.points.map(larger),
      ...(patch.arcs === undefined ? {} : { arcs: patch.arcs.map((arc) => scaledArc(arc, larger)) }),
    })),
  };
};

const scaledArc = ({ from, to, centre, clockwise }: Arc, larger: (p: Point) => Point): Arc => ({
  from: larger(from),
  to: larger(to),
  centre: larger(centre),
  clockwise,
});
