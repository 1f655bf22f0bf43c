// Do two pieces of one template, one of them turned by a half turn, take less cloth in one box than in two? Boxes keep the
// template's own way to lie; other turns would put its grain askew.
import { type Length, length, upToMark } from '#craft/measure';
import type { Rational } from '#ground/exact';
import { at, boxOf, hullOf, type Point, type Polygon } from '#ground/plane';

export interface TemplatePair {
  readonly exact: readonly [Length, Length];
  /** On marks, up. */
  readonly size: readonly [Length, Length];
  /** Both pieces, from the box's upper left corner. */
  readonly outlines: readonly [Polygon, Polygon];
}

/**
 * The smallest box of a pair; null where two boxes of one are no larger. Exact for convex templates; of others
 * their convex outline stands in, so that a smaller box may exist.
 *
 * @param points cut outline, clockwise
 * @source docs/formulas.md#template-pairs
 */
export const templatePairFor = (points: Polygon, ruler: Rational): TemplatePair | null => {
  const box = boxOf(points);
  const hull = hullOf(points, 1e-9 * (box.width + box.height));
  const middle = bestMiddle(hull);
  const turned = points.map((p) => at(2 * middle.x - p.x, 2 * middle.y - p.y));
  const both = boxOf([...points, ...turned]);
  const shift = (p: Point): Point => at(p.x - both.x, p.y - both.y);
  const exact = [length(both.width), length(both.height)] as const;
  const size = [upToMark(exact[0], ruler).size, upToMark(exact[1], ruler).size] as const;
  const alone = upToMark(length(box.width), ruler).size * upToMark(length(box.height), ruler).size;
  if (size[0] * size[1] >= 2 * alone - 1e-9) return null;
  return { exact, size, outlines: [points.map(shift), turned.map(shift)] };
};

/**
 * The point about which the second is turned: on the outline, where the box of both is least. On a side that point's
 * distances from the box's middle lines are linear up to where it crosses one, so the area is quadratic between crossings.
 */
const bestMiddle = (outline: Polygon): Point => {
  const box = boxOf(outline);
  const centre = at(box.x + box.width / 2, box.y + box.height / 2);
  const area = (m: Point): number =>
    (box.width + 2 * Math.abs(m.x - centre.x)) * (box.height + 2 * Math.abs(m.y - centre.y));
  const middles = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    return sharesToTry({ a, b, centre, box }).map((t) => at(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)));
  });
  return middles.reduce((best, m) => (area(m) < area(best) - 1e-12 ? m : best));
};

/** Shares of the side from a to b: its ends, crossings of the middle lines, and where the area stands still between. */
const sharesToTry = (of: {
  readonly a: Point;
  readonly b: Point;
  readonly centre: Point;
  readonly box: { readonly width: number; readonly height: number };
}): readonly number[] => {
  const { a, b, centre, box } = of;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const crossings = [(centre.x - a.x) / dx, (centre.y - a.y) / dy];
  const still = [-1, 1].flatMap((signX) =>
    [-1, 1].map((signY) => {
      // (p + q·t)·(u + v·t) stands still at −(p·v + q·u) / (2·q·v)
      const [p, q] = [box.width + 2 * signX * (a.x - centre.x), 2 * signX * dx];
      const [u, v] = [box.height + 2 * signY * (a.y - centre.y), 2 * signY * dy];
      return -(p * v + q * u) / (2 * q * v);
    }),
  );
  return [0, 1, ...[...crossings, ...still].filter((t) => t > 0 && t < 1)];
};
