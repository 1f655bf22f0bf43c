// Which straight lines to add to a drawing with curves so that every seam is straight, or one smooth curve from edge to edge that turns
// half round at most: the fewest; of those the shortest. One line and two are searched in full, within limits that are told.

import { bentDivisions, forcedCorners, graphOf, type PatchGraph, type SeamDivision } from '#craft/piecing';
import { chordedFor, cutAlong, type DrawnPatch, dividedAlike, edgesIn } from '#craft/redrawing';
import { pointOnArc, sweepOf } from '#ground/arc';
import { isNear } from '#ground/outline';
import { at, distance, isInside, type Point } from '#ground/plane';
import { type Advice, adviceOf, canBeRuled, isShorter, lengthOf } from './advice.ts';
import { crosses, liesOn, newSeams, type Ruled, reachAcross } from './stuck.ts';

/** A block with curves, or a unit of it: outlines with their arcs, divided alike on both sides of every seam. */
export type CurvedUnit = readonly Pick<DrawnPatch, 'points' | 'arcs'>[];

export type CurvedAdvice =
  /** Sewn sensibly as it is. */
  | { readonly kind: 'none-needed' }
  | { readonly kind: 'lines'; readonly advice: Advice }
  /** No lines were found; whether one and two were all looked at. */
  | { readonly kind: 'none-found'; readonly isWhole: boolean };

/** Drawings of more patches are not looked at. Our own figure. */
const mostPatches = 40;
/** Places are told from each other by so much more than in the drawing: arcs then have few chords to be cut through. Our own figure. */
const coarser = 100;
/** Drawings with lines in them that are looked at; some tenths of a second. */
const mostTried = 1_000;
/** New seams of one line of which any may be left out. */
const mostStretches = 6;
/** Lines advised at most, and ways followed side by side, where more than two are needed. */
const mostLines = 4;
const beam = 6;

interface State {
  readonly stuck: readonly (readonly DrawnPatch[])[];
  readonly lines: readonly (readonly Stretch[])[];
}

type Stretch = readonly [Point, Point];

interface Search {
  readonly slack: number;
  readonly lines: readonly Ruled[];
  tried: number;
  /** Nothing that was to be looked at has been left out. */
  isWhole: boolean;
}

/**
 * @param fine places that lie nearer to each other are one
 * @source docs/formulas.md#lines-to-add
 */
export const adviceForCurves = (block: CurvedUnit, fine: number): CurvedAdvice => {
  if (block.length > mostPatches) return { kind: 'none-found', isWhole: false };
  const slack = coarser * fine;
  const patches = block.map((patch) => chordedFor({ ...patch, tone: '' }, slack));
  const stuck = stuckIn(patches, slack);
  if (stuck.length === 0) return { kind: 'none-needed' };
  const search: Search = { slack, lines: linesThrough(patches, slack), tried: 0, isWhole: true };
  const start: State = { stuck, lines: [] };
  const found = bestWithin(search, start, 1) ?? bestWithin(search, start, 2);
  const isWhole = search.isWhole;
  const state = found ?? stepByStep({ ...search, tried: 0 }, start);
  if (state === null) return { kind: 'none-found', isWhole };
  return { kind: 'lines', advice: adviceOf(state, slack, isWhole && found !== null) };
};

/** Units of several patches that are left when everything is sewn that can be: no order of it leaves fewer. */
const stuckIn = (unit: readonly DrawnPatch[], slack: number): State['stuck'] => {
  const graph = graphIn(unit, slack);
  const stuck: (readonly number[])[] = [];
  const waiting: (readonly number[])[] = [unit.map((_, patch) => patch)];
  for (let part = waiting.pop(); part !== undefined; part = waiting.pop()) {
    if (part.length === 1) continue;
    const seam = bentDivisions({ graph, unit: part, bends: 0 }).find(turnsLittle);
    if (seam === undefined) stuck.push(part);
    else waiting.push(...seam.parts);
  }
  return stuck.map((part) => part.map((patch) => unit[patch] as DrawnPatch));
};

const graphIn = (unit: readonly DrawnPatch[], slack: number): PatchGraph =>
  graphOf(
    unit.map(({ points }) => points),
    slack,
    unit.map(({ arcs = [] }) => arcs),
  );

/** Half round at most, all arcs of one way together. */
const turnsLittle = ({ arcs }: SeamDivision): boolean => {
  let turn = 0;
  return arcs.every((arc, i) => {
    const goesOn = i > 0 && arcs[i - 1]?.clockwise === arc.clockwise;
    turn = (goesOn ? turn : 0) + sweepOf(arc);
    return turn < Math.PI + 1e-3;
  });
};

/** The best of all ways to free what is stuck with so many lines. */
const bestWithin = (search: Search, state: State, lines: number): State | null => {
  if (state.stuck.length === 0) return state;
  if (lines === 0) return null;
  const { slack } = search;
  const corners = cornersToRule(state, slack);
  let best: State | null = null;
  for (const line of search.lines) {
    const left = corners.filter((corner) => !liesOn(line, corner, slack));
    if (!canBeRuled(left, lines - 1, slack)) continue;
    if (lines === 1 && !state.stuck.every((unit) => unit.some(({ points }) => crosses(line, points, slack)))) continue;
    // with less of a line less is free: what all of it does not free no part does
    const whole = ruledThrough(search, state, line);
    if (whole === null || bestWithin(search, whole, lines - 1) === null) continue;
    for (const part of partsBy(search, whole.lines.at(-1) as readonly Stretch[])) {
      if (best !== null && lengthOf([...state.lines, part]) > lengthOf(best.lines) + slack) break;
      const found = bestWithin(search, withSeams(search, state, part), lines - 1);
      if (found !== null && (best === null || isShorter(found.lines, best.lines, slack))) best = found;
      if (found !== null && lines === 1) break;
    }
    if (search.tried > mostTried) {
      search.isWhole = false;
      break;
    }
  }
  return best;
};

/** Some of the new seams of a line, the shortest first. */
const partsBy = (search: Search, stretches: readonly Stretch[]): readonly (readonly Stretch[])[] => {
  if (stretches.length > mostStretches) {
    search.isWhole = false;
    return [stretches];
  }
  return Array.from({ length: 2 ** stretches.length - 1 }, (_, i) =>
    stretches.filter((__, k) => (((i + 1) >> k) & 1) === 1),
  ).toSorted((a, b) => lengthOf([a]) - lengthOf([b]) || a.length - b.length);
};

const withSeams = (search: Search, state: State, seams: readonly Stretch[]): State => {
  const { slack } = search;
  search.tried += 1;
  const stuck = state.stuck.flatMap((unit) => {
    const cut = seams.reduce((all, seam) => cutBy(all, seam, slack), unit);
    return cut.length === unit.length ? [unit] : stuckIn(dividedAlike(cut, slack), slack);
  });
  return { stuck, lines: [...state.lines, seams] };
};

/** Only the patch that the stretch lies in. */
const cutBy = (patches: readonly DrawnPatch[], [from, to]: Stretch, slack: number): readonly DrawnPatch[] => {
  const middle = at((from.x + to.x) / 2, (from.y + to.y) / 2);
  return patches.flatMap((patch) =>
    isInside(middle, patch.points) ? cutAlong([patch], [from, to], slack).patches : [patch],
  );
};

/** A line ruled through every patch of what is stuck; null where it divides none. */
const ruledThrough = (search: Search, state: State, line: Ruled): State | null => {
  const { slack } = search;
  const reach = reachAcross(
    state.stuck.flat().map(({ points }) => points),
    line,
  );
  const added: Stretch[] = [];
  const units = state.stuck.map((unit) => {
    const cut = unit.map((patch) => {
      if (!crosses(line, patch.points, slack)) return [patch];
      const parts = cutAlong([patch], [reach.from, reach.to], slack).patches;
      const outlines = parts.map(({ points }) => points);
      if (parts.length > 1) added.push(...newSeams(patch.points, outlines, line, slack));
      return parts;
    });
    return cut.flat();
  });
  if (added.length === 0) return null;
  search.tried += 1;
  const stuck = units.flatMap((unit) => stuckIn(dividedAlike(unit, slack), slack));
  return { stuck, lines: [...state.lines, added] };
};

const cornersToRule = ({ stuck }: State, slack: number): readonly Point[] =>
  stuck.flatMap((unit) => {
    const graph = graphIn(unit, slack);
    return forcedCorners(
      graph,
      unit.map((_, patch) => patch),
    ).map((corner) => graph.corners[corner] as Point);
  });

/** Through two of the corners, the middles of arcs and their centres, though not through two centres alone. */
const linesThrough = (patches: readonly DrawnPatch[], slack: number): readonly Ruled[] => {
  const edges = patches.flatMap(edgesIn);
  const places = withoutTwins(
    edges.flatMap(({ from, arc }) => (arc === null ? [from] : [from, pointOnArc(arc, 0.5)])),
    slack,
  );
  const centres = withoutTwins(
    edges.flatMap(({ arc }) => arc?.centre ?? []),
    slack,
  );
  const lines: Ruled[] = [];
  places.forEach((from, i) => {
    for (const to of [...places.slice(i + 1), ...centres]) {
      if (distance(from, to) < 8 * slack) continue;
      if (!lines.some((line) => liesOn(line, from, slack) && liesOn(line, to, slack))) lines.push({ from, to });
    }
  });
  return lines;
};

const withoutTwins = (places: readonly Point[], slack: number): readonly Point[] =>
  places.filter((p, i) => !places.slice(0, i).some((q) => isNear(p, q, 4 * slack)));

/** A line at a time, those followed that leave the least to be freed. */
const stepByStep = (search: Search, start: State): State | null => {
  const { slack } = search;
  let ways: readonly State[] = [start];
  for (let lines = 0; lines < mostLines; lines++) {
    const next = ways.flatMap((state) =>
      search.lines.flatMap((line) => {
        if (search.tried > mostTried) return [];
        return ruledThrough(search, state, line) ?? [];
      }),
    );
    const ranked = next
      .map((state) => ({ state, left: cornersToRule(state, slack).length, stuck: state.stuck.flat().length }))
      .toSorted((a, b) => a.left - b.left || a.stuck - b.stuck || lengthOf(a.state.lines) - lengthOf(b.state.lines));
    const done = ranked.filter(({ state }) => state.stuck.length === 0).map(({ state }) => state);
    if (done.length > 0) return done.reduce((a, b) => (isShorter(b.lines, a.lines, slack) ? b : a));
    ways = ranked.slice(0, beam).map(({ state }) => state);
    if (ways.length === 0) return null;
  }
  return null;
};
