// Divisions of a unit along a seam that bends: every bend is an inside corner to set in, so the fewest
// bends are tried first. A seam without a bend is an ordinary straight seam.

import { type SeamLine, seamLine } from '#craft/chords';
import type { Point, Polygon } from '#ground/plane';
import { farEnd, goesStraight, type PatchGraph, partsOf, unitEdges } from './graph.ts';

export interface BentDivision {
  /** The longest straight run of the seam: what lies above or left of it is first. */
  readonly line: SeamLine;
  readonly path: Polygon;
  readonly bends: number;
  readonly first: readonly number[];
  readonly second: readonly number[];
}

/** Corners tried in one unit before the search for bent seams stops. */
const mostSteps = 60_000;
/** Bends tried: a patch on the rim can always be taken off along its own sides. */
const mostBends = 24;

/** Every division with the fewest bends that any has, in reading order of their seams; empty only for one patch. */
export const bentDivisions = (graph: PatchGraph, unit: readonly number[]): readonly BentDivision[] => {
  for (let bends = 0; bends <= mostBends; bends++) {
    const found = new Map<string, BentDivision>();
    for (const path of pathsAcross(graph, unit, bends)) {
      const division = divisionAlong({ graph, unit, path, bends });
      if (division) found.set(division.first.join(), division);
    }
    if (found.size > 0) return [...found.values()].sort(bySeam);
  }
  return [];
};

const bySeam = (a: BentDivision, b: BentDivision): number =>
  Math.min(a.first.length, a.second.length) - Math.min(b.first.length, b.second.length) ||
  a.line.lie - b.line.lie ||
  b.line.place - a.line.place ||
  (a.first.join() < b.first.join() ? -1 : 1);

/** Paths of corners from rim to rim over inner edges, with exactly so many bends. */
const pathsAcross = (graph: PatchGraph, unit: readonly number[], bends: number): readonly (readonly number[])[] => {
  const { inner, rim } = unitEdges(graph, new Set(unit));
  const paths: (readonly number[])[] = [];
  let steps = 0;
  const walk = (path: readonly number[], left: number): void => {
    if (++steps > mostSteps) return;
    const here = path.at(-1) as number;
    if (path.length > 1 && rim.has(here)) {
      if (left === 0 && (path[0] as number) < here) paths.push(path);
      return;
    }
    for (const e of graph.edgesAt[here] as readonly number[]) {
      if (!inner.has(e)) continue;
      const next = farEnd(graph.edges[e] as PatchGraph['edges'][number], here);
      if (path.includes(next)) continue;
      const straight = path.length === 1 || goesStraight(graph, [path.at(-2) as number, here], [here, next]);
      if (straight || left > 0) walk([...path, next], straight ? left : left - 1);
    }
  };
  for (const start of rim) walk([start], bends);
  return paths;
};

const divisionAlong = (of: {
  readonly graph: PatchGraph;
  readonly unit: readonly number[];
  readonly path: readonly number[];
  readonly bends: number;
}): BentDivision | null => {
  const { graph, unit, path, bends } = of;
  const walls = new Set<number>();
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i] as number, path[i + 1] as number];
    for (const e of graph.edgesAt[a] as readonly number[]) {
      if (farEnd(graph.edges[e] as PatchGraph['edges'][number], a) === b) walls.add(e);
    }
  }
  const parts = partsOf(graph, unit, walls);
  if (parts.length !== 2) return null;
  const corners = straightened(graph, path);
  const [from, to] = longestRun(corners);
  const line = seamLine(from, to);
  const firstIsLeft = isLeftOf({ graph, path, line, part: parts[0] as readonly number[] });
  const [first, second] = (firstIsLeft ? parts : parts.toReversed()) as [readonly number[], readonly number[]];
  return { line, path: corners, bends, first, second };
};

const straightened = (graph: PatchGraph, path: readonly number[]): Polygon =>
  path
    .filter((c, i) => {
      const [before, after] = [path[i - 1], path[i + 1]];
      return before === undefined || after === undefined || !goesStraight(graph, [before, c], [c, after]);
    })
    .map((c) => graph.corners[c] as Point);

const longestRun = (corners: Polygon): readonly [Point, Point] => {
  let best: readonly [Point, Point] = [corners[0] as Point, corners[1] as Point];
  for (let i = 1; i + 1 < corners.length; i++) {
    const run = [corners[i] as Point, corners[i + 1] as Point] as const;
    if (lengthOf(run) > lengthOf(best) * (1 + 1e-6)) best = run;
  }
  return best;
};

const lengthOf = ([a, b]: readonly [Point, Point]): number => Math.hypot(b.x - a.x, b.y - a.y);

/** Whether a part holds the patch on the left hand of an edge of the longest run, walked as the line is. */
const isLeftOf = (of: {
  readonly graph: PatchGraph;
  readonly path: readonly number[];
  readonly line: SeamLine;
  readonly part: readonly number[];
}): boolean => {
  const { graph, path, line } = of;
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i] as number, path[i + 1] as number];
    const [p, q] = [graph.corners[a], graph.corners[b]] as [Point, Point];
    if (!onRun(line, p) || !onRun(line, q)) continue;
    const edge = (graph.edgesAt[a] as readonly number[])
      .map((e) => graph.edges[e] as PatchGraph['edges'][number])
      .find((e) => farEnd(e, a) === b) as PatchGraph['edges'][number];
    const withLine = (q.x - p.x) * (line.to.x - line.from.x) + (q.y - p.y) * (line.to.y - line.from.y) > 0;
    const asDrawn = edge.from === a;
    return of.part.includes(withLine === asDrawn ? edge.left : edge.right);
  }
  return true;
};

const onRun = (line: SeamLine, p: Point): boolean => {
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  const long = Math.hypot(dx, dy);
  const along = ((p.x - line.from.x) * dx + (p.y - line.from.y) * dy) / long;
  const off = Math.abs((p.x - line.from.x) * dy - (p.y - line.from.y) * dx) / long;
  return off < 1e-5 * long && along > -1e-5 * long && along < long * (1 + 1e-5);
};
