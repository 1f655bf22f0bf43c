// Which lines to add to a drawing so that straight seams alone join it: the fewest; of those the shortest. One line and
// two are searched in full; more are put together step by step, and said to be so.

import { type SeamLine, seamLine } from '#craft/chords';
import { distance, type Point, type Polygon } from '#ground/plane';
import {
  cornersToRule,
  inRuns,
  liesOn,
  linesThrough,
  type Ruled,
  type RuledUnit,
  ruledAlong,
  stuckIn,
  type Unit,
} from './stuck.ts';

/** New seams along one line. */
export interface AddedLine {
  /** From edge to edge of what it divides; where seams of the drawing lie between them on the line there are several. */
  readonly seams: readonly (readonly [from: Point, to: Point])[];
}

export interface Advice {
  readonly lines: readonly AddedLine[];
  /** So many pieces more. */
  readonly more: number;
  /** Of all new seams together. */
  readonly length: number;
  /** Whether fewer lines, or shorter ones where there are one or two, are proven not to do. */
  readonly isLeast: boolean;
}

/** Drawings of more patches are not looked at. Our own figure. */
const mostPatches = 60;
/** Lines advised at most: with more the drawing is another one. Our own figure. */
const mostLines = 6;
/** Lines that are tried, ruled out and cut along, before the search for two ends; some tenths of a second. */
const mostTried = 4_000;
/** Ways followed side by side where more than two lines are needed. */
const beam = 12;

/**
 * @param outlines of a block that is convex, without corners on straight sides; none of them curved
 * @param slack    places that lie nearer to each other are one
 * @returns null where straight seams join it already, and where no advice is found
 * @source docs/formulas.md#lines-to-add
 */
export const adviceFor = (outlines: readonly Polygon[], slack: number): Advice | null => {
  if (outlines.length > mostPatches) return null;
  const start: State = { stuck: stuckIn(outlines, slack), lines: [] };
  if (start.stuck.length === 0) return null;
  const search: Search = { slack, tried: 0 };
  const one = bestWithin(search, start, 1);
  const found = one ?? bestWithin(search, start, 2);
  const isSearched = search.tried < mostTried;
  if (found) return adviceOf(found, slack, isSearched);
  const more = stepByStep(search, start);
  return more && adviceOf(more, slack, isSearched && more.lines.length <= fewestFor(start, slack));
};

interface State {
  readonly stuck: readonly Unit[];
  readonly lines: readonly (readonly (readonly [Point, Point])[])[];
}

interface Search {
  readonly slack: number;
  tried: number;
}

export const adviceOf = ({ lines }: Pick<State, 'lines'>, slack: number, isLeast: boolean): Advice => ({
  lines: lines.map((seams) => ({ seams: inRuns(seams, slack) })),
  more: lines.flat().length,
  length: lengthOf(lines),
  isLeast,
});

export const lengthOf = (lines: State['lines']): number =>
  lines.flat().reduce((all, [a, b]) => all + distance(a, b), 0);

/** The best of all ways to free the stuck units with so many lines through two corners of theirs, the first of which goes all through the first of them. */
const bestWithin = (search: Search, state: State, lines: number): State | null => {
  const { slack } = search;
  const [unit, ...others] = state.stuck;
  if (unit === undefined) return state;
  if (lines === 0) return null;
  const corners = state.stuck.flatMap((one) => cornersToRule(one, slack));
  let best: State | null = null;
  for (const line of linesThrough(state.stuck.flat(), slack)) {
    const left = corners.filter((corner) => !liesOn(line, corner, slack));
    if (!canBeRuled(left, lines - 1, slack)) continue;
    for (const next of ruledThrough(search, { state, line, unit, others, mayPass: lines > 1 })) {
      const found = bestWithin(search, next, lines - 1);
      if (found && (best === null || isShorter(found.lines, best.lines, slack))) best = found;
    }
    if (search.tried > mostTried) break;
  }
  return best;
};

/** Whether so few lines can go through all of these corners: none, or one of which they all lie on. */
export const canBeRuled = (corners: readonly Point[], lines: number, slack: number): boolean => {
  const [first, second] = corners;
  if (first === undefined) return true;
  if (lines === 0) return false;
  if (lines > 1 || second === undefined) return true;
  return corners.every((corner) => liesOn({ from: first, to: second }, corner, slack));
};

/** What is left when a line is ruled through a unit, and through any of the others that it crosses. */
const ruledThrough = (
  search: Search,
  of: {
    readonly state: State;
    readonly line: Ruled;
    readonly unit: Unit;
    readonly others: readonly Unit[];
    /** Whether a unit that the line crosses may be left for the next. */
    readonly mayPass: boolean;
  },
): readonly State[] => {
  const { slack } = search;
  search.tried += 1;
  const ruled = ruledAlong(of.unit, of.line, slack);
  if (!ruled) return [];
  let ways: readonly (readonly (RuledUnit | Unit)[])[] = [[ruled]];
  for (const other of of.others) {
    const across = ruledAlong(other, of.line, slack);
    if (!across && !of.mayPass) return [];
    ways = ways.flatMap((way) => [...(across ? [[...way, across]] : []), ...(of.mayPass ? [[...way, other]] : [])]);
  }
  return ways.map((way) => ({
    stuck: way.flatMap((one) => ('parts' in one ? one.parts.flatMap((part) => stuckIn(part, slack)) : [one])),
    lines: [...of.state.lines, way.flatMap((one) => ('parts' in one ? one.added : []))],
  }));
};

/** Shorter; then fewer pieces; then level before upright before slanted, the upper first. */
export const isShorter = (a: State['lines'], b: State['lines'], slack: number): boolean => {
  const longer = lengthOf(a) - lengthOf(b);
  if (Math.abs(longer) > slack) return longer < 0;
  const more = a.flat().length - b.flat().length;
  if (more !== 0) return more < 0;
  const [first, second] = [seamsOf(a), seamsOf(b)];
  for (let i = 0; i < Math.min(first.length, second.length); i++) {
    const [m, n] = [first[i], second[i]] as [Seams[number], Seams[number]];
    if (m.lie !== n.lie) return m.lie < n.lie;
    if (Math.abs(m.place - n.place) > slack) return m.place < n.place;
  }
  return false;
};

type Seams = readonly SeamLine[];

const seamsOf = (lines: State['lines']): Seams => lines.flat().map(([from, to]) => seamLine(from, to));

/** Ways with the least left to free are followed, a line at a time. */
const stepByStep = (search: Search, start: State): State | null => {
  const { slack } = search;
  let ways: readonly State[] = [start];
  for (let lines = 0; lines < mostLines; lines++) {
    const next = ways.flatMap((state) => {
      const [unit, ...others] = state.stuck as readonly [Unit, ...Unit[]];
      return linesThrough(unit, slack).flatMap((line) =>
        ruledThrough(search, {
          state,
          line,
          unit,
          others: others.filter((one) => ruledAlong(one, line, slack)),
          mayPass: false,
        }).map((freed) => ({
          ...freed,
          stuck: [...freed.stuck, ...others.filter((one) => !ruledAlong(one, line, slack))],
        })),
      );
    });
    const ranked = next
      .map((state) => ({ state, left: leftIn(state, slack), more: state.lines.flat().length }))
      .toSorted((a, b) => a.left - b.left || a.more - b.more || lengthOf(a.state.lines) - lengthOf(b.state.lines));
    const done = ranked.filter(({ state }) => state.stuck.length === 0).map(({ state }) => state);
    if (done.length > 0) return done.reduce((a, b) => (isShorter(b.lines, a.lines, slack) ? b : a));
    ways = ranked.slice(0, beam).map(({ state }) => state);
    if (ways.length === 0) return null;
  }
  return null;
};

/** Corners that lines must still go through. */
const leftIn = ({ stuck }: State, slack: number): number =>
  stuck.reduce((all, unit) => all + cornersToRule(unit, slack).length, 0);

/** No fewer lines go through all corners that must lie on one: by the most of them that lie on any line. */
const fewestFor = ({ stuck }: State, slack: number): number => {
  const corners = stuck.flatMap((unit) => cornersToRule(unit, slack));
  if (corners.length < 2) return 3;
  const most = Math.max(
    ...corners.flatMap((from, i) =>
      corners.slice(i + 1).map((to) => corners.filter((corner) => liesOn({ from, to }, corner, slack)).length),
    ),
  );
  return Math.max(3, Math.ceil(corners.length / most));
};
