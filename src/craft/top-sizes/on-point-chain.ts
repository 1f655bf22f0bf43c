// How long is a row of squares that stand on their corners, corner to corner? Each by its diagonal: both its sides count, and the seams at
// all four of its edges. What is set round them is trimmed to that, and adds nothing of its own.
import type { CutTerm, SeamTerm } from '#craft/accuracy';
import { tidy } from '#craft/measure';
import { touchingPairs } from '#craft/setting';
import { centroid, dot, type Point, type Polygon } from '#ground/plane';
import type { SewnTop } from './sewn-top.ts';
import { termsOf } from './thing-terms.ts';

export interface Chain {
  readonly cuts: readonly CutTerm[];
  readonly seams: readonly SeamTerm[];
  /** What it adds to the size as it is cut on its marks. */
  readonly off: number;
  /** Where it lies, across the way. */
  readonly level: number;
}

/** By thing: those that lie against it along an edge. */
export type Neighbours = ReadonlyMap<number, readonly number[]>;

export const neighboursIn = (outlines: readonly Polygon[], slack: number): Neighbours => {
  const known = new Map<number, number[]>();
  for (const [a, b] of touchingPairs(outlines, slack)) {
    known.set(a, [...(known.get(a) ?? []), b]);
    known.set(b, [...(known.get(b) ?? []), a]);
  }
  return known;
};

/** Null where nothing in the unit stands on its corner. Of all its rows with blocks the one nearest the middle; of two the longer. */
export const chainFor = (of: {
  readonly sewn: SewnTop;
  readonly neighbours: Neighbours;
  readonly outlines: readonly Polygon[];
  readonly unit: readonly number[];
  readonly way: { readonly along: Point; readonly across: Point };
  readonly middle: number;
  readonly slack: number;
}): Chain | null => {
  const { sewn, neighbours, outlines, way, middle, slack } = of;
  const rows = new Map<string, { readonly level: number; readonly things: number[] }>();
  for (const thing of of.unit) {
    if (!sewn.isOnPoint(thing) || !isSquare(outlines[thing] as Polygon, slack)) continue;
    const level = dot(centroid(outlines[thing] as Polygon), way.across);
    const name = (level / (64 * slack)).toFixed(0);
    const row = rows.get(name) ?? { level, things: [] };
    row.things.push(thing);
    rows.set(name, row);
  }
  const awayOf = ({ level }: { readonly level: number }): number => Math.abs(level - middle);
  const [best] = [...rows.values()]
    .filter(({ things }) => things.some(sewn.isBlock))
    .sort(
      (a, b) => nearestFirst(awayOf(a), awayOf(b), slack) || b.things.length - a.things.length || a.level - b.level,
    );
  if (best === undefined) return null;
  const unit = new Set(of.unit);
  const corner = Math.SQRT1_2;
  const terms = best.things.map((thing) =>
    termsOf(sewn, {
      thing,
      edges: edgesOf(outlines[thing] as Polygon).map((normal) => ({ normal, weight: corner })),
      before: [],
    }),
  );
  const seams = best.things.flatMap((thing) =>
    (neighbours.get(thing) ?? [])
      .filter((other) => unit.has(other))
      .map(
        (other): SeamTerm => ({
          step: sewn.stepBetween(thing, other),
          between: [thing, other],
          shrinks: tidy(corner / 2),
        }),
      ),
  );
  return {
    cuts: terms.flatMap(({ cuts }) => cuts),
    seams,
    off: terms.reduce((all, { off }) => all + off, 0),
    level: best.level,
  };
};

const nearestFirst = (a: number, b: number, slack: number): number => (Math.abs(a - b) < 64 * slack ? 0 : a - b);

const isSquare = (outline: Polygon, slack: number): boolean => {
  const sides = sidesOf(outline).map(({ x, y }) => Math.hypot(x, y));
  return sides.length === 4 && Math.max(...sides) - Math.min(...sides) < slack;
};

const sidesOf = (outline: Polygon): readonly Point[] =>
  outline.map((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    return { x: b.x - a.x, y: b.y - a.y };
  });

/** Outward normals of a clockwise outline. */
const edgesOf = (outline: Polygon): readonly Point[] =>
  sidesOf(outline).map(({ x, y }) => {
    const long = Math.hypot(x, y);
    return { x: y / long, y: -x / long };
  });
