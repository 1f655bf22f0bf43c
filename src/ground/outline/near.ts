// Outlines and their sides, where what lies nearer than a slack is one place.
import { distance, offLine, type Point, type Polygon, signedArea } from '#ground/plane';

export type Side = readonly [Point, Point];

export const isNear = (a: Point, b: Point, slack: number): boolean =>
  Math.abs(a.x - b.x) < slack && Math.abs(a.y - b.y) < slack;

/** The same outline, clockwise on screen. */
export const clockwise = (points: Polygon): Polygon => (signedArea(points) < 0 ? points.toReversed() : points);

/** Corner by corner, with the next. */
export const sidesOf = (points: Polygon): readonly Side[] =>
  points.map((a, i) => [a, points[(i + 1) % points.length] as Point] as const);

/** Whether a point lies on the line from a to b, ends included. */
export const isOnSide = (p: Point, [a, b]: Side, slack: number): boolean => {
  const long = distance(a, b);
  if (long < slack) return isNear(p, a, slack);
  const along = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long;
  return along > -slack && along < long + slack && Math.abs(offLine(a, b, p)) < slack;
};

export const isOnOutline = (p: Point, points: Polygon, slack: number): boolean =>
  sidesOf(points).some((side) => isOnSide(p, side, slack));

/** The stretches of a side between the places that lie on it, in order. */
export const splitAt = (side: Side, places: readonly Point[], slack: number): readonly Side[] => {
  const [a, b] = side;
  const inner = places
    .filter((p) => !isNear(p, a, slack) && !isNear(p, b, slack) && isOnSide(p, side, slack))
    .toSorted((p, q) => distance(a, p) - distance(a, q))
    .filter((p, i, all) => i === 0 || !isNear(p, all[i - 1] as Point, slack));
  const stops = [a, ...inner, b];
  return stops.slice(1).map((to, i) => [stops[i] as Point, to] as const);
};
