// How far must pieces move out from the middle, each along its own line, so that none lies on another?
import { at, centroid, grown, type Point, type Polygon } from '#ground/plane';
import { isInside } from './shape.ts';

/**
 * The outlines moved away from the middle, all in one proportion, the least (to a thousandth) at which none overlaps another.
 * Outlines that touch do not overlap.
 *
 * @param places where each stood before it grew: their centres of area say which way it moves
 */
export const movedApart = (of: {
  readonly outlines: readonly Polygon[];
  readonly places: readonly Polygon[];
  readonly middle: Point;
}): readonly Polygon[] => {
  const ways = of.places.map((place) => {
    const centre = centroid(place);
    return at(centre.x - of.middle.x, centre.y - of.middle.y);
  });
  const moved = (share: number): readonly Polygon[] =>
    of.outlines.map((outline, i) => {
      const way = ways[i] as Point;
      return outline.map((p) => at(p.x + way.x * share, p.y + way.y * share));
    });
  let [low, high] = [0, 1];
  while (high < most && overlapAny(moved(high))) high *= 2;
  for (let n = 0; n < halvings; n++) {
    const share = (low + high) / 2;
    if (overlapAny(moved(share))) low = share;
    else high = share;
  }
  return moved(high);
};

/** A block sixteen times as wide as it finishes: no drawing of ours needs a tenth of it. */
const most = 16;
const halvings = 12;

const overlapAny = (outlines: readonly Polygon[]): boolean => {
  const boxes = outlines.map(edgesOf);
  return outlines.some((a, i) =>
    outlines.some((b, j) => j > i && boxesMeet(boxes[i] as Edges, boxes[j] as Edges) && overlap(a, b)),
  );
};

interface Edges {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const edgesOf = (outline: Polygon): Edges => ({
  left: Math.min(...outline.map((p) => p.x)),
  right: Math.max(...outline.map((p) => p.x)),
  top: Math.min(...outline.map((p) => p.y)),
  bottom: Math.max(...outline.map((p) => p.y)),
});

const near = 1e-7;

const boxesMeet = (a: Edges, b: Edges): boolean =>
  a.left < b.right - near && b.left < a.right - near && a.top < b.bottom - near && b.top < a.bottom - near;

/** Less than any line of a page is wide, in inches and in centimetres. */
const hair = 1e-4;

/**
 * Whether two simple outlines share more than their edges: sides that cross, or one inside the other. One is drawn in by a
 * hair, so that sides on one line decide nothing.
 */
const overlap = (whole: Polygon, b: Polygon): boolean => {
  const a = grown(whole, -hair);
  const sidesOf = (outline: Polygon) => outline.map((p, i) => [p, outline[(i + 1) % outline.length] as Point] as const);
  const inner = [
    [a, b],
    [b, a],
  ] as const;
  return (
    sidesOf(a).some(([p, q]) => sidesOf(b).some(([r, s]) => cross(p, q, r, s))) ||
    inner.some(([one, other]) => isInside(other, centroid(one)) || one.some((p) => isWellInside(other, p)))
  );
};

/** Whether the two stretches cross in one point inside both. */
const cross = (p: Point, q: Point, r: Point, s: Point): boolean => {
  const side = (a: Point, b: Point, c: Point): number => {
    const value = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    return Math.abs(value) < near ? 0 : Math.sign(value);
  };
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
};

/** Inside, and not on an edge. */
const isWellInside = (outline: Polygon, p: Point): boolean =>
  isInside(outline, p) &&
  outline.every((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    return Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) > near * length;
  });
