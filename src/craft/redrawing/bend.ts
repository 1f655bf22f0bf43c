// An edge bent to an arc, or straight again, with the patches on both sides of it; and a patch divided by an arc from place to place.
import {
  arcCrossings,
  arcExtremes,
  arcWithRise,
  type CrossedEdge,
  type Edge,
  isOnArc,
  pointOnArc,
  reversedEdge,
  riseOf,
} from '#ground/arc';
import { isNear, isOnSide } from '#ground/outline';
import { at, distance, isInside, type Point } from '#ground/plane';
import { cornersIn, dividedAlike, dividedAt, edgeAlong, edgesIn, patchAlong } from './curves.ts';
import { crossingOf } from './cut.ts';
import { chordFor, type Drawn, type DrawnPatch, slackOf } from './patch.ts';

export interface Curve {
  readonly from: Point;
  readonly to: Point;
  /** How far its middle lies from the line between its ends, in squares: to the left hand of the way there, or, below zero, to the right. */
  readonly rise: number;
  /** An edge between the same places is bent; or a seam more is ruled. */
  readonly way: 'bend' | 'rule';
}

export interface CurveLaid {
  readonly patches: readonly DrawnPatch[];
  /** The new seam, and what it takes the place of. */
  readonly ruled: CrossedEdge;
  readonly out: readonly CrossedEdge[];
}

export type CurveFault =
  /** It rises more than half as far as its ends lie apart: no radius is so small. */
  | { readonly kind: 'too-round' }
  | { readonly kind: 'leaves-block' | 'crosses-edge' | 'lies-on-edge' | 'meets-corner'; readonly at: Point }
  /** The edge of the block stays straight. */
  | { readonly kind: 'edge-of-block' }
  /** No edge leads from one place to the other. */
  | { readonly kind: 'no-edge' }
  /** No patch has both places at its edge and the arc inside it. */
  | { readonly kind: 'no-patch' };

export type CurveOutcome =
  | { readonly ok: true; readonly value: CurveLaid }
  | { readonly ok: false; readonly fault: CurveFault };

/** Of a quarter of a circle, by the distance of its ends. */
export const quarterRise = (chord: number): number => (chord * (Math.SQRT2 - 1)) / 2;

/** How far an edge rises from the line between its ends. */
export const riseAlong = ({ arc }: CrossedEdge): number => (arc === null ? 0 : riseOf(arc));

/** An edge that may be bent lies between two patches. */
export interface Between {
  readonly edge: Edge;
  readonly patches: readonly [number, number];
}

/** The edges from one place to another, each as it is walked there. */
export const edgesBetween = (drawn: Drawn, from: Point, to: Point): readonly Between[] => {
  const slack = slackOf(drawn.grid);
  const near = 2 * slack;
  const there = drawn.patches.flatMap((patch, index) =>
    edgesIn(dividedAt(patch, [from, to], slack)).flatMap((edge) => {
      if (isNear(edge.from, from, near) && isNear(edge.to, to, near)) return [{ index, edge, isBack: false }];
      return isNear(edge.from, to, near) && isNear(edge.to, from, near)
        ? [{ index, edge: reversedEdge(edge), isBack: true }]
        : [];
    }),
  );
  return there
    .filter(({ isBack }) => !isBack)
    .flatMap(({ index, edge }) => {
      const other = there.find((one) => one.isBack && isNear(middleOf(one.edge), middleOf(edge), chordFor(slack)));
      return other === undefined ? [] : [{ edge, patches: [index, other.index] as const }];
    });
};

/** The whole edge through a place that is no corner: between corners of the drawing. Null where none is there. */
export const edgeThrough = (drawn: Drawn, place: Point): Edge | null => {
  const slack = slackOf(drawn.grid);
  const corners = drawn.patches.flatMap(cornersIn);
  if (corners.some((p) => isNear(p, place, 2 * slack))) return null;
  const parts = drawn.patches.flatMap((patch) => edgesIn(dividedAt(patch, corners, slack)));
  return parts.find((edge) => isOnEdge(place, edge, 2 * slack)) ?? null;
};

/** What the drawing is with a curve, or why it cannot be laid. */
export const laidCurve = (drawn: Drawn, curve: Curve): CurveOutcome => {
  const { from, to, rise, way } = curve;
  const slack = slackOf(drawn.grid);
  const chord = distance(from, to);
  if (Math.abs(rise) > chord / 2 + slack) return faulty({ kind: 'too-round' });
  const arc = Math.abs(rise) < 4 * slack ? null : arcWithRise({ from, to, rise });
  const edge = edgeAlong({ from, to, arc }, slack);
  const outside = (arc === null ? [] : arcExtremes(arc)).find((p) => isOutside(p, drawn.grid, slack));
  if (outside !== undefined) return faulty({ kind: 'leaves-block', at: outside });
  return way === 'bend' ? bent(drawn, { edge, rise, slack }) : ruled(drawn, { edge, slack });
};

interface NewEdge {
  readonly edge: Edge;
  readonly slack: number;
}

const bent = (drawn: Drawn, { edge, rise, slack }: NewEdge & { readonly rise: number }): CurveOutcome => {
  const { from, to } = edge;
  const found = edgesBetween(drawn, from, to);
  const far = ({ edge: own }: Between): number => Math.abs(riseAlong(own) - rise);
  const [was] = found.toSorted((a, b) => far(a) - far(b));
  if (was === undefined) return faulty(whyNoEdge(drawn, { edge, slack }));
  const divided = drawn.patches.map((patch) => dividedAt(patch, [from, to], slack));
  const old = middleOf(was.edge);
  const isOld = (one: CrossedEdge): boolean =>
    isNear(middleOf(one), old, chordFor(slack)) && isBetween(one, edge, slack);
  const met = metOn(
    edge,
    divided.flatMap(edgesIn).filter((one) => !isOld(one)),
    slack,
  );
  if (met !== null) return faulty(met);
  const own = was.patches.map((index) => divided[index] as DrawnPatch);
  const middle = middleOf(edge);
  const isWithin = isNear(middle, old, chordFor(slack)) || own.some(({ points }) => isInside(middle, points));
  if (!isWithin) return faulty({ kind: 'no-patch' });
  const patches = divided.map((patch, index) => {
    if (!was.patches.includes(index)) return drawn.patches[index] as DrawnPatch;
    const edges = edgesIn(patch).map((one) => {
      if (!isOld(one)) return one;
      return isNear(one.from, from, 2 * slack) ? edge : reversedEdge(edge);
    });
    return patchAlong(edges, patch.tone);
  });
  return { ok: true, value: { patches: dividedAlike(patches, slack), ruled: edge, out: [was.edge] } };
};

const whyNoEdge = (drawn: Drawn, { edge, slack }: NewEdge): CurveFault => {
  const { from, to } = edge;
  const near = 2 * slack;
  const sides = drawn.patches
    .flatMap((patch) => edgesIn(dividedAt(patch, [from, to], slack)))
    .filter((one) => isBetween(one, edge, slack));
  const [side] = sides;
  if (side === undefined) return { kind: 'no-edge' };
  const corner = drawn.patches
    .flatMap(cornersIn)
    .find((p) => isOnEdge(p, side, near) && !isNear(p, from, near) && !isNear(p, to, near));
  return corner === undefined ? { kind: 'edge-of-block' } : { kind: 'meets-corner', at: corner };
};

const ruled = (drawn: Drawn, { edge, slack }: NewEdge): CurveOutcome => {
  const { from, to } = edge;
  const divided = drawn.patches.map((patch) => dividedAt(patch, [from, to], slack));
  const met = metOn(edge, divided.flatMap(edgesIn), slack);
  if (met !== null) return faulty(met);
  const middle = middleOf(edge);
  const index = divided.findIndex(({ points }) => isInside(middle, points));
  const patch = divided[index];
  const edges = patch === undefined ? [] : edgesIn(patch);
  const [first, last] = [from, to].map((p) => edges.findIndex((one) => isNear(one.from, p, 2 * slack))) as [
    number,
    number,
  ];
  if (patch === undefined || first < 0 || last < 0) return faulty({ kind: 'no-patch' });
  const parts = [
    patchAlong([...walk(edges, first, last), reversedEdge(edge)], patch.tone),
    patchAlong([...walk(edges, last, first), edge], patch.tone),
  ];
  const patches = drawn.patches.flatMap((one, i) => (i === index ? parts : [one]));
  return { ok: true, value: { patches: dividedAlike(patches, slack), ruled: edge, out: [] } };
};

const faulty = (fault: CurveFault): CurveOutcome => ({ ok: false, fault });

/** Edges of a ring from the one to before the other, onwards. */
const walk = (edges: readonly Edge[], from: number, to: number): readonly Edge[] =>
  from < to ? edges.slice(from, to) : [...edges.slice(from), ...edges.slice(0, to)];

const middleOf = ({ from, to, arc }: CrossedEdge): Point =>
  arc === null ? at((from.x + to.x) / 2, (from.y + to.y) / 2) : pointOnArc(arc, 0.5);

const isOutside = ({ x, y }: Point, [across, down]: Drawn['grid'], slack: number): boolean =>
  x < -slack || y < -slack || x > across + slack || y > down + slack;

const isBetween = (a: CrossedEdge, b: CrossedEdge, slack: number): boolean => {
  const near = 2 * slack;
  return (
    (isNear(a.from, b.from, near) && isNear(a.to, b.to, near)) ||
    (isNear(a.from, b.to, near) && isNear(a.to, b.from, near))
  );
};

const isOnEdge = (p: Point, { from, to, arc }: CrossedEdge, slack: number): boolean =>
  arc === null ? isOnSide(p, [from, to], slack) : isOnArc(p, arc, slack);

/** The first place on its way, between its ends, at which an edge crosses or touches others, or lies on one. */
const metOn = (edge: CrossedEdge, others: readonly CrossedEdge[], slack: number): CurveFault | null => {
  const middle = middleOf(edge);
  const aside =
    edge.arc === null ? at((edge.from.x + middle.x) / 2, (edge.from.y + middle.y) / 2) : pointOnArc(edge.arc, 0.25);
  if (others.some((other) => isOnEdge(middle, other, slack) && isOnEdge(aside, other, slack)))
    return { kind: 'lies-on-edge', at: middle };
  // a curve may leave its end along another edge: there they lie within the slack of each other for a while
  const near = Math.sqrt(slack * distance(edge.from, edge.to));
  const met = others
    .flatMap((other) => [
      ...crossings(edge, other, slack),
      ...[other.from, other.to].filter((p) => isOnEdge(p, edge, slack)),
    ])
    .filter((p) => !isNear(p, edge.from, near) && !isNear(p, edge.to, near))
    .toSorted((a, b) => distance(edge.from, a) - distance(edge.from, b));
  return met[0] === undefined ? null : { kind: 'crosses-edge', at: met[0] };
};

const crossings = (a: CrossedEdge, b: CrossedEdge, slack: number): readonly Point[] =>
  a.arc === null && b.arc === null ? crossingOf([a.from, a.to], [b.from, b.to]) : arcCrossings(a, b, slack);
