// Which way a seam would be pressed if it met no other: to the darker side of it.
import { cross, type Point, type Polygon } from '#ground/plane';
import type { PressWish } from './pieced.ts';

/** On a log cabin, and wherever piece goes round piece. */
export const outward: PressWish = { toward: 1, why: 'outward', darker: 0 };

/** A curved seam, with the part on its hollow hand second. */
export const hollow: PressWish = { toward: 1, why: 'hollow', darker: 0 };

/**
 * Toward the part whose cloth along the seam is darker (by CIE L*, weighted by length). Where both are
 * alike, the part of fewer patches, for less bulk; then the second.
 *
 * @param path the seam from end to end
 * @source docs/formulas.md#pressing
 */
export const darkerSide = (seam: {
  readonly path: Polygon;
  readonly parts: readonly [readonly number[], readonly number[]];
  readonly outlines: readonly Polygon[];
  readonly lightnessOf: (patch: number) => number;
  readonly slack: number;
}): PressWish => {
  const [first, second] = seam.parts.map((patches) => lightnessAlong({ ...seam, patches })) as [number, number];
  const darker = Math.abs(first - second);
  if (darker > 1e-6) return { toward: first < second ? 0 : 1, why: 'darker', darker };
  return { toward: seam.parts[0].length < seam.parts[1].length ? 0 : 1, why: 'flatter', darker: 0 };
};

const lightnessAlong = (seam: {
  readonly path: Polygon;
  readonly patches: readonly number[];
  readonly outlines: readonly Polygon[];
  readonly lightnessOf: (patch: number) => number;
  readonly slack: number;
}): number => {
  let all = 0;
  let weighted = 0;
  for (const patch of seam.patches) {
    const long = lengthOnPath(seam.outlines[patch] as Polygon, seam.path, seam.slack);
    all += long;
    weighted += long * seam.lightnessOf(patch);
  }
  return all === 0 ? 0 : weighted / all;
};

/** How much of an outline lies on a path. */
const lengthOnPath = (outline: Polygon, path: Polygon, slack: number): number => {
  let all = 0;
  for (let run = 0; run + 1 < path.length; run++) {
    const [from, to] = [path[run] as Point, path[run + 1] as Point];
    const long = Math.hypot(to.x - from.x, to.y - from.y);
    const along = (p: Point): number => ((p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y)) / long;
    const near = (p: Point): boolean => Math.abs(cross(from, to, p) / long) < 3 * slack;
    outline.forEach((a, i) => {
      const b = outline[(i + 1) % outline.length] as Point;
      if (!near(a) || !near(b)) return;
      const [low, high] = [Math.min(along(a), along(b)), Math.max(along(a), along(b))];
      all += Math.max(0, Math.min(high, long) - Math.max(low, 0));
    });
  }
  return all;
};
