// Seams as a net: corners where seams end, meet or cross, and the edges between them, straight or arcs. Crossings of straight seams
// are exact, those of arcs the nearest doubles; corners nearer than the tolerance are one, and a seam that passes a corner within the tolerance goes through it.
import { type Arc, arcCrossings, arcThrough, type CrossedEdge, isOnArc, pointOnArc, sweepOf } from '#ground/arc';
import {
  add,
  compare,
  div,
  fromDecimal,
  isPositive,
  mul,
  one,
  type Rational,
  sub,
  toNumber,
  zero,
} from '#ground/exact';
import { at, type Point } from '#ground/plane';
import { cornersBetween, type IndexedPoint, sortedByX } from './corners-between.ts';
import type { ExactArc, ExactCorner } from './exact-draft.ts';

export interface SeamNet {
  readonly corners: readonly NetCorner[];
  readonly edges: readonly NetEdge[];
}

export interface NetCorner {
  readonly exact: ExactCorner;
  readonly p: Point;
  /** Of the point in the document that first named it; null for the block's corners and for crossings. */
  readonly path: string | null;
}

export interface NetEdge {
  /** Indexes of corners. */
  readonly ends: readonly [number, number];
  /** Of the seam; null on the block's outline. */
  readonly path: string | null;
  /** Null where it is straight. */
  readonly bow: Bow | null;
}

/** An edge that is an arc: as it is walked from its first end to its second, and its centre as it was written. */
export interface Bow {
  readonly arc: Arc;
  readonly centre: ExactCorner;
}

export interface SeamRun {
  readonly points: readonly ExactCorner[];
  readonly arcs?: readonly ExactArc[] | undefined;
  readonly path: string;
}

interface Line {
  readonly ends: readonly [number, number];
  readonly path: string | null;
  readonly bow: Bow | null;
}

/**
 * @param of.size  finished size of the block; seams lie inside it
 * @param of.slack corner tolerance, in the size's unit
 * @param of.most  crossings
 * @returns null where there are more crossings than that
 */
export const seamNet = (of: {
  readonly size: ExactCorner;
  readonly runs: readonly SeamRun[];
  readonly slack: number;
  readonly most: number;
}): SeamNet | null => {
  const shelf = cornerShelf(of.size, of.slack);
  const outline = outlineLines(of.size, shelf);
  const seams = of.runs.flatMap((run) => linesOf(run, shelf));
  const lines = [...outline, ...seams].filter(({ ends: [a, b] }) => a !== b);
  if (!placeCrossings(lines, { ...of, shelf })) return null;
  return { corners: shelf.all, edges: edgesOf(lines, shelf.all, of.slack) };
};

const linesOf = ({ points, arcs = [], path }: SeamRun, shelf: Shelf): readonly Line[] => {
  const indexes = points.map((point, i) => shelf.place(point, `${path}/${i}`));
  return indexes.slice(1).map((to, i): Line => {
    const from = indexes[i] as number;
    const bent = arcs.find(({ edge }) => edge === i);
    if (bent === undefined || from === to) return { ends: [from, to], path, bow: null };
    const ends = { from: (shelf.all[from] as NetCorner).p, to: (shelf.all[to] as NetCorner).p };
    const [x, y] = bent.centre.map(toNumber) as [number, number];
    const arc = arcThrough({ ...ends, centre: at(x, y), clockwise: bent.clockwise });
    return { ends: [from, to], path, bow: { arc, centre: bent.centre } };
  });
};

interface Shelf {
  readonly all: NetCorner[];
  /** The index of the corner at a place, a new one where none is near. */
  readonly place: (exact: ExactCorner, path: string | null) => number;
}

const cornerShelf = (size: ExactCorner, slack: number): Shelf => {
  const all: NetCorner[] = [];
  const cells = new Map<string, number[]>();
  const cell = slack * 4;
  const place = (raw: ExactCorner, path: string | null): number => {
    const exact: ExactCorner = [ontoEdge(raw[0], size[0], slack), ontoEdge(raw[1], size[1], slack)];
    const p = at(toNumber(exact[0]), toNumber(exact[1]));
    const column = Math.floor(p.x / cell);
    const row = Math.floor(p.y / cell);
    for (let i = column - 1; i <= column + 1; i++) {
      for (let j = row - 1; j <= row + 1; j++) {
        for (const index of cells.get(`${i},${j}`) ?? []) {
          const known = all[index] as NetCorner;
          if (Math.abs(known.p.x - p.x) < slack && Math.abs(known.p.y - p.y) < slack) return index;
        }
      }
    }
    const key = `${column},${row}`;
    cells.set(key, [...(cells.get(key) ?? []), all.length]);
    all.push({ exact, p, path });
    return all.length - 1;
  };
  return { all, place };
};

const ontoEdge = (value: Rational, far: Rational, slack: number): Rational => {
  if (Math.abs(toNumber(value)) < slack) return zero;
  return Math.abs(toNumber(sub(value, far))) < slack ? far : value;
};

const outlineLines = ([width, height]: ExactCorner, shelf: Shelf): readonly Line[] => {
  const corners: readonly ExactCorner[] = [
    [zero, zero],
    [width, zero],
    [width, height],
    [zero, height],
  ];
  const indexes = corners.map((corner) => shelf.place(corner, null));
  return indexes.map((from, i): Line => ({ ends: [from, indexes[(i + 1) % 4] as number], path: null, bow: null }));
};

/** @returns whether all found a place: false as soon as there are more than `most` */
const placeCrossings = (
  lines: readonly Line[],
  of: { readonly shelf: Shelf; readonly slack: number; readonly most: number },
): boolean => {
  const { shelf, most } = of;
  const before = shelf.all.length;
  for (let i = 0; i < lines.length; i++) {
    for (let j = 0; j < i; j++) {
      for (const crossing of crossingsOf([lines[i] as Line, lines[j] as Line], shelf.all, of.slack))
        shelf.place(crossing, null);
      if (shelf.all.length - before > most) return false;
    }
  }
  return true;
};

const crossingsOf = (
  [s, t]: readonly [Line, Line],
  corners: readonly NetCorner[],
  slack: number,
): readonly ExactCorner[] => {
  if (s.bow === null && t.bow === null) {
    const crossing = crossingOf(s, t, corners);
    return crossing === null ? [] : [crossing];
  }
  const [a, b] = [s, t].map(({ ends, bow }) => {
    const [from, to] = ends.map((i) => (corners[i] as NetCorner).p) as [Point, Point];
    return { from, to, arc: bow?.arc ?? null };
  }) as [CrossedEdge, CrossedEdge];
  return arcCrossings(a, b, slack).map(({ x, y }) => [fromDecimal(x), fromDecimal(y)]);
};

/** Where two lines cross between their ends, exactly. */
const crossingOf = (s: Line, t: Line, corners: readonly NetCorner[]): ExactCorner | null => {
  const [a, b, c, d] = [...s.ends, ...t.ends].map((i) => corners[i] as NetCorner) as [
    NetCorner,
    NetCorner,
    NetCorner,
    NetCorner,
  ];
  if (surelyApart([a.p, b.p], [c.p, d.p])) return null;
  const along = span(a.exact, b.exact);
  const other = span(c.exact, d.exact);
  const between = span(a.exact, c.exact);
  const turn = cross(along, other);
  if (turn.n === 0n) return null;
  const u = div(cross(between, other), turn);
  const v = div(cross(between, along), turn);
  if (!isInside(u) || !isInside(v)) return null;
  return [add(a.exact[0], mul(u, along[0])), add(a.exact[1], mul(u, along[1]))];
};

const isInside = (share: Rational): boolean => isPositive(share) && compare(share, one) < 0;

/** Told by doubles, and only where they leave no doubt. */
const surelyApart = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean => {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return true;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return true;
  return onOneSide([a, b], [c, d]) || onOneSide([c, d], [a, b]);
};

const onOneSide = ([a, b]: readonly [Point, Point], points: readonly [Point, Point]): boolean => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const doubt = 1e-12 * (Math.abs(dx) + Math.abs(dy)) * (Math.abs(a.x) + Math.abs(a.y) + Math.abs(dx) + Math.abs(dy));
  const [m, n] = points.map((p) => dx * (p.y - a.y) - dy * (p.x - a.x)) as [number, number];
  return (m > doubt && n > doubt) || (m < -doubt && n < -doubt);
};

const span = (from: ExactCorner, to: ExactCorner): ExactCorner => [sub(to[0], from[0]), sub(to[1], from[1])];

const cross = (a: ExactCorner, b: ExactCorner): Rational => sub(mul(a[0], b[1]), mul(a[1], b[0]));

/** Lines cut at every corner on them; where two lie on each other one edge stays. */
const edgesOf = (lines: readonly Line[], corners: readonly NetCorner[], slack: number): readonly NetEdge[] => {
  const byX = sortedByX(corners.map(({ p }) => p));
  const edges = new Map<string, NetEdge>();
  for (const line of lines) {
    const stops = [line.ends[0], ...stopsOn(line, { corners, byX, slack }), line.ends[1]];
    for (let i = 0; i + 1 < stops.length; i++) {
      const ends = [stops[i] as number, stops[i + 1] as number] as const;
      const bow = partOfBow(line.bow, ends, corners);
      const key = `${Math.min(...ends)},${Math.max(...ends)}${bow === null ? '' : bowKey(bow, slack)}`;
      if (!edges.has(key)) edges.set(key, { ends, path: line.path, bow });
    }
  }
  return [...edges.values()];
};

const stopsOn = (
  { ends, bow }: Line,
  of: { readonly corners: readonly NetCorner[]; readonly byX: readonly IndexedPoint[]; readonly slack: number },
): readonly number[] => {
  const { corners, byX, slack } = of;
  const [a, b] = ends.map((i) => (corners[i] as NetCorner).p) as [Point, Point];
  if (bow === null) return cornersBetween([a, b], byX, slack);
  return corners
    .flatMap(({ p }, index) => (ends.includes(index) || !isOnArc(p, bow.arc, slack) ? [] : [{ p, index }]))
    .sort((m, n) => sweepOf({ ...bow.arc, to: m.p }) - sweepOf({ ...bow.arc, to: n.p }))
    .map(({ index }) => index);
};

const partOfBow = (bow: Bow | null, ends: readonly [number, number], corners: readonly NetCorner[]): Bow | null => {
  if (bow === null) return null;
  const [from, to] = ends.map((i) => (corners[i] as NetCorner).p) as [Point, Point];
  return { ...bow, arc: arcThrough({ ...bow.arc, from, to }) };
};

/** Arcs between the same corners are told apart by their middles. */
const bowKey = ({ arc }: Bow, slack: number): string => {
  const { x, y } = pointOnArc(arc, 0.5);
  return ` ${Math.round(x / slack / 64)} ${Math.round(y / slack / 64)}`;
};
