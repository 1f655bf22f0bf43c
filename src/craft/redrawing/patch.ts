// A drawing of patches as it is worked at: outlines on the block's grid, clockwise on screen, each in its tone. Places are doubles; what is
// nearer than the slack is one place, as in every drawing (docs/document.md), and goes back into the document as the fraction it is.
import { cross, type Point, type Polygon, signedArea } from '#ground/plane';

export interface DrawnPatch {
  readonly points: Polygon;
  readonly tone: string;
}

export interface Drawn {
  readonly grid: readonly [across: number, down: number];
  readonly patches: readonly DrawnPatch[];
}

/** Corners nearer than this share of the grid's larger side are one. */
const cornerShare = 1e-6;

export const slackOf = (grid: Drawn['grid']): number => cornerShare * Math.max(...grid);

export const isNear = (a: Point, b: Point, slack: number): boolean =>
  Math.abs(a.x - b.x) < slack && Math.abs(a.y - b.y) < slack;

export const clockwise = (points: Polygon): Polygon => (signedArea(points) < 0 ? points.toReversed() : points);

/** Corner by corner, with the next. */
export const sidesOf = (points: Polygon): readonly (readonly [Point, Point])[] =>
  points.map((a, i) => [a, points[(i + 1) % points.length] as Point] as const);

/** Whether a point lies on the line from a to b, ends included. */
export const isOnSide = (p: Point, [a, b]: readonly [Point, Point], slack: number): boolean => {
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  if (long < slack) return isNear(p, a, slack);
  const along = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long;
  const aside = ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / long;
  return along > -slack && along < long + slack && Math.abs(aside) < slack;
};

export const isOnOutline = (p: Point, points: Polygon, slack: number): boolean =>
  sidesOf(points).some((side) => isOnSide(p, side, slack));

/** Whether an outline's sides touch nowhere but at its corners, round some room. */
export const isPlain = (points: Polygon, slack: number): boolean => {
  const sides = sidesOf(points);
  const isCrossed = sides.some((side, i) =>
    sides.some((other, k) => k > i + 1 && !(i === 0 && k === sides.length - 1) && crosses(side, other)),
  );
  return Math.abs(signedArea(points)) > slack && !isCrossed;
};

const crosses = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean => {
  const side = (p: Point, q: Point, r: Point): number => Math.sign(cross(p, q, r));
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
};
