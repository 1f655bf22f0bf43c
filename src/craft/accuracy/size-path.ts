// Where is a unit measured, and which pieces and seams does the measure go over? Through the middle, from one outer edge
// (or point) to the other; where a seam or a corner lies in the middle, beside it, over the more seams.
import type { Length } from '#craft/measure';
import { distance, dot, grown, type Point, type Polygon } from '#ground/plane';

/** Directions of the block's frame, one long. */
export interface MeasuredWay {
  readonly along: Point;
  readonly across: Point;
}

/** A piece on the way, and the outward normals of the edges where the way comes in and goes out. */
export interface Crossed {
  readonly patch: number;
  readonly enters: Point;
  readonly leaves: Point;
}

export interface SizePath {
  readonly crossed: readonly Crossed[];
  /** How far the unit's two outer ends move along the way when its outline grows by one all round: 1 at an edge square to it. */
  readonly ends: readonly [number, number];
  /** From end to end, on the unit's finished outline. */
  readonly from: Point;
  readonly to: Point;
}

export interface PathTask {
  readonly outlines: readonly Polygon[];
  readonly unit: readonly number[];
  /** Of the unit, finished. */
  readonly outline: Polygon;
  readonly seam: Length;
  readonly slack: number;
  readonly way: MeasuredWay;
  /** Nothing is measured nearer than this to the middle; missing: the middle itself will do. */
  readonly beside?: number;
}

/** Null where no straight way within the unit joins its ends. */
export const sizePath = (task: PathTask): SizePath | null => {
  const [first, last] = [endOf(task, -1), endOf(task, 1)];
  const found = linesBetween(task, first, last).flatMap(([from, to]) => {
    const crossed = crossedBy(task, from, to);
    return crossed === null ? [] : [{ crossed, ends: [first.grows, last.grows] as const, from, to }];
  });
  return found.length === 0
    ? null
    : found.reduce((best, one) => (one.crossed.length > best.crossed.length ? one : best));
};

/** The stretch of the outline that lies furthest one way: an edge, or a corner (from = to), by its places across the way. */
interface End {
  readonly from: number;
  readonly to: number;
  readonly reach: number;
  readonly grows: number;
}

const endOf = ({ outline, seam, slack, way }: PathTask, sign: 1 | -1): End => {
  const cut = grown(outline, seam);
  const reachOf = (p: Point): number => sign * dot(p, way.along);
  const reach = Math.max(...cut.map(reachOf));
  const furthest = cut.flatMap((p, i) => (reach - reachOf(p) < 4 * slack ? [i] : []));
  const grows = (i: number): number => (reachOf(cut[i] as Point) - reachOf(outline[i] as Point)) / seam;
  const edges = furthest
    .map((i) => ({ i, next: (i + 1) % outline.length }))
    .filter(({ next }) => furthest.includes(next))
    .map(({ i, next }) => ({ a: outline[i] as Point, b: outline[next] as Point }));
  const longest = edges.reduce<(typeof edges)[number] | null>(
    (best, edge) => (best === null || distance(edge.a, edge.b) > distance(best.a, best.b) ? edge : best),
    null,
  );
  if (longest === null) {
    const corner = furthest[0] as number;
    const p = outline[corner] as Point;
    return { from: dot(p, way.across), to: dot(p, way.across), reach: dot(p, way.along), grows: grows(corner) };
  }
  const places = [dot(longest.a, way.across), dot(longest.b, way.across)].sort((a, b) => a - b) as [number, number];
  return { from: places[0], to: places[1], reach: dot(longest.a, way.along), grows: 1 };
};

type Line = readonly [from: Point, to: Point];

/** Lines to try: through the middle if nothing but whole pieces lie there, else through the middle of the bands beside it. */
const linesBetween = (task: PathTask, first: End, last: End): readonly Line[] => {
  const { way, outlines, unit, slack } = task;
  const places = unit
    .flatMap((patch) => outlines[patch] ?? [])
    .map((p) => dot(p, way.across))
    .sort((a, b) => a - b);
  const middle = ((places[0] as number) + (places.at(-1) as number)) / 2;
  const point = (end: End, place: number): Point => ({
    x: way.along.x * end.reach + way.across.x * place,
    y: way.along.y * end.reach + way.across.y * place,
  });
  const isOn = (end: End, place: number): boolean => place > end.from + slack && place < end.to - slack;
  const levels = besides(places, middle, 4 * slack, task.beside ?? null).filter(
    (place) => isOn(first, place) && isOn(last, place),
  );
  if (levels.length > 0) return levels.map((place) => [point(first, place), point(last, place)]);
  const within = (end: End): number => Math.min(Math.max(middle, end.from), end.to);
  return [-16 * slack, 16 * slack].map((beside) => [
    point(first, within(first) + beside),
    point(last, within(last) + beside),
  ]);
};

/** The middle itself where no corner lies, else the middle of the band above it and of the band below. */
const besides = (places: readonly number[], middle: number, near: number, beside: number | null): readonly number[] => {
  if (beside === null && places.every((place) => Math.abs(place - middle) > near)) return [middle];
  const away = beside ?? 0;
  const above = places.filter((place) => place < middle - away - near).at(-1);
  const below = places.find((place) => place > middle + away + near);
  return [
    ...(above === undefined ? [] : [(above + middle - away) / 2]),
    ...(below === undefined ? [] : [(below + middle + away) / 2]),
  ];
};

interface Stretch {
  readonly patch: number;
  readonly from: number;
  readonly to: number;
  readonly enters: Point;
  readonly leaves: Point;
}

/** The pieces on a line from end to end, in order; null where it leaves the unit between them. */
const crossedBy = (task: PathTask, from: Point, to: Point): readonly Crossed[] | null => {
  const long = distance(from, to);
  const inside = long < 64 * task.slack ? [] : task.unit.flatMap((patch) => stretchesIn(task, patch, from, to));
  const inOrder = inside
    .filter((stretch) => (stretch.to - stretch.from) * long > 2 * task.slack)
    .sort((a, b) => a.from - b.from);
  const near = (64 * task.slack) / long;
  const meets = inOrder.every((stretch, i) => Math.abs(stretch.from - (inOrder[i - 1]?.to ?? 0)) < near);
  if (inOrder.length === 0 || !meets || Math.abs((inOrder.at(-1)?.to ?? 0) - 1) > near) return null;
  return inOrder.map(({ patch, enters, leaves }) => ({ patch, enters, leaves }));
};

/** Where the line lies within a patch, as shares of its length. */
const stretchesIn = (task: PathTask, patch: number, from: Point, to: Point): readonly Stretch[] => {
  const outline = task.outlines[patch] as Polygon;
  const overrun = (64 * task.slack) / distance(from, to);
  const direction = { x: to.x - from.x, y: to.y - from.y };
  const hits = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const edge = { x: b.x - a.x, y: b.y - a.y };
    const turn = direction.x * edge.y - direction.y * edge.x;
    if (Math.abs(turn) < 1e-12) return [];
    const gap = { x: a.x - from.x, y: a.y - from.y };
    const along = (gap.x * edge.y - gap.y * edge.x) / turn;
    const onEdge = (gap.x * direction.y - gap.y * direction.x) / turn;
    if (onEdge < 0 || onEdge >= 1 || along < -overrun || along > 1 + overrun) return [];
    const length = Math.hypot(edge.x, edge.y);
    return [{ along, normal: { x: edge.y / length, y: -edge.x / length } }];
  });
  const inOrder = hits.sort((a, b) => a.along - b.along);
  return inOrder.flatMap((hit, i) => {
    const next = inOrder[i + 1];
    if (i % 2 === 1 || next === undefined) return [];
    return [{ patch, from: hit.along, to: next.along, enters: hit.normal, leaves: next.normal }];
  });
};
