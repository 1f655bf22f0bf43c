// The sides of an outline as vectors, in walking order.
import type { Point, Polygon } from '#ground/plane';

export interface OutlineSide {
  readonly dx: number;
  readonly dy: number;
  readonly length: number;
}

export const sidesOf = (points: Polygon): readonly OutlineSide[] =>
  points.map((a, i) => {
    const b = points[(i + 1) % points.length] as Point;
    return { dx: b.x - a.x, dy: b.y - a.y, length: Math.hypot(b.x - a.x, b.y - a.y) };
  });
