// Outlines as path data, and where a shape lies in a picture.
import type { Box, Point, Polygon } from '#ground/plane';
import { numberText } from './svg.ts';

/** Path data of closed outlines. */
export const pathOf = (polygons: readonly Polygon[]): string =>
  polygons
    .map((polygon) => {
      const [first, ...rest] = thinned(polygon);
      if (first === undefined) return '';
      const corners = rest.map((p) => `L${numberText(p.x)} ${numberText(p.y)}`).join('');
      return `M${numberText(first.x)} ${numberText(first.y)}${corners}Z`;
    })
    .join('');

/** Path data of an open line. */
export const lineOf = (line: Polygon): string =>
  line.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${numberText(x)} ${numberText(y)}`).join('');

/** Outlines with more corners than this have chords for arcs. */
const mostCorners = 24;
/** Chords are left out where what is left lies no further from them, in points: less than a hundredth of a millimetre. Our own figure. */
const chordPt = 0.02;

/** In a small picture an arc needs fewer chords than in a large one. */
const thinned = (polygon: Polygon): Polygon => {
  if (polygon.length <= mostCorners) return polygon;
  const kept: Point[] = [];
  for (let from = 0; from < polygon.length; ) {
    kept.push(polygon[from] as Point);
    let to = from + 1;
    while (to + 1 < polygon.length && isNearChord(polygon, from, to + 1)) to++;
    from = to;
  }
  return kept;
};

const isNearChord = (polygon: Polygon, from: number, to: number): boolean => {
  const [a, b] = [polygon[from] as Point, polygon[to] as Point];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const long = Math.hypot(dx, dy);
  for (let i = from + 1; i < to; i++) {
    const p = polygon[i] as Point;
    const along = (p.x - a.x) * dx + (p.y - a.y) * dy;
    if (along < 0 || along > long * long) return false;
    if (Math.abs((p.x - a.x) * dy - (p.y - a.y) * dx) > chordPt * long) return false;
  }
  return true;
};

/** Scaled about the origin, then moved. */
export interface Frame {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export const framed = (polygon: Polygon, frame: Frame): Polygon =>
  polygon.map((p) => ({ x: p.x * frame.scale + frame.x, y: p.y * frame.scale + frame.y }));

/** Scaled to fill `into` at most, never beyond `most`, and set in its middle. */
export const fitted = (of: { readonly box: Box; readonly into: Box; readonly most?: number }): Frame => {
  const scale = Math.min(
    of.into.width / of.box.width,
    of.into.height / of.box.height,
    of.most ?? Number.POSITIVE_INFINITY,
  );
  return {
    scale,
    x: of.into.x + (of.into.width - of.box.width * scale) / 2 - of.box.x * scale,
    y: of.into.y + (of.into.height - of.box.height * scale) / 2 - of.box.y * scale,
  };
};

/** Twice the area over the perimeter: for a long strip close to its width, half the side of a square. */
export const thinness = (outline: Polygon): number => {
  let twice = 0;
  let around = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    twice += a.x * b.y - b.x * a.y;
    around += Math.hypot(b.x - a.x, b.y - a.y);
  });
  return Math.abs(twice) / around;
};

/** Whether a point lies in a simple polygon; on its edge either answer may come. */
export const isInside = (outline: Polygon, p: Point): boolean => {
  let inside = false;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const a = outline[i] as Point;
    const b = outline[j] as Point;
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  }
  return inside;
};

/** What of an outline lies left of an upright line. */
export const leftOf = (edge: number, outline: Polygon): Polygon =>
  outline.flatMap((to, i): Polygon => {
    const from = outline.at(i - 1) as Point;
    const crosses = from.x <= edge !== to.x <= edge;
    const crossing = () => ({ x: edge, y: from.y + ((edge - from.x) / (to.x - from.x)) * (to.y - from.y) });
    return [...(crosses ? [crossing()] : []), ...(to.x <= edge ? [to] : [])];
  });
