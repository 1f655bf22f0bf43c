// Where a drawing comes to a stop: units of several patches that no straight seam divides, and what a line added across one leaves.

import { chordsOf, drawingOf } from '#craft/chords';
import { forcedCorners, graphOf } from '#craft/piecing';
import { cutOutline } from '#craft/redrawing';
import { isOnOutline, sidesOf, splitAt } from '#ground/outline';
import { distance, isInside, offLine, type Point, type Polygon } from '#ground/plane';

export type Unit = readonly Polygon[];

/** A straight line through two corners. */
export interface Ruled {
  readonly from: Point;
  readonly to: Point;
}

/** @returns what is left when every chord of a convex unit, and of its parts, has been sewn along */
export const stuckIn = (unit: Unit, slack: number): readonly Unit[] => {
  const drawing = drawingOf(unit, slack);
  const stuck: (readonly number[])[] = [];
  const waiting: (readonly number[])[] = [unit.map((_, patch) => patch)];
  for (let part = waiting.pop(); part !== undefined; part = waiting.pop()) {
    if (part.length === 1) continue;
    const [chord] = chordsOf(drawing, part);
    if (chord) waiting.push(chord.second, chord.first);
    else stuck.push(part);
  }
  return stuck.map((part) => part.map((patch) => unit[patch] as Polygon));
};

/** Corners in which no edge goes on as another: a line must be ruled through each of them. */
export const cornersToRule = (unit: Unit, slack: number): readonly Point[] => {
  const graph = graphOf(unit, slack);
  return forcedCorners(
    graph,
    unit.map((_, patch) => patch),
  ).map((corner) => graph.corners[corner] as Point);
};

/** Every line through two corners of a unit, once. */
export const linesThrough = (unit: Unit, slack: number): readonly Ruled[] => {
  const { corners } = graphOf(unit, slack);
  const lines: Ruled[] = [];
  corners.forEach((from, i) => {
    for (const to of corners.slice(i + 1)) {
      if (!lines.some((line) => liesOn(line, from, slack) && liesOn(line, to, slack))) lines.push({ from, to });
    }
  });
  return lines;
};

export const liesOn = ({ from, to }: Ruled, p: Point, slack: number): boolean =>
  Math.abs(offLine(from, to, p)) < 4 * slack;

export interface RuledUnit {
  /** On either side of the line. */
  readonly parts: readonly [Unit, Unit];
  /** New seams, each from edge to edge of a patch. */
  readonly added: readonly (readonly [Point, Point])[];
}

/** A unit divided along a whole line; null where the line leaves it whole or is a seam of it already. */
export const ruledAlong = (unit: Unit, line: Ruled, slack: number): RuledUnit | null => {
  const reach = reachAcross(unit, line);
  const sides: [Polygon[], Polygon[]] = [[], []];
  const added: (readonly [Point, Point])[] = [];
  for (const patch of unit) {
    const parts = crosses(line, patch, slack) ? cutOutline(patch, [reach.from, reach.to], slack) : [patch];
    if (parts.length > 1) added.push(...newSeams(patch, parts, line, slack));
    for (const part of parts) sides[handOf(part, line)].push(part);
  }
  return added.length > 0 && sides[0].length > 0 && sides[1].length > 0 ? { parts: sides, added } : null;
};

export const crosses = ({ from, to }: Ruled, patch: Polygon, slack: number): boolean => {
  const off = patch.map((p) => offLine(from, to, p));
  return Math.min(...off) < -4 * slack && Math.max(...off) > 4 * slack;
};

/** The line as far as it can lie in the unit. */
export const reachAcross = (unit: Unit, { from, to }: Ruled): Ruled => {
  const far = 2 * Math.max(...unit.flat().map((p) => distance(from, p)), distance(from, to));
  const long = distance(from, to);
  const [dx, dy] = [((to.x - from.x) / long) * far, ((to.y - from.y) / long) * far];
  return { from: { x: from.x - dx, y: from.y - dy }, to: { x: from.x + dx, y: from.y + dy } };
};

/** Where the line runs through a patch: of the edges on it that its parts have, what was inside before. */
export const newSeams = (
  patch: Polygon,
  parts: Unit,
  line: Ruled,
  slack: number,
): readonly (readonly [Point, Point])[] =>
  parts
    .filter((part) => handOf(part, line) === 0)
    .flatMap(sidesOf)
    .filter((side) => side.every((p) => liesOn(line, p, slack)))
    .flatMap((side) => splitAt(side, patch, slack))
    .filter(([a, b]) => isWithin({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, patch, slack));

const isWithin = (p: Point, patch: Polygon, slack: number): boolean =>
  isInside(p, patch) && !isOnOutline(p, patch, slack);

const handOf = (part: Polygon, { from, to }: Ruled): 0 | 1 => {
  const widest = part.map((p) => offLine(from, to, p)).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
  return widest < 0 ? 0 : 1;
};

/** New seams that go on from one another as one. */
export const inRuns = (
  seams: readonly (readonly [Point, Point])[],
  slack: number,
): readonly (readonly [Point, Point])[] => {
  const [first] = seams;
  if (first === undefined) return [];
  const along = (p: Point): number =>
    (p.x - first[0].x) * (first[1].x - first[0].x) + (p.y - first[0].y) * (first[1].y - first[0].y);
  const sorted = seams
    .map(([a, b]) => (along(a) < along(b) ? ([a, b] as const) : ([b, a] as const)))
    .toSorted((a, b) => along(a[0]) - along(b[0]));
  const runs: [Point, Point][] = [];
  for (const [from, to] of sorted) {
    const last = runs.at(-1);
    if (last && distance(last[1], from) < 4 * slack) last[1] = to;
    else runs.push([from, to]);
  }
  return runs;
};
