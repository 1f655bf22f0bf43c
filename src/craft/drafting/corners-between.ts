// Which corners lie on an edge, between its ends? Asked for every edge, so corners are kept sorted from left to right.
import { boxOf, offLine, type Point } from '#ground/plane';

export interface IndexedPoint {
  readonly p: Point;
  readonly index: number;
}

export const sortedByX = (points: readonly Point[]): readonly IndexedPoint[] =>
  points.map((p, index) => ({ p, index })).sort((a, b) => a.p.x - b.p.x || a.p.y - b.p.y);

/** Indexes of the corners strictly inside the edge a→b and nearer to it than `slack`, in walking order. */
export const cornersBetween = (
  [a, b]: readonly [Point, Point],
  byX: readonly IndexedPoint[],
  slack: number,
): readonly number[] => {
  const box = boxOf([a, b]);
  const found: { readonly index: number; readonly along: number }[] = [];
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const long = Math.hypot(dx, dy);
  for (let i = firstAtOrAfter(byX, box.x - slack); i < byX.length; i++) {
    const { p, index } = byX[i] as IndexedPoint;
    if (p.x > box.x + box.width + slack) break;
    if (p.y < box.y - slack || p.y > box.y + box.height + slack) continue;
    const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / long;
    if (along < slack || along > long - slack) continue;
    if (Math.abs(offLine(a, b, p)) < slack) found.push({ index, along });
  }
  return found.sort((m, n) => m.along - n.along).map(({ index }) => index);
};

const firstAtOrAfter = (byX: readonly IndexedPoint[], x: number): number => {
  let low = 0;
  let high = byX.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((byX[middle] as IndexedPoint).p.x < x) low = middle + 1;
    else high = middle;
  }
  return low;
};
