// The drawing as corners and the straight edges between them, split wherever a corner lies on a side:
// who lies on either hand of every edge. For units that no plain chord divides.
import { at, distance, offLine, type Point, type Polygon, withoutStraightCorners } from '#ground/plane';

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
}

export const graphOf = (outlines: readonly Polygon[], slack: number): PatchGraph => {
  const { corners, indexOf } = cornersOf(outlines, slack);
  const edges = new Map<number, { from: number; to: number; right: number; left: number }>();
  outlines.forEach((outline, patch) => {
    outline.forEach((a, i) => {
      const b = outline[(i + 1) % outline.length] as Point;
      const stops = [indexOf(a), ...between({ a, b, corners, slack }), indexOf(b)];
      for (let k = 0; k + 1 < stops.length; k++) {
        const [m, n] = [stops[k] as number, stops[k + 1] as number];
        const key = Math.min(m, n) * corners.length + Math.max(m, n);
        const edge = edges.get(key) ?? { from: Math.min(m, n), to: Math.max(m, n), right: -1, left: -1 };
        // outlines run clockwise: the patch lies on the right hand of its own walk
        if (m < n) edge.right = patch;
        else edge.left = patch;
        edges.set(key, edge);
      }
    });
  });
  const all = [...edges.values()];
  const edgesAt: number[][] = corners.map(() => []);
  all.forEach((edge, i) => {
    edgesAt[edge.from]?.push(i);
    edgesAt[edge.to]?.push(i);
  });
  return { corners, edges: all, edgesAt };
};

export const farEnd = (edge: GraphEdge, corner: number): number => (edge.from === corner ? edge.to : edge.from);

/** Whether b goes on in the direction of a: both given as steps from corner to corner. */
export const goesStraight = (
  graph: PatchGraph,
  a: readonly [number, number],
  b: readonly [number, number],
): boolean => {
  const [p, q, r] = [graph.corners[a[0]], graph.corners[a[1]], graph.corners[b[1]]] as [Point, Point, Point];
  const along = (q.x - p.x) * (r.x - q.x) + (q.y - p.y) * (r.y - q.y);
  return along > 0 && Math.abs(offLine(p, r, q)) < 1e-5 * distance(p, r);
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
export const outlineOfUnit = (graph: PatchGraph, unit: ReadonlySet<number>, slack: number): Polygon => {
  const next = new Map<number, number>();
  for (const edge of graph.edges) {
    const [right, left] = [unit.has(edge.right), unit.has(edge.left)];
    if (right && !left) next.set(edge.from, edge.to);
    if (left && !right) next.set(edge.to, edge.from);
  }
  const start = [...next.keys()].reduce((a, b) => (isUpperLeft(graph, b, a) ? b : a));
  const walk = [start];
  for (let c = next.get(start); c !== undefined && c !== start && walk.length <= next.size; c = next.get(c))
    walk.push(c);
  return withoutStraightCorners(
    walk.map((c) => graph.corners[c] as Point),
    slack,
  );
};

const isUpperLeft = (graph: PatchGraph, a: number, b: number): boolean => {
  const [p, q] = [graph.corners[a], graph.corners[b]] as [Point, Point];
  return p.y < q.y || (p.y === q.y && p.x < q.x);
};

const cornersOf = (outlines: readonly Polygon[], slack: number) => {
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
  for (const outline of outlines) outline.forEach(indexOf);
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
