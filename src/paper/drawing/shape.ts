// Outlines as path data, and where a shape lies in a picture.
import type { Box, Point, Polygon } from '#ground/plane';
import { numberText } from './svg.ts';

/** Path data of closed outlines. */
export const pathOf = (polygons: readonly Polygon[]): string =>
  polygons
    .map((polygon) => {
      const [first, ...rest] = polygon;
      if (first === undefined) return '';
      const corners = rest.map((p) => `L${numberText(p.x)} ${numberText(p.y)}`).join('');
      return `M${numberText(first.x)} ${numberText(first.y)}${corners}Z`;
    })
    .join('');

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
