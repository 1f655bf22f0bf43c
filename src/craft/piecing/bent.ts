// Divisions of a unit along a seam that bends: every bend is an inside corner to set in. A seam without a bend is an ordinary straight seam, or a curved one where it runs over arcs.

import { type SeamLine, seamLine } from '#craft/chords';
import { type Edge, edgeLength, reversedEdge } from '#ground/arc';
import type { Point, Polygon } from '#ground/plane';
import type { SeamDivision } from './division.ts';
import { edgeFrom, farEnd, goesOn, type PatchGraph, partsOf, unitEdges } from './graph.ts';

/** Corners tried in one unit before the search for bent seams stops. */
const mostSteps = 60_000;
/** Bends tried: a patch on the rim can always be taken off along its own sides. */
export const mostBends = 24;

/** Every division along a seam of exactly so many bends: straight ones first, then small parts, then in reading order of the seams. */
export const bentDivisions = (of: {
  readonly graph: PatchGraph;
  readonly unit: readonly number[];
  readonly bends: number;
}): readonly SeamDivision[] => {
  const found = new Map<string, SeamDivision>();
  for (const path of pathsAcross(of.graph, of.unit, of.bends)) {
    const division = divisionAlong({ ...of, path });
    if (division) found.set(division.parts[0].join(), division);
  }
  return [...found.values()].sort(bySeam);
};

export const bySeam = (a: SeamDivision, b: SeamDivision): number =>
  a.arcs.length - b.arcs.length ||
  smallerPart(a) - smallerPart(b) ||
  a.line.lie - b.line.lie ||
  b.line.place - a.line.place ||
  (a.parts[0].join() < b.parts[0].join() ? -1 : 1);

const smallerPart = ({ parts: [first, second] }: SeamDivision): number => Math.min(first.length, second.length);

/**
 * Inside corners that no order avoids: the last seam that runs through a corner where d patches meet goes on to
 * another of its edges, and bends there unless one of them goes on as another.
 *
 * @source docs/formulas.md#joining-order
 */
export const forcedCorners = (graph: PatchGraph, unit: readonly number[]): readonly number[] => {
  const { inner, rim } = unitEdges(graph, new Set(unit));
  const met = new Set<number>();
  for (const e of inner) {
    const { from, to } = graph.edges[e] as PatchGraph['edges'][number];
    met.add(from).add(to);
  }
  return [...met].filter((corner) => !rim.has(corner) && !goesThrough(graph, corner));
};

const goesThrough = (graph: PatchGraph, corner: number): boolean => {
  const leaving = (graph.edgesAt[corner] as readonly number[]).map((e) => edgeFrom(graph, e, corner));
  return leaving.some((a) => leaving.some((b) => a !== b && goesOn(reversedEdge(a), b)));
};

/** Corner by corner over inner edges: one corner more than edges. */
interface Walk {
  readonly corners: readonly number[];
  /** Indexes, and how each is walked. */
  readonly edges: readonly number[];
  readonly run: readonly Edge[];
}

/** Walks from rim to rim over inner edges, with exactly so many bends. */
const pathsAcross = (graph: PatchGraph, unit: readonly number[], bends: number): readonly Walk[] => {
  const { inner, rim } = unitEdges(graph, new Set(unit));
  const paths: Walk[] = [];
  let steps = 0;
  const walk = (path: Walk, left: number): void => {
    if (++steps > mostSteps) return;
    const here = path.corners.at(-1) as number;
    if (path.edges.length > 0 && rim.has(here)) {
      if (left === 0 && (path.corners[0] as number) < here) paths.push(path);
      return;
    }
    for (const e of graph.edgesAt[here] as readonly number[]) {
      if (!inner.has(e)) continue;
      const next = farEnd(graph.edges[e] as PatchGraph['edges'][number], here);
      if (path.corners.includes(next)) continue;
      const edge = edgeFrom(graph, e, here);
      const before = path.run.at(-1);
      const straight = before === undefined || goesOn(before, edge);
      if (!straight && left === 0) continue;
      const longer = {
        corners: [...path.corners, next],
        edges: [...path.edges, e],
        run: [...path.run, edge],
      };
      walk(longer, straight ? left : left - 1);
    }
  };
  for (const start of rim) walk({ corners: [start], edges: [], run: [] }, bends);
  return paths;
};

const divisionAlong = (of: {
  readonly graph: PatchGraph;
  readonly unit: readonly number[];
  readonly path: Walk;
  readonly bends: number;
}): SeamDivision | null => {
  const { graph, unit, path, bends } = of;
  const parts = partsOf(graph, unit, new Set(path.edges));
  if (parts.length !== 2) return null;
  const [from, to] = longestRun(path.run);
  const line = seamLine(from, to);
  const run = line.from === from ? path.run : path.run.toReversed().map(reversedEdge);
  const firstIsLeft = isLeftOf({ graph, path, line, part: parts[0] as readonly number[] });
  const [first, second] = (firstIsLeft ? parts : parts.toReversed()) as [readonly number[], readonly number[]];
  return {
    kind: 'seam',
    line,
    path: pathAlong(run),
    arcs: run.flatMap(({ arc }) => arc ?? []),
    length: path.run.reduce((all, edge) => all + edgeLength(edge), 0),
    bends,
    parts: [first, second],
  };
};

/** Without corners on a straight line. */
const pathAlong = (run: readonly Edge[]): Polygon => [
  (run[0] as Edge).from,
  ...run.flatMap((edge, i) => {
    const next = run[i + 1];
    const isPassed = next !== undefined && edge.arc === null && next.arc === null && goesOn(edge, next);
    return [...edge.chords, ...(isPassed ? [] : [edge.to])];
  }),
];

/** The longest straight stretch; from end to end where all of it is arcs. */
const longestRun = (run: readonly Edge[]): readonly [Point, Point] => {
  const straight = run.reduce<[Point, Point][]>((runs, edge, i) => {
    const before = run[i - 1];
    const last = runs.at(-1);
    if (edge.arc !== null) return runs;
    if (last !== undefined && before?.arc === null && goesOn(before, edge)) last[1] = edge.to;
    else runs.push([edge.from, edge.to]);
    return runs;
  }, []);
  const whole: [Point, Point] = [(run[0] as Edge).from, (run.at(-1) as Edge).to];
  const isOneRun =
    run.some(({ arc }) => arc !== null) && run.every((edge, i) => i === 0 || goesOn(run[i - 1] as Edge, edge));
  if (straight.length === 0 || isOneRun) return whole;
  return lastSewn(straight);
};

/** Of the longest runs the one that would be sewn last: level before upright, the lowest first. */
const lastSewn = (runs: readonly (readonly [Point, Point])[]): readonly [Point, Point] => {
  const longest = Math.max(...runs.map(lengthOf)) * (1 - 1e-6);
  const lines = runs.filter((run) => lengthOf(run) >= longest).map((run) => ({ run, line: seamLine(...run) }));
  return lines.reduce((a, b) => ((b.line.lie - a.line.lie || a.line.place - b.line.place) < 0 ? b : a)).run;
};

/** The line of the longest run of a path without arcs, and whether it runs as the path is walked. */
export const lineAlong = (path: Polygon): { readonly line: SeamLine; readonly isAsWalked: boolean } => {
  const [from, to] = lastSewn(path.slice(1).map((end, i) => [path[i] as Point, end] as const));
  const line = seamLine(from, to);
  return { line, isAsWalked: line.from === from };
};

const lengthOf = ([a, b]: readonly [Point, Point]): number => Math.hypot(b.x - a.x, b.y - a.y);

/** Whether a part holds the patch on the left hand of the seam, walked as the line is. */
const isLeftOf = (of: {
  readonly graph: PatchGraph;
  readonly path: Walk;
  readonly line: SeamLine;
  readonly part: readonly number[];
}): boolean => {
  const { graph, path, line } = of;
  const onLine = path.run.findIndex(({ from, to, arc }) => arc === null && onRun(line, from) && onRun(line, to));
  const at = Math.max(0, onLine);
  // where no stretch of it is straight the line goes from end to end
  const [p, q] = onLine < 0 ? [path.run[0]?.from, path.run.at(-1)?.to] : [path.run[at]?.from, path.run[at]?.to];
  const [a, b] = [p, q] as [Point, Point];
  const withLine = (b.x - a.x) * (line.to.x - line.from.x) + (b.y - a.y) * (line.to.y - line.from.y) > 0;
  const edge = graph.edges[path.edges[at] as number] as PatchGraph['edges'][number];
  const asDrawn = edge.from === path.corners[at];
  return of.part.includes(withLine === asDrawn ? edge.left : edge.right);
};

const onRun = (line: SeamLine, p: Point): boolean => {
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  const long = Math.hypot(dx, dy);
  const along = ((p.x - line.from.x) * dx + (p.y - line.from.y) * dy) / long;
  const off = Math.abs((p.x - line.from.x) * dy - (p.y - line.from.y) * dx) / long;
  return off < 1e-5 * long && along > -1e-5 * long && along < long * (1 + 1e-5);
};
