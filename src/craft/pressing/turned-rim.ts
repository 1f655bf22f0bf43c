// What reaches a block's edge when the block is turned: the same places, as its drawing is carried onto itself, but other seams.
import { at, distance, dot, type Point, quarterTurned } from '#ground/plane';
import type { SeamEnd, StepEnd } from './spots.ts';

export interface RimEnd extends StepEnd {
  /** Whether its second part lies on the side on which that of the seam lay which ended there before: else -1. */
  readonly facing: 1 | -1;
}

/**
 * @param of.rim      of the block as it is set
 * @param of.quarters clockwise, in the block's own frame
 * @param of.slack    points nearer than this are one
 * @returns by place of the rim; null where not every place has one seam again
 */
export const turnedRim = (of: {
  readonly rim: readonly SeamEnd<StepEnd>[];
  readonly size: readonly [number, number];
  readonly quarters: number;
  readonly slack: number;
}): readonly RimEnd[] | null => {
  const { rim, size, quarters, slack } = of;
  const [x, y] = [size[0] / 2, size[1] / 2];
  const onward = (p: Point): Point => {
    const moved = quarterTurned(at(p.x - x, p.y - y), quarters);
    return at(moved.x + x, moved.y + y);
  };
  const left = rim.map(({ at: p, into, toward, of: whose }) => ({
    at: onward(p),
    into: quarterTurned(into, quarters),
    toward: quarterTurned(toward, quarters),
    whose,
  }));
  const found: RimEnd[] = [];
  for (const end of rim) {
    const place = left.findIndex((one) => distance(one.at, end.at) <= slack && dot(one.into, end.into) > oneWay);
    const [one] = place < 0 ? [] : left.splice(place, 1);
    if (one === undefined) return null;
    found.push({ ...one.whose, facing: dot(one.toward, end.toward) > 0 ? 1 : -1 });
  }
  return found;
};

/** Cosine of the greatest angle between what is still one way: a degree. */
const oneWay = 0.99985;
