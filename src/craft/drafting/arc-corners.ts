// Outlines whose edges may be arcs, made ready to be told from each other: an arc is divided at every corner that lies on it,
// so that patches on both sides of a curved seam have the same arcs, and the same chords.
import { type Arc, arcThrough, bowArea, chordPoints, isOnArc, reversedArc, sweepOf } from '#ground/arc';
import { distance, type Point, signedArea } from '#ground/plane';

/** Corners with the arcs that lead from one to the next. */
export interface Cornered {
  readonly corners: readonly Point[];
  readonly arcs: readonly Arc[];
}

export const clockwiseCorners = ({ corners, arcs }: Cornered): Cornered => {
  const area = signedArea(corners) + arcs.reduce((all, arc) => all + bowArea(arc), 0);
  return area < 0 ? { corners: corners.toReversed(), arcs: arcs.map(reversedArc) } : { corners, arcs };
};

/**
 * The parts of an arc between the corners on it, as it is walked.
 *
 * @param of.corners of the whole drawing, nearly meeting ones already made one
 */
export const arcDivider = (of: {
  readonly corners: readonly Point[];
  readonly slack: number;
}): ((arc: Arc) => readonly Arc[]) => {
  const corners = [...new Set(of.corners)];
  return (arc) => {
    const turnTo = (p: Point): number => sweepOf({ ...arc, to: p });
    const inner = corners
      .filter((p) => isOnArc(p, arc, 2 * of.slack))
      .filter((p) => distance(p, arc.from) > of.slack && distance(p, arc.to) > of.slack)
      .sort((a, b) => turnTo(a) - turnTo(b));
    const stops = [arc.from, ...inner, arc.to];
    return stops.slice(1).map((to, i) => arcThrough({ ...arc, from: stops[i] as Point, to }));
  };
};

/** The outline in chords, begun at its first corner, and its arcs in parts. */
export const inChords = (
  { corners, arcs }: Cornered,
  of: { readonly divide: (arc: Arc) => readonly Arc[]; readonly chord: number },
): { readonly points: readonly Point[]; readonly arcs: readonly Arc[] } => {
  const partsFrom = new Map(arcs.map((arc) => [arc.from, of.divide(arc)]));
  const points = corners.flatMap((corner) => {
    const parts = partsFrom.get(corner) ?? [];
    const along = parts.flatMap((part) => [...chordPoints(part, of.chord), part.to]);
    return [corner, ...along.slice(0, -1)];
  });
  return { points, arcs: [...partsFrom.values()].flat() };
};
