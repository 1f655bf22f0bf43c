// Which way a seam is pressed: outward on a log cabin, else to the darker side of the seam.
import { offLine, type Point, type Polygon } from '#ground/plane';
import type { SeamLine } from './chords.ts';

export interface SeamSide {
  readonly patches: readonly number[];
}

/**
 * 0 or 1: the part whose cloth along the seam is darker (by CIE L*, weighted by length). Where both are
 * alike, the part of fewer patches, for less bulk; then the second.
 *
 * @source docs/sources.md "press to the dark" (common rule)
 */
export const darkerSide = (seam: {
  readonly line: SeamLine;
  readonly parts: readonly [readonly number[], readonly number[]];
  readonly outlines: readonly Polygon[];
  readonly lightnessOf: (patch: number) => number;
  readonly slack: number;
}): 0 | 1 => {
  const [first, second] = seam.parts.map((patches) => lightnessAlong({ ...seam, patches })) as [number, number];
  if (Math.abs(first - second) > 1e-6) return first < second ? 0 : 1;
  return seam.parts[0].length < seam.parts[1].length ? 0 : 1;
};

const lightnessAlong = (seam: {
  readonly line: SeamLine;
  readonly patches: readonly number[];
  readonly outlines: readonly Polygon[];
  readonly lightnessOf: (patch: number) => number;
  readonly slack: number;
}): number => {
  let all = 0;
  let weighted = 0;
  for (const patch of seam.patches) {
    const long = lengthAlong(seam.outlines[patch] as Polygon, seam.line, seam.slack);
    all += long;
    weighted += long * seam.lightnessOf(patch);
  }
  return all === 0 ? 0 : weighted / all;
};

/** How much of an outline lies on the line. */
export const lengthAlong = (outline: Polygon, line: SeamLine, slack: number): number => {
  let all = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const near = (p: Point) => Math.abs(offLine(line.from, line.to, p)) < 3 * slack;
    if (near(a) && near(b)) all += Math.hypot(b.x - a.x, b.y - a.y);
  });
  return all;
};
