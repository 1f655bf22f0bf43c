// Cloth as it is sewn: what shows on the right side, and what a seam, a cut and the iron make of it. Pieces stay convex.
import { at, boxOf, distance, offLine, type Point, type Polygon, quarterTurned } from '#ground/plane';

/** What shows of one cloth; `place` is the place in the unit that the cloth is for. */
export interface Shown {
  readonly place: number;
  readonly outline: Polygon;
}

/** What shows of something sewn, right side up; of something turned over, as one would see it through. */
export type Face = readonly Shown[];

/** From point to point; what is kept lies at its right hand on screen. */
export type Line = readonly [from: Point, to: Point];

/**
 * Two faces laid right sides together, sewn on a line and pressed open: what lies at the line's right hand stays, the upper
 * one comes to lie beyond the line. Allowances are behind.
 *
 * @param over as it lies, wrong side up
 */
export const pressedOpen = (under: Face, over: Face, seam: Line): Face => [
  ...keptBeside(under, seam),
  ...keptBeside(over, seam).map(({ place, outline }) => ({
    place,
    outline: outline.map((p) => mirroredIn(p, seam)).toReversed(),
  })),
];

/** What a cut along the line leaves at its right hand. */
export const keptBeside = (face: Face, line: Line): Face =>
  face.flatMap(({ place, outline }) => {
    const rest = clipped(outline, line);
    return rest.length === 0 ? [] : [{ place, outline: rest }];
  });

/** Trimmed to a rectangle, whose upper left corner becomes the origin. */
export const trimmedTo = (
  face: Face,
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): Face => {
  const corners = [
    at(box.x, box.y),
    at(box.x + box.width, box.y),
    at(box.x + box.width, box.y + box.height),
    at(box.x, box.y + box.height),
  ];
  const cut = corners.reduce<Face>(
    (rest, corner, i) => keptBeside(rest, [corner, corners[(i + 1) % 4] as Point]),
    face,
  );
  return shifted(cut, -box.x, -box.y);
};

/** By quarter turns clockwise, its upper left corner at the origin. */
export const turnedFace = (face: Face, quarters: number): Face => {
  const turned = face.map(({ place, outline }) => ({ place, outline: outline.map((p) => quarterTurned(p, quarters)) }));
  const box = boxOf(turned.flatMap(({ outline }) => outline));
  return shifted(turned, -box.x, -box.y);
};

/** The other way round: the same line, what lies at the other hand kept. */
export const reversed = ([from, to]: Line): Line => [to, from];

/** Moved to its left hand by so much. */
export const movedLeft = ([from, to]: Line, by: number): Line => {
  const long = distance(from, to);
  const [dx, dy] = [((to.y - from.y) / long) * by, (-(to.x - from.x) / long) * by];
  return [at(from.x + dx, from.y + dy), at(to.x + dx, to.y + dy)];
};

export const shifted = (face: Face, dx: number, dy: number): Face =>
  face.map(({ place, outline }) => ({ place, outline: outline.map((p) => at(p.x + dx, p.y + dy)) }));

/** Areas below it are none. */
const nothing = 1e-9;

const clipped = (outline: Polygon, [a, b]: Line): Polygon => {
  const off = outline.map((p) => offLine(a, b, p));
  const kept = outline.flatMap((to, i): Polygon => {
    const before = (i + outline.length - 1) % outline.length;
    const from = outline[before] as Point;
    const [f, t] = [off[before] as number, off[i] as number];
    const crosses = (f < -nothing && t > nothing) || (f > nothing && t < -nothing);
    const share = f / (f - t);
    const crossing = crosses ? [at(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))] : [];
    return t >= -nothing ? [...crossing, to] : crossing;
  });
  return kept.length >= 3 && kept.some((p) => offLine(a, b, p) > 1e-7) ? kept : [];
};

const mirroredIn = (p: Point, [a, b]: Line): Point => {
  const long = distance(a, b);
  const off = 2 * offLine(a, b, p);
  // the right hand of a→b
  return at(p.x - (off * -(b.y - a.y)) / long, p.y - (off * (b.x - a.x)) / long);
};
