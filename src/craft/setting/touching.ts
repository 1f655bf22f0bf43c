// Which outlines lie against each other along an edge? Corners that only touch do not count.
import type { Point, Polygon } from '#ground/plane';

interface Edge {
  readonly outline: number;
  /** Direction of the edge's line, from 0 to π. */
  readonly angle: number;
  /** Distance of that line from the origin, with its sign. */
  readonly offset: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Pairs of outlines that share a stretch of an edge, each pair once, the lower index first, in order.
 *
 * @param slack lines nearer than this are one, and stretches must be longer; same unit as the outlines
 */
export const touchingPairs = (outlines: readonly Polygon[], slack: number): readonly (readonly [number, number])[] => {
  const edges = outlines.flatMap((points, outline) =>
    points.map((a, i) => edgeOf(outline, a, points[(i + 1) % points.length] as Point)),
  );
  const pairs = new Map<string, readonly [number, number]>();
  for (const line of linesOf(edges, slack)) {
    const open: Edge[] = [];
    for (const edge of line.toSorted((a, b) => a.from - b.from)) {
      const still = open.filter(({ to }) => to > edge.from + slack);
      open.splice(0, open.length, ...still, edge);
      for (const { outline } of still) {
        if (outline === edge.outline) continue;
        const pair = [Math.min(outline, edge.outline), Math.max(outline, edge.outline)] as const;
        pairs.set(pair.join(), pair);
      }
    }
  }
  return [...pairs.values()].toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
};

const edgeOf = (outline: number, a: Point, b: Point): Edge => {
  const raw = Math.atan2(b.y - a.y, b.x - a.x);
  const halfTurn = ((raw % Math.PI) + Math.PI) % Math.PI;
  const angle = Math.PI - halfTurn < 1e-6 ? 0 : halfTurn;
  const along = (p: Point): number => p.x * Math.cos(angle) + p.y * Math.sin(angle);
  const offset = a.y * Math.cos(angle) - a.x * Math.sin(angle);
  return { outline, angle, offset, from: Math.min(along(a), along(b)), to: Math.max(along(a), along(b)) };
};

/** Edges of one line together. The shift keeps common angles away from the places where rounding changes. */
const linesOf = (edges: readonly Edge[], slack: number): readonly (readonly Edge[])[] => {
  const byAngle = new Map<number, Edge[]>();
  for (const edge of edges) {
    const key = Math.floor(edge.angle * 1e4 + 0.3183);
    const known = byAngle.get(key);
    if (known) known.push(edge);
    else byAngle.set(key, [edge]);
  }
  const lines: Edge[][] = [];
  for (const parallel of byAngle.values()) {
    let last = Number.NEGATIVE_INFINITY;
    for (const edge of parallel.toSorted((a, b) => a.offset - b.offset)) {
      if (edge.offset - last > slack) lines.push([]);
      lines.at(-1)?.push(edge);
      last = edge.offset;
    }
  }
  return lines;
};
