// A ring of units round a centre, as in a square with four rectangles turning about it: no straight seam
// divides it, but a first seam sewn part-way and closed at the end does.

import { type SeamLine, seamLine } from '#craft/chords';
import type { Point } from '#ground/plane';
import type { RingDivision } from './division.ts';
import { farEnd, type GraphEdge, goesStraight, type PatchGraph, partsOf, unitEdges } from './graph.ts';

interface Segment {
  /** Corners from the rim to the corner where it ends on another segment. */
  readonly walk: readonly number[];
  readonly edges: ReadonlySet<number>;
}

/** Every ring of a unit, in reading order of their first arms. */
export const ringsOf = (graph: PatchGraph, unit: readonly number[]): readonly RingDivision[] => {
  const { inner, rim } = unitEdges(graph, new Set(unit));
  const segments = segmentsFromRim(graph, inner, rim);
  const found = new Map<string, RingDivision>();
  for (const start of segments) {
    const cycle = cycleFrom(start, segments);
    const ring = cycle && ringAlong(graph, unit, cycle);
    if (ring) found.set(ring.parts.join(), ring);
  }
  return [...found.values()];
};

/** Straight runs of inner edges that begin on the rim and end inside the unit. */
const segmentsFromRim = (graph: PatchGraph, inner: ReadonlySet<number>, rim: ReadonlySet<number>): readonly Segment[] =>
  [...rim].flatMap((start) =>
    (graph.edgesAt[start] as readonly number[]).flatMap((first): readonly Segment[] => {
      if (!isStraightIn(graph, inner, first)) return [];
      const walk = [start, farEnd(graph.edges[first] as GraphEdge, start)];
      const edges = new Set([first]);
      for (;;) {
        const [before, here] = [walk.at(-2) as number, walk.at(-1) as number];
        if (rim.has(here)) return [];
        const on = (graph.edgesAt[here] as readonly number[]).find(
          (e) =>
            isStraightIn(graph, inner, e) &&
            goesStraight(graph, [before, here], [here, farEnd(graph.edges[e] as GraphEdge, here)]),
        );
        if (on === undefined) return [{ walk, edges }];
        edges.add(on);
        walk.push(farEnd(graph.edges[on] as GraphEdge, here));
      }
    }),
  );

const isStraightIn = (graph: PatchGraph, inner: ReadonlySet<number>, edge: number): boolean =>
  inner.has(edge) && graph.edges[edge]?.bow === null;

/** Follows every segment to the one it ends on, back to the start; three or more make a ring. */
const cycleFrom = (start: Segment, segments: readonly Segment[]): readonly Segment[] | null => {
  const cycle = [start];
  for (;;) {
    const head = (cycle.at(-1) as Segment).walk.at(-1) as number;
    const next = segments.find((s) => s.walk.slice(1, -1).includes(head));
    if (!next) return null;
    if (next === start) return cycle.length >= 3 ? cycle : null;
    if (cycle.includes(next)) return null;
    cycle.push(next);
  }
};

const ringAlong = (graph: PatchGraph, unit: readonly number[], cycle: readonly Segment[]): RingDivision | null => {
  const walls = new Set(cycle.flatMap((s) => [...s.edges]));
  const parts = partsOf(graph, unit, walls);
  if (parts.length !== cycle.length + 1) return null;
  const partOf = new Map(parts.flatMap((part, i) => part.map((patch) => [patch, i] as const)));
  const found = cycle.map((segment) => armAlong(graph, segment, partOf));
  if (found.some((arm) => arm === null)) return null;
  const arms = found as readonly FoundArm[];
  const centres = new Set(parts.map((_, i) => i));
  for (const arm of arms) centres.delete(arm.part);
  if (centres.size !== 1) return null;
  const [centre] = [...centres] as [number];
  if (!arms.every((arm) => arm.lengths.has(centre) && arm.lengths.size === 2)) return null;
  const order = inSewingOrder(arms, parts);
  return {
    kind: 'ring',
    parts: [parts[centre] as readonly number[], ...order.map((arm) => parts[arm.part] as readonly number[])],
    seams: order.map(({ line, lengths }) => ({
      line,
      onCentre: lengths.get(centre) as number,
      onNeighbour: [...lengths].reduce((all, [part, long]) => (part === centre ? all : all + long), 0),
    })),
  };
};

interface FoundArm {
  readonly part: number;
  readonly line: SeamLine;
  /** Length of the seam by the part on its other side. */
  readonly lengths: ReadonlyMap<number, number>;
}

/** One part lies along the whole of one side of the segment: that is the arm. */
const armAlong = (graph: PatchGraph, segment: Segment, partOf: ReadonlyMap<number, number>): FoundArm | null => {
  const sides = [new Map<number, number>(), new Map<number, number>()] as const;
  segment.walk.slice(1).forEach((to, i) => {
    const from = segment.walk[i] as number;
    const edge = (graph.edgesAt[from] as readonly number[])
      .map((e) => graph.edges[e] as GraphEdge)
      .find((e) => e.bow === null && farEnd(e, from) === to) as GraphEdge;
    const [p, q] = [graph.corners[from], graph.corners[to]] as [Point, Point];
    const long = Math.hypot(q.x - p.x, q.y - p.y);
    const hands = edge.from === from ? [edge.left, edge.right] : [edge.right, edge.left];
    hands.forEach((patch, side) => {
      const part = partOf.get(patch) as number;
      const lengths = sides[side] as Map<number, number>;
      lengths.set(part, (lengths.get(part) ?? 0) + long);
    });
  });
  const whole = sides.find((lengths) => lengths.size === 1);
  const other = sides.find((lengths) => lengths !== whole);
  if (!whole || !other) return null;
  const ends = [segment.walk[0], segment.walk.at(-1)].map((c) => graph.corners[c as number] as Point) as [Point, Point];
  return { part: [...whole.keys()][0] as number, line: seamLine(ends[0], ends[1]), lengths: other };
};

/** From the arm with the first patch on, each arm after the one that its seam runs over. */
const inSewingOrder = (arms: readonly FoundArm[], parts: readonly (readonly number[])[]): readonly FoundArm[] => {
  const first = arms.reduce((a, b) => ((parts[b.part]?.[0] as number) < (parts[a.part]?.[0] as number) ? b : a));
  const order = [first];
  while (order.length < arms.length) {
    const before = (order.at(-1) as FoundArm).part;
    order.push(arms.find((arm) => arm.lengths.has(before) && arm.part !== before && !order.includes(arm)) as FoundArm);
  }
  return order;
};
