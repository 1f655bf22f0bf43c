// Outlines whose sides may be arcs. The corners of chords stand for every arc, so that whoever asks for a polygon has one; the
// arcs themselves lie beside it, by value, and stay true wherever the outline begins and whatever straight corners it loses.
import {
  type Box,
  boxOf,
  distance,
  offLine,
  type Point,
  type Polygon,
  signedArea,
  unitVector,
  withoutStraightCorners,
} from '#ground/plane';
import {
  type Arc,
  arcDirection,
  arcExtremes,
  arcLength,
  arcThrough,
  bowArea,
  pointOnArc,
  radiusOf,
  reversedArc,
} from './arc.ts';

export interface Outline {
  readonly points: Polygon;
  /** As they are walked along the points; both ends are points of it, and the corners of its chords lie between them. */
  readonly arcs: readonly Arc[];
}

/** From corner to corner: straight, or along an arc. */
export interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly arc: Arc | null;
  /** Where the chords of the arc meet, between its ends. */
  readonly chords: readonly Point[];
}

const keyOf = ({ x, y }: Point): string => `${x},${y}`;

/** The sides in walking order. */
export const edgesOf = ({ points, arcs }: Outline): readonly Edge[] => {
  const starts = new Map(arcs.map((arc) => [keyOf(arc.from), arc]));
  const n = points.length;
  const edges: Edge[] = [];
  // an outline may begin within an arc
  const first = arcs.length === 0 ? 0 : points.findIndex((p) => starts.has(keyOf(p)));
  for (let i = 0; i < n; ) {
    const from = points[(first + i) % n] as Point;
    const arc = starts.get(keyOf(from)) ?? null;
    const chords: Point[] = [];
    let to = points[(first + ++i) % n] as Point;
    for (; arc !== null && keyOf(to) !== keyOf(arc.to) && i < n; to = points[(first + ++i) % n] as Point)
      chords.push(to);
    edges.push({ from, to, arc, chords });
  }
  return edges;
};

/** The outline with these sides, one after the other. */
export const outlineAlong = (edges: readonly Edge[]): Outline => ({
  points: edges.flatMap(({ from, chords }) => [from, ...chords]),
  arcs: edges.flatMap(({ arc }) => arc ?? []),
});

/** Exact: the polygon of its corners, and what lies between arcs and their chords. */
export const outlineArea = (outline: Outline): number =>
  signedArea(edgesOf(outline).map(({ from }) => from)) + outline.arcs.reduce((all, arc) => all + bowArea(arc), 0);

export const outlineBox = (outline: Outline): Box =>
  boxOf([...edgesOf(outline).map(({ from }) => from), ...outline.arcs.flatMap(arcExtremes)]);

export const edgeLength = ({ from, to, arc }: Edge): number => (arc === null ? distance(from, to) : arcLength(arc));

/** Unit vector in which an edge leaves its first end, or arrives at its last. */
export const edgeDirection = ({ from, to, arc }: Pick<Edge, 'from' | 'to' | 'arc'>, end: 'from' | 'to'): Point => {
  if (arc !== null) return arcDirection(arc, end);
  return unitVector(from, to);
};

export const reversedEdge = ({ from, to, arc, chords }: Edge): Edge => ({
  from: to,
  to: from,
  arc: arc === null ? null : reversedArc(arc),
  chords: chords.toReversed(),
});

/** Its points without corners on a straight line; those where an arc begins or ends stay, wherever they lie. */
export const pointsBetweenSides = ({ points, arcs }: Outline, slack: number): Polygon => {
  if (arcs.length === 0) return withoutStraightCorners(points, slack);
  const ends = new Set(arcs.flatMap(({ from, to }) => [keyOf(from), keyOf(to)]));
  const kept = new Set(withoutStraightCorners(points, slack));
  return points.filter((p) => kept.has(p) || ends.has(keyOf(p)));
};

/** Its corners and the middles of its arcs: enough to tell it from other outlines. */
export const landmarksOf = (outline: Outline, slack: number): Polygon =>
  wholeSides(outline, slack).flatMap(({ from, arc }) => (arc === null ? [from] : [from, pointOnArc(arc, 0.5)]));

/** The sides without corners on a straight line or within one arc. */
export const wholeSides = (outline: Outline, slack: number): readonly Edge[] => {
  const edges = edgesOf(outline);
  const first = edges.findIndex((edge, i) => !runsOn(edges.at(i - 1) as Edge, edge, slack));
  if (first < 0) return edges;
  const sides: Edge[] = [];
  for (let i = 0; i < edges.length; i++) {
    const edge = edges[(first + i) % edges.length] as Edge;
    const before = sides.at(-1);
    if (before === undefined || i === 0 || !runsOn(before, edge, slack)) sides.push(edge);
    else sides[sides.length - 1] = joined(before, edge);
  }
  return sides;
};

const joined = (a: Edge, b: Edge): Edge => ({
  from: a.from,
  to: b.to,
  arc: a.arc === null ? null : arcThrough({ ...a.arc, to: b.to }),
  chords: a.arc === null ? [] : [...a.chords, a.to, ...b.chords],
});

/** Whether two edges, one after the other, are parts of one line or of one circle. */
const runsOn = (a: Edge, b: Edge, slack: number): boolean => {
  if (a.arc === null || b.arc === null) {
    if (a.arc !== b.arc) return false;
    const along = (a.to.x - a.from.x) * (b.to.x - b.from.x) + (a.to.y - a.from.y) * (b.to.y - b.from.y);
    return along > 0 && Math.abs(offLine(a.from, b.to, a.to)) <= slack;
  }
  const near = 8 * slack;
  return (
    a.arc.clockwise === b.arc.clockwise &&
    distance(a.arc.centre, b.arc.centre) < near &&
    Math.abs(radiusOf(a.arc) - radiusOf(b.arc)) < near
  );
};
