// Where a straight seam begins and ends on its line, and on which side of it patches lie.

import type { SeamLine } from '#craft/chords';
import { offLine, type Point, type Polygon } from '#ground/plane';
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
  const { line } = of;
  const on = of.patches
    .flatMap((i) => of.outlines[i] as Polygon)
    .filter((p) => Math.abs(offLine(line.from, line.to, p)) < 3 * of.slack);
  const along = (p: Point) =>
    (p.x - line.from.x) * (line.to.x - line.from.x) + (p.y - line.from.y) * (line.to.y - line.from.y);
  const sorted = on.toSorted((a, b) => along(a) - along(b));
  return [sorted[0] as Point, sorted.at(-1) as Point];
};
