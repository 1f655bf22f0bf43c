// Is a ring of corners the outline of one patch: no corner twice, some area, no edge across another?
import { cross, offLine, type Point, type Polygon, perimeter, signedArea } from '#ground/plane';
import { isNear } from './near.ts';

export type OutlineFault =
  | { readonly kind: 'corner-twice' | 'crosses-itself'; readonly places: readonly [number, number] }
  | { readonly kind: 'no-area' };

/** The first fault found. Points nearer than `slack` are one; an area thinner than it is none. */
export const outlineFault = (outline: Polygon, slack: number): OutlineFault | null => {
  const twice = firstPair(outline, (i, j) => isNear(outline[i] as Point, outline[j] as Point, slack));
  if (twice !== null) return { kind: 'corner-twice', places: twice };
  const crossing = firstPair(outline, (i, j) => edgesMeet(outline, { i, j, slack }));
  const thin = Math.abs(signedArea(outline)) <= (slack * perimeter(outline)) / 2;
  // a ring folded flat meets itself everywhere: its lack of area says it better
  if (thin && (crossing === null || isFlat(outline, slack))) return { kind: 'no-area' };
  return crossing === null ? null : { kind: 'crosses-itself', places: crossing };
};

const firstPair = (outline: Polygon, is: (i: number, j: number) => boolean): readonly [number, number] | null => {
  for (let i = 0; i < outline.length; i++) {
    for (let j = i + 1; j < outline.length; j++) if (is(i, j)) return [i, j];
  }
  return null;
};

const isFlat = (outline: Polygon, slack: number): boolean => {
  const [a, b] = [outline[0] as Point, outline[1] as Point];
  return outline.every((p) => Math.abs(offLine(a, b, p)) <= slack);
};

/** Edges i → i+1 and j → j+1. Neighbours meet at their corner and nowhere else. */
const edgesMeet = (
  outline: Polygon,
  pair: { readonly i: number; readonly j: number; readonly slack: number },
): boolean => {
  const { i, j, slack } = pair;
  const n = outline.length;
  const a = outline[i] as Point;
  const b = outline[(i + 1) % n] as Point;
  const c = outline[j] as Point;
  const d = outline[(j + 1) % n] as Point;
  if (j === i + 1) return foldsBack([a, b, d], slack);
  if ((j + 1) % n === i) return foldsBack([c, d, b], slack);
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) - slack || Math.max(c.x, d.x) < Math.min(a.x, b.x) - slack) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) - slack || Math.max(c.y, d.y) < Math.min(a.y, b.y) - slack) return false;
  const first = { a, b, slack };
  const second = { a: c, b: d, slack };
  if (parts(first, [c, d]) && parts(second, [a, b])) return true;
  return liesOn(c, first) || liesOn(d, first) || liesOn(a, second) || liesOn(b, second);
};

/** The two points lie on different sides of the edge's line. */
const parts = (edge: { readonly a: Point; readonly b: Point }, [p, q]: readonly [Point, Point]): boolean =>
  cross(edge.a, edge.b, p) > 0 !== cross(edge.a, edge.b, q) > 0;

/** The edges before and after the middle one of three corners lie on each other. */
const foldsBack = ([before, at, after]: readonly [Point, Point, Point], slack: number): boolean =>
  liesOn(after, { a: before, b: at, slack }) || liesOn(before, { a: at, b: after, slack });

const liesOn = (p: Point, edge: { readonly a: Point; readonly b: Point; readonly slack: number }): boolean => {
  const { a, b, slack } = edge;
  const along = (p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y);
  const whole = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  return along >= 0 && along <= whole && Math.abs(offLine(a, b, p)) < slack;
};
