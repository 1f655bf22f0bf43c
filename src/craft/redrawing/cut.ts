// Patches cut along a seam: a run of straight lines that comes from a patch's edge and goes to it again divides the patch in two.
import { arcCrossings, isOnArc } from '#ground/arc';
import { clockwise, isNear, isOnOutline, isOnSide, type Side, sidesOf, splitAt } from '#ground/outline';
import { at, distance, isInside, type Point, type Polygon, signedArea } from '#ground/plane';
import { arcsKept, dividedAlike, dividedAt, edgesIn, patchIn } from './curves.ts';
import type { DrawnPatch } from './patch.ts';

export interface Cut {
  readonly patches: readonly DrawnPatch[];
  /** So many patches were divided. */
  readonly divided: number;
  /** What of the run divides any: a round that only itself leads to does not. */
  readonly ruled: readonly (readonly Point[])[];
}

/**
 * Every patch that the run goes through from edge to edge becomes two, both in its tone; where it ends inside a patch, or there runs
 * in a round that only itself leads to, it divides nothing.
 */
export const cutAlong = (patches: readonly DrawnPatch[], run: readonly Point[], slack: number): Cut => {
  const dividing = new Set<readonly Point[]>();
  const cutBy = (all: readonly DrawnPatch[], one: readonly Point[]): readonly DrawnPatch[] => {
    const cut = all.flatMap((part) => partsAlong(part, one, slack));
    if (cut.length > all.length) dividing.add(one);
    return cut;
  };
  const runs = plainRuns(run, slack);
  const parts = patches.map((patch) => runs.reduce(cutBy, [patch]));
  return {
    patches: dividedAlike(parts.flat(), slack),
    divided: parts.filter((own) => own.length > 1).length,
    ruled: runs.filter((one) => dividing.has(one)),
  };
};

/** A run that meets itself as runs that do not: the way to its end without its rounds, then every round, from where it meets itself. */
const plainRuns = (run: readonly Point[], slack: number): readonly (readonly Point[])[] => {
  const sides = run.slice(1).map((to, i): Side => [run[i] as Point, to]);
  const stops = [...run.slice(0, 1), ...sides.flatMap((side) => stopsOn(side, sides, slack).slice(1))];
  const rounds: (readonly Point[])[] = [];
  const way: Point[] = [];
  for (const p of stops) {
    const met = way.findIndex((q) => isNear(p, q, slack));
    if (met < 0) way.push(p);
    else rounds.push([way[met] as Point, ...way.splice(met + 1), p]);
  }
  return [way, ...rounds];
};

/** @returns the patch alone where the run does not divide it */
const partsAlong = (patch: DrawnPatch, run: readonly Point[], slack: number): readonly DrawnPatch[] => {
  const { arcs, tone } = patch;
  if (arcs === undefined) {
    const outlines = cutOutline(patch.points, run, slack);
    return outlines.length === 1 ? [patch] : outlines.map((points) => ({ points, tone }));
  }
  // where it meets an arc it is to meet a corner, not a chord
  const met = metOnArcs(arcs, run, slack);
  const divided = dividedAt(patch, met.places, slack);
  const outlines = cutOutline(divided.points, met.run, slack);
  const edges = edgesIn(divided);
  const parts = outlines.flatMap((points) => arcsKept(points, edges) ?? []);
  if (parts.length < Math.max(2, outlines.length)) return [patch];
  return parts.map((part) => patchIn(part, tone));
};

/** The run with a point wherever it meets an arc, and those points. */
const metOnArcs = (
  arcs: NonNullable<DrawnPatch['arcs']>,
  run: readonly Point[],
  slack: number,
): { readonly places: readonly Point[]; readonly run: readonly Point[] } => {
  const ends = arcs.flatMap(({ from, to }) => [from, to]);
  const known = [...ends, ...run.filter((p) => arcs.some((arc) => isOnArc(p, arc, 2 * slack)))];
  const places = [...known];
  const longer = run.slice(1).flatMap((to, i) => {
    const from = run[i] as Point;
    const crossed = arcs
      .flatMap((arc) => arcCrossings({ ...arc, arc }, { from, to, arc: null }, slack))
      .map((p) => known.find((q) => isNear(p, q, 4 * slack)) ?? p)
      .filter((p) => !isNear(p, from, slack) && !isNear(p, to, slack))
      .toSorted((p, q) => distance(from, p) - distance(from, q))
      .filter((p, k, all) => k === 0 || !isNear(p, all[k - 1] as Point, slack));
    places.push(...crossed);
    return [...crossed, to];
  });
  return { places, run: [...run.slice(0, 1), ...longer] };
};

/** @returns the outline alone where the run does not divide it */
export const cutOutline = (outline: Polygon, run: readonly Point[], slack: number): readonly Polygon[] => {
  let parts: readonly Polygon[] = [outline];
  for (const inner of innerRuns(outline, run, slack))
    parts = parts.flatMap((part) => dividedBy(part, inner, slack) ?? [part]);
  return parts;
};

/** The stretches of a run that lie inside an outline and come to it with both ends. */
const innerRuns = (outline: Polygon, run: readonly Point[], slack: number): readonly (readonly Point[])[] => {
  const edges = sidesOf(outline);
  const stretches: (readonly Point[])[] = [];
  let open: Point[] = [];
  const close = (): void => {
    if (open.length > 1) stretches.push(open);
    open = [];
  };
  for (const [i, to] of run.slice(1).entries()) {
    const stops = stopsOn([run[i] as Point, to], edges, slack);
    for (const [k, b] of stops.slice(1).entries()) {
      const a = stops[k] as Point;
      const middle = at((a.x + b.x) / 2, (a.y + b.y) / 2);
      if (isInside(middle, outline) && !isOnOutline(middle, outline, slack)) {
        if (open.length === 0) open.push(a);
        open.push(b);
        if (isOnOutline(b, outline, slack)) close();
      } else close();
    }
  }
  close();
  const begins = run[0] !== undefined && isOnOutline(run[0], outline, slack);
  const whole = begins ? stretches : meetingRound(stretches, run, slack);
  return whole.filter(
    (stretch) =>
      isOnOutline(stretch[0] as Point, outline, slack) && isOnOutline(stretch.at(-1) as Point, outline, slack),
  );
};

/** A closed run that begins inside comes back to where it began: its last stretch leads on into its first. */
const meetingRound = (
  stretches: readonly (readonly Point[])[],
  run: readonly Point[],
  slack: number,
): readonly (readonly Point[])[] => {
  const [first, last] = [stretches[0], stretches.at(-1)];
  const begin = run[0];
  if (first === undefined || last === undefined || begin === undefined || first === last) return stretches;
  const isRound = isNear(begin, run.at(-1) as Point, slack);
  const goesOn = isNear(first[0] as Point, begin, slack) && isNear(last.at(-1) as Point, begin, slack);
  return isRound && goesOn ? [...stretches.slice(1, -1), [...last, ...first.slice(1)]] : stretches;
};

/** The ends of a line, and between them where it meets others, in order. */
const stopsOn = ([a, b]: Side, others: readonly Side[], slack: number): readonly Point[] => {
  const long = distance(a, b);
  if (long < slack) return [a];
  const along = (p: Point): number => ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long;
  const found = others.flatMap((side) => [
    ...side.filter((corner) => isOnSide(corner, [a, b], slack)),
    ...crossingOf([a, b], side),
  ]);
  const stops = [a, ...found, b].map((p) => ({ p, t: along(p) })).toSorted((m, n) => m.t - n.t);
  return stops.filter(({ t }, i) => i === 0 || t - (stops[i - 1]?.t ?? 0) > slack).map(({ p }) => p);
};

/** Where two lines cross between their ends. */
export const crossingOf = ([a, b]: Side, [c, d]: Side): readonly Point[] => {
  const turn = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
  if (Math.abs(turn) < 1e-12) return [];
  const t = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / turn;
  const u = ((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / turn;
  return t > 0 && t < 1 && u > 0 && u < 1 ? [at(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y))] : [];
};

/** @returns null where the run does not lie in this outline from edge to edge */
const dividedBy = (outline: Polygon, run: readonly Point[], slack: number): readonly Polygon[] | null => {
  const [first, last] = [run[0] as Point, run.at(-1) as Point];
  const [a, b] = [run[0] as Point, run[1] as Point];
  const middle = at((a.x + b.x) / 2, (a.y + b.y) / 2);
  if (!isInside(middle, outline) || isOnOutline(middle, outline, slack)) return null;
  if (isNear(first, last, slack)) return null;
  const ring = withCorners(outline, [first, last], slack);
  const from = ring.findIndex((p) => isNear(p, first, slack));
  const to = ring.findIndex((p) => isNear(p, last, slack));
  if (from < 0 || to < 0) return null;
  const inner = run.slice(1, -1);
  const one = [...walk(ring, from, to), ...inner.toReversed()];
  const other = [...walk(ring, to, from), ...inner];
  return [one, other].map(clockwise).filter((part) => signedArea(part) > slack * slack);
};

/** Corners of a ring from one to another, both included, onwards. */
const walk = (ring: Polygon, from: number, to: number): readonly Point[] =>
  from <= to ? ring.slice(from, to + 1) : [...ring.slice(from), ...ring.slice(0, to + 1)];

/** The same outline with corners at these places of it. */
const withCorners = (outline: Polygon, places: readonly Point[], slack: number): Polygon =>
  sidesOf(outline).flatMap((side) => splitAt(side, places, slack).map(([from]) => from));
