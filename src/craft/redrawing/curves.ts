// Patches with arcs among their edges: made of edges, divided at places on them, mapped, and found again in what was cut or joined.
import {
  type Arc,
  arcThrough,
  type CrossedEdge,
  chordPoints,
  type Edge,
  edgesOf,
  isOnArc,
  type Outline,
  outlineAlong,
  outlineArea,
  reversedArc,
  reversedEdge,
  sweepOf,
} from '#ground/arc';
import { clockwise, isNear, splitAt } from '#ground/outline';
import type { Point, Polygon } from '#ground/plane';
import { chordFor, type Drawn, type DrawnPatch, slackOf } from './patch.ts';

/** The sides of a patch in walking order: straight, or along an arc. */
export const edgesIn = ({ points, arcs = [] }: DrawnPatch): readonly Edge[] => edgesOf({ points, arcs });

/** The places where its sides meet: none of those where chords do. */
export const cornersIn = (patch: DrawnPatch): readonly Point[] => edgesIn(patch).map(({ from }) => from);

/** From place to place, straight or along an arc. */
export const edgeAlong = ({ from, to, arc }: CrossedEdge, slack: number): Edge => ({
  from,
  to,
  arc,
  chords: arc === null ? [] : chordPoints(arc, chordFor(slack)),
});

/** A patch with these sides, clockwise. */
export const patchAlong = (edges: readonly Edge[], tone: string): DrawnPatch => {
  const outline = outlineAlong(edges);
  const turned = outlineArea(outline) < 0 ? outlineAlong(edges.toReversed().map(reversedEdge)) : outline;
  return patchIn(turned, tone);
};

export const patchIn = ({ points, arcs }: Outline, tone: string): DrawnPatch => ({
  points,
  tone,
  ...(arcs.length > 0 ? { arcs } : {}),
});

/** A patch as a document lists it, either way round. */
export interface ListedPatch {
  readonly tone: string;
  readonly corners: readonly Point[];
  /** Each from the corner of that index to the next, or back to the first. */
  readonly arcs: readonly { readonly edge: number; readonly centre: Point; readonly clockwise: boolean }[];
}

export const drawnAs = (grid: Drawn['grid'], listed: readonly ListedPatch[]): Drawn => {
  const slack = slackOf(grid);
  const patches = listed.map(({ tone, corners, arcs }) => {
    const edges = corners.map((from, i): Edge => {
      const to = corners[(i + 1) % corners.length] as Point;
      const bent = isNear(from, to, slack) ? undefined : arcs.find(({ edge }) => edge === i);
      return edgeAlong({ from, to, arc: bent === undefined ? null : arcThrough({ ...bent, from, to }) }, slack);
    });
    return patchAlong(edges, tone);
  });
  return { grid, patches: dividedAlike(patches, slack) };
};

/** Moved, turned or mirrored. */
export const mapped = (patch: DrawnPatch, to: (p: Point) => Point, kind: 'turned' | 'mirrored'): DrawnPatch => {
  const { points, arcs, tone } = patch;
  if (arcs === undefined) return { points: clockwise(points.map(to)), tone };
  const placed = arcs.map((arc): Arc => {
    const own = { from: to(arc.from), to: to(arc.to), centre: to(arc.centre), clockwise: arc.clockwise };
    return kind === 'turned' ? own : reversedArc({ ...own, clockwise: !arc.clockwise });
  });
  const walked = points.map(to);
  return { points: kind === 'turned' ? walked : walked.toReversed(), tone, arcs: placed };
};

/** The same outline with as few chords as do where places within `slack` are one. */
export const chordedFor = ({ points, arcs, tone }: DrawnPatch, slack: number): DrawnPatch =>
  arcs === undefined
    ? { points, tone }
    : patchAlong(
        edgesIn({ points, arcs, tone }).map((edge) => edgeAlong(edge, slack)),
        tone,
      );

const keyOf = ({ x, y }: Point): string => `${x},${y}`;

/**
 * An outline that was cut or joined, with those arcs that it still has whole.
 *
 * @param edges before, of all that it was cut from
 * @returns null where it has only a part of the chords of one
 */
export const arcsKept = (points: Polygon, edges: readonly Edge[]): Outline | null => {
  const places = new Map(points.map((p, i) => [keyOf(p), i]));
  const arcs: Arc[] = [];
  const known = new Set<string>();
  const bent = edges.filter(({ arc }) => arc !== null);
  for (const { from, to, arc, chords } of bent) {
    const start = places.get(keyOf(from));
    const run = [from, ...chords, to].map(keyOf);
    const isWhole =
      start !== undefined && run.every((key, i) => keyOf(points[(start + i) % points.length] as Point) === key);
    if (!isWhole || arc === null) continue;
    arcs.push(arc);
    for (const key of run) known.add(key);
  }
  const isBroken = bent.some(({ chords }) => chords.some((p) => places.has(keyOf(p)) && !known.has(keyOf(p))));
  return isBroken ? null : { points, arcs };
};

/** The parts of an edge between the places on it, as it is walked. */
const partsOf = (edge: Edge, places: readonly Point[], slack: number): readonly Edge[] => {
  const { from, to, arc } = edge;
  if (arc === null) {
    const sides = splitAt([from, to], places, slack);
    return sides.length === 1 ? [edge] : sides.map(([a, b]) => ({ from: a, to: b, arc: null, chords: [] }));
  }
  const turnTo = (p: Point): number => sweepOf({ ...arc, to: p });
  const inner = places
    .filter((p) => isOnArc(p, arc, 2 * slack) && !isNear(p, from, 2 * slack) && !isNear(p, to, 2 * slack))
    .toSorted((a, b) => turnTo(a) - turnTo(b))
    .filter((p, i, all) => !isNear(p, all[i - 1] ?? from, 2 * slack));
  if (inner.length === 0) return [edge];
  const stops = [from, ...inner, to];
  return stops.slice(1).map((end, i) => {
    const begin = stops[i] as Point;
    return edgeAlong({ from: begin, to: end, arc: arcThrough({ ...arc, from: begin, to: end }) }, slack);
  });
};

/** The same patch with corners at these places on its edges; itself where there are none. */
export const dividedAt = (patch: DrawnPatch, places: readonly Point[], slack: number): DrawnPatch => {
  const edges = edgesIn(patch);
  const parts = edges.flatMap((edge) => partsOf(edge, places, slack));
  return parts.length === edges.length ? patch : patchIn(outlineAlong(parts), patch.tone);
};

/** Every arc ends at each corner of other patches on it: patches on both sides of a curved seam have the same chords. */
export const dividedAlike = (patches: readonly DrawnPatch[], slack: number): readonly DrawnPatch[] => {
  if (patches.every(({ arcs }) => arcs === undefined)) return patches;
  const corners = patches.flatMap(cornersIn);
  return patches.map((patch) => {
    const onArcs = corners.filter((p) => patch.arcs?.some((arc) => isOnArc(p, arc, 2 * slack)));
    return onArcs.length === 0 ? patch : dividedAt(patch, onArcs, slack);
  });
};
