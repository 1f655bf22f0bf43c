// Where a straight seam begins and ends on its line, and on which side of it patches lie.

import type { SeamLine } from '#craft/chords';
import { cross, distance, type Point, type Polygon } from '#ground/plane';
import { besideSeam, type Heading, headingAcross, wholeTurn } from './machine.ts';

/** Where patches lie, square to a line and seen from it. */
export const headingToward = (of: {
  readonly outlines: readonly Polygon[];
  readonly line: SeamLine;
  readonly patches: readonly number[];
}): Heading => {
  const seam = [of.line.from, of.line.to] as const;
  const outlines = of.patches.map((patch) => of.outlines[patch] as Polygon);
  return headingAcross(seam, besideSeam(outlines, seam));
};

/** What lies on one hand of a line walked from its start, square to it and seen from it. */
export const headingOffLine = ({ from, to }: SeamLine, hand: 'left' | 'right'): Heading => {
  const right = (Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI;
  return wholeTurn(hand === 'right' ? right : right + 180);
};

/** The ends of a seam on its line: the outermost corners of the patches that lie along it. */
export const seamEnds = (of: {
  readonly outlines: readonly Polygon[];
  readonly slack: number;
  readonly line: SeamLine;
  readonly patches: readonly number[];
}): Polygon => {
  const { from, to } = of.line;
  const long = distance(from, to);
  let first: Point | null = null;
  let last: Point | null = null;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const patch of of.patches) {
    for (const p of of.outlines[patch] as Polygon) {
      if (Math.abs(cross(from, to, p) / long) >= 3 * of.slack) continue;
      const along = (p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y);
      if (along < low) [first, low] = [p, along];
      if (along >= high) [last, high] = [p, along];
    }
  }
  return [first as unknown as Point, last as unknown as Point];
};
