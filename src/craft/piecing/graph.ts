// The drawing as corners and the edges between them, straight or arcs, split wherever a corner lies on a side:
// who lies on either hand of every edge. For units that no plain chord divides.
import {
  type Arc,
  type Edge,
  edgeDirection,
  edgesOf,
  type Outline,
  pointOnArc,
  pointsBetweenSides,
  reversedEdge,
} from '#ground/arc';
import { at, distance, dot, offLine, type Point, type Polygon } from '#ground/plane';

export interface PatchGraph {
  readonly corners: readonly Point[];
  readonly edges: readonly GraphEdge[];
  readonly edgesAt: readonly (readonly number[])[];
}

/** An edge from the corner of lower index to the other; −1 for no patch. */
export interface GraphEdge {
  readonly from: number;
  readonly to: number;
  /** Patch on the right hand when walking from `from` to `to`, and on the left. */
  readonly right: number;
  readonly left: number;
  /** Walked from `from` to `to`; null where it is straight. */
  readonly bow: Pick<Edge, 'arc' | 'chords'> | null;
}

/** @param arcs of each outline; none where it has no entry. They are divided already where corners lie on them. */
export const graphOf = (
  outlines: readonly Polygon[],
  slack: number,
  arcs: readonly (readonly Arc[])[] = [],
): PatchGraph => {
  const edged = outlines.map((points, i) => edgesOf({ points, arcs: arcs[i] ?? [] }));
  const { corners, indexOf } = cornersOf(edged, slack);
  const edges = new Map<number, Growing[]>();
  const edgeAt = (ends: readonly [number, number], bow: GraphEdge['bow']): Growing => {
    const [from, to] = ends[0] < ends[1] ? ends : [ends[1], ends[0]];
    const key = from * corners.length + to;
    const known = edges.get(key) ?? [];
    const found = known.find((edge) => isSameBow(edge.bow, bow, slack));
    if (found !== undefined) return found;
    const edge: Growing = { from, to, right: -1, left: -1, bow };
    edges.set(key, [...known, edge]);
    return edge;
  };
  edged.forEach((sides, patch) => {
    // outlines run clockwise: the patch lies on the right hand of its own walk
    const lay = (ends: readonly [number, number], bow: GraphEdge['bow']): void => {
      const edge = edgeAt(ends, bow);
      if (ends[0] < ends[1]) edge.right = patch;
      else edge.left = patch;
    };
    for (const side of sides) {
      const [m, n] = [indexOf(side.from), indexOf(side.to)];
      if (side.arc === null) {
        const stops = [m, ...between({ a: side.from, b: side.to, corners, slack }), n];
        for (let k = 0; k + 1 < stops.length; k++) lay([stops[k] as number, stops[k + 1] as number], null);
      } else lay([m, n], m < n ? side : reversedEdge(side));
    }
  });
  const all = [...edges.values()].flat();
  const edgesAt: number[][] = corners.map(() => []);
  all.forEach((edge, i) => {
    edgesAt[edge.from]?.push(i);
    edgesAt[edge.to]?.push(i);
  });
  return { corners, edges: all, edgesAt };
};

type Growing = { -readonly [K in keyof GraphEdge]: GraphEdge[K] };

/** Two edges between the same corners are one where both are straight, or both arcs with one middle. */
const isSameBow = (a: GraphEdge['bow'], b: GraphEdge['bow'], slack: number): boolean => {
  const [one, two] = [a?.arc ?? null, b?.arc ?? null];
  if (one === null || two === null) return one === two;
  return distance(pointOnArc(one, 0.5), pointOnArc(two, 0.5)) < 8 * slack;
};

export const farEnd = (edge: GraphEdge, corner: number): number => (edge.from === corner ? edge.to : edge.from);

/** Whether b goes on in the direction of a: both given as steps from corner to corner. */
export const goesStraight = (
  graph: PatchGraph,
  a: readonly [number, number],
  b: readonly [number, number],
): boolean => {
  return isStraightOn([graph.corners[a[0]], graph.corners[a[1]], graph.corners[b[1]]] as [Point, Point, Point]);
};

const isStraightOn = ([p, q, r]: readonly [Point, Point, Point]): boolean => {
  const along = (q.x - p.x) * (r.x - q.x) + (q.y - p.y) * (r.y - q.y);
  return along > 0 && Math.abs(offLine(p, r, q)) < 1e-5 * distance(p, r);
};

/** An edge as it is walked from one of its ends. */
export const edgeFrom = (graph: PatchGraph, index: number, corner: number): Edge => {
  const { from, to, bow } = graph.edges[index] as GraphEdge;
  const [a, b] = [graph.corners[from], graph.corners[to]] as [Point, Point];
  const edge: Edge = { from: a, to: b, arc: bow?.arc ?? null, chords: bow?.chords ?? [] };
  return corner === from ? edge : reversedEdge(edge);
};

/** A seam over arcs bends by less than this where it is sewn in one run, in radians: two degrees, our own figure. */
const smooth = 0.035;

/** Whether a seam goes on from one edge to the next without a corner: straight on, or into and out of arcs. */
export const goesOn = (a: Edge, b: Edge): boolean => {
  if (a.arc === null && b.arc === null) return isStraightOn([a.from, a.to, b.to]);
  const [out, into] = [edgeDirection(a, 'to'), edgeDirection(b, 'from')];
  return dot(out, into) > Math.cos(smooth);
};

/** Edges with a patch of the unit on both hands, and corners on the unit's rim. */
export const unitEdges = (
  graph: PatchGraph,
  unit: ReadonlySet<number>,
): { readonly inner: ReadonlySet<number>; readonly rim: ReadonlySet<number>; readonly rimEdges: readonly number[] } => {
  const inner = new Set<number>();
  const rim = new Set<number>();
  const rimEdges: number[] = [];
  graph.edges.forEach((edge, i) => {
    const sides = Number(unit.has(edge.left)) + Number(unit.has(edge.right));
    if (sides === 2) inner.add(i);
    if (sides !== 1) return;
    rim.add(edge.from).add(edge.to);
    rimEdges.push(i);
  });
  return { inner, rim, rimEdges };
};

/** The unit's patches in connected parts, when the given edges are walls; each in rising order, by their first patch. */
export const partsOf = (
  graph: PatchGraph,
  unit: readonly number[],
  walls: ReadonlySet<number>,
): readonly (readonly number[])[] => {
  const inside = new Set(unit);
  const neighbours = new Map<number, number[]>(unit.map((patch) => [patch, []]));
  graph.edges.forEach((edge, i) => {
    if (walls.has(i) || !inside.has(edge.left) || !inside.has(edge.right)) return;
    neighbours.get(edge.left)?.push(edge.right);
    neighbours.get(edge.right)?.push(edge.left);
  });
  const seen = new Set<number>();
  const parts: number[][] = [];
  for (const start of unit) {
    if (seen.has(start)) continue;
    seen.add(start);
    const part = [start];
    for (let i = 0; i < part.length; i++) {
      for (const next of neighbours.get(part[i] as number) as number[]) {
        if (seen.has(next)) continue;
        seen.add(next);
        part.push(next);
      }
    }
    parts.push(part.sort((a, b) => a - b));
  }
  return parts;
};

/** The outline of a connected unit, clockwise, without corners on straight sides. */
export const outlineOfUnit = (graph: PatchGraph, unit: ReadonlySet<number>, slack: number): Outline => {
  const next = new Map<number, number>();
  graph.edges.forEach((edge, index) => {
    const [right, left] = [unit.has(edge.right), unit.has(edge.left)];
    if (right && !left) next.set(edge.from, index);
    if (left && !right) next.set(edge.to, index);
  });
  const start = [...next.keys()].reduce((a, b) => (isUpperLeft(graph, b, a) ? b : a));
  const edges: Edge[] = [];
  let here = start;
  for (let index = next.get(here); index !== undefined && edges.length <= next.size; index = next.get(here)) {
    edges.push(edgeFrom(graph, index, here));
    here = farEnd(graph.edges[index] as GraphEdge, here);
    if (here === start) break;
  }
  const arcs = edges.flatMap(({ arc }) => arc ?? []);
  const points = edges.flatMap(({ from, chords }) => [from, ...chords]);
  return { points: pointsBetweenSides({ points, arcs }, slack), arcs };
};

const isUpperLeft = (graph: PatchGraph, a: number, b: number): boolean => {
  const [p, q] = [graph.corners[a], graph.corners[b]] as [Point, Point];
  return p.y < q.y || (p.y === q.y && p.x < q.x);
};

const cornersOf = (outlines: readonly (readonly Edge[])[], slack: number) => {
  const corners: Point[] = [];
  const known = new Map<string, number>();
  const cell = 4 * slack;
  const indexOf = (p: Point): number => {
    const [column, row] = [Math.floor(p.x / cell), Math.floor(p.y / cell)];
    for (let i = column - 1; i <= column + 1; i++) {
      for (let j = row - 1; j <= row + 1; j++) {
        const index = known.get(`${i},${j}`);
        const q = index === undefined ? undefined : corners[index];
        if (index !== undefined && q && Math.abs(q.x - p.x) < slack && Math.abs(q.y - p.y) < slack) return index;
      }
    }
    known.set(`${column},${row}`, corners.length);
    corners.push(at(p.x, p.y));
    return corners.length - 1;
  };
  for (const outline of outlines) for (const { from } of outline) indexOf(from);
  return { corners, indexOf };
};

/** Corners strictly inside the side a→b, in walking order. */
const between = (side: {
  readonly a: Point;
  readonly b: Point;
  readonly corners: readonly Point[];
  readonly slack: number;
}): readonly number[] => {
  const { a, b, slack } = side;
  const long = distance(a, b);
  const found: { readonly index: number; readonly along: number }[] = [];
  side.corners.forEach((p, index) => {
    const along = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long;
    if (along < slack || along > long - slack) return;
    if (Math.abs(offLine(a, b, p)) < 2 * slack) found.push({ index, along });
  });
  return found.sort((m, n) => m.along - n.along).map(({ index }) => index);
};
