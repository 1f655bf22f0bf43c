// Every way to join every unit that can occur in a block, form by form; of a large block those ways that look best.

import { bestFirst, chordAlong, type Split, splitsOf } from '#craft/chords';
import { bentDivisions, bySeam, forcedCorners, mostBends } from './bent.ts';
import { alongChord, type Division, type SeamDivision } from './division.ts';
import { type Branch, formsIn, type Join, type JoinTask, type Ways } from './join.ts';
import { leastDivisions } from './least-corners.ts';
import { ringsOf } from './ring.ts';
import { sparing } from './whole.ts';

/** Blocks of up to so many patches have every way that takes the fewest inside corners and partial seams. */
export const everyWayUpTo = 9;
/**
 * How freely chords are tried, from every chord of every unit to the most even one alone: the first that meets no more
 * forms than its figure counts. Our own figures: the fewest units for some 30 ms of computing at 200 patches.
 */
const thrift: readonly Thrift[] = [
  { forms: 450, chords: Number.POSITIVE_INFINITY, small: 0 },
  { forms: 900, chords: 2, small: 6, upTo: 120 },
  { forms: 1_000, chords: 2, small: 3 },
  { forms: 1_500, chords: 1, small: 6 },
  { forms: 3_000, chords: 1, small: 3 },
  { forms: Number.POSITIVE_INFINITY, chords: 1, small: 0 },
];

interface Thrift {
  readonly forms: number;
  /** Most even chords tried of a unit, level, upright and (where there are neither) slanted ones. */
  readonly chords: number;
  /** Units of up to so many patches have all their chords tried all the same. */
  readonly small: number;
  /** For blocks of no more patches: larger ones would meet too many forms. */
  readonly upTo?: number;
}

/** Bent seams tried for one form, and forms after which only the first is. */
const mostBent = 16;
const manyBentForms = 300;

/** @param unit patches that lie together, in rising order */
export const waysToJoin = (task: JoinTask, unit: readonly number[]): Ways => {
  if (unit.length <= everyWayUpTo)
    return grown({ task, unit, divide: leastDivisions(task), forms: Number.POSITIVE_INFINITY }) as Ways;
  for (const how of thrift) {
    if (unit.length > (how.upTo ?? unit.length)) continue;
    const ways = grown({ task, unit, divide: divideAlong(task, how), forms: how.forms });
    if (ways) return ways;
  }
  throw new Error('the last way of trying chords has no limit');
};

type Divide = (unit: UnitToJoin, forms: number) => readonly Division[];

interface UnitToJoin {
  readonly patches: readonly number[];
  readonly isConvex: boolean;
}

/** All forms from the whole block down; null when there are more than so many. */
const grown = (of: {
  readonly task: JoinTask;
  readonly unit: readonly number[];
  readonly divide: Divide;
  readonly forms: number;
}): Ways | null => {
  const { task } = of;
  const joins = new Map<number, readonly Join[]>();
  const firstUnits = new Map<number, readonly number[]>();
  const firstTurns = new Map<number, number>();
  const convex = new Set<number>();
  const waiting: number[] = [];
  const branchOf = (patches: readonly number[]): Branch => {
    if (patches.length === 1) return { patch: patches[0] as number };
    const { form, turn } = task.formOf(patches);
    if (!firstUnits.has(form)) {
      firstUnits.set(form, patches);
      firstTurns.set(form, turn);
      waiting.push(form);
    }
    return { form, turn: turn - (firstTurns.get(form) as number), patches };
  };
  branchOf(of.unit);
  const root = waiting[0] as number;
  for (let form = waiting.pop(); form !== undefined; form = waiting.pop()) {
    const patches = firstUnits.get(form) as readonly number[];
    const isConvex = convex.has(form) || task.isConvex(patches);
    const divisions = of.divide({ patches, isConvex }, joins.size);
    const ways = divisions.map((division) => joinOf(division, branchOf));
    joins.set(form, ways);
    if (firstUnits.size > of.forms) return null;
    // what a straight seam cuts off a convex unit is convex
    if (isConvex) for (const join of ways) if (isStraight(join)) for (const part of formsIn(join)) convex.add(part);
  }
  return { root, joins, firstUnits };
};

const isStraight = (join: Join): boolean => join.kind === 'seam' && join.bends === 0 && join.arcs.length === 0;

const joinOf = (division: Division, branch: (patches: readonly number[]) => Branch): Join => {
  if (division.kind === 'ring') {
    const [centre, ...arms] = division.parts;
    return { kind: 'ring', branches: [branch(centre), ...arms.map(branch)], seams: division.seams };
  }
  const { bends, line, path, arcs, length, parts } = division;
  // written out, for it is done thousands of times
  return { kind: 'seam', bends, line, path, arcs, length, branches: [branch(parts[0]), branch(parts[1])] };
};

/** Along chosen chords; where there are none, as a ring, else along the bent seams that look least trouble. */
const divideAlong =
  (task: JoinTask, how: Thrift): Divide =>
  ({ patches: unit, isConvex }, forms) => {
    const { drawing } = task;
    const splits = isConvex ? sparing({ drawing, splits: splitsOf(drawing, unit), unit, whole: task.whole }) : [];
    if (splits.length > 0)
      return chosenOf(splits, unit, how).map((split) => alongChord(chordAlong(drawing, split, unit)));
    const straight = isConvex && !task.isCurved ? [] : bentDivisions({ graph: task.graph(), unit, bends: 0 });
    // or in one curve
    if (straight.length > 0) return straight.slice(0, forms < manyBentForms ? mostBent : 1);
    const rings = ringsOf(task.graph(), unit);
    return rings.length > 0 ? rings : promising(task, unit).slice(0, forms < manyBentForms ? mostBent : 1);
  };

const chosenOf = (splits: readonly Split[], { length }: readonly number[], how: Thrift): readonly Split[] => {
  if (length <= how.small || splits.length <= how.chords) return splits.toSorted(bestFirst);
  const comesBefore = (a: Split, b: Split): boolean =>
    (Math.abs(2 * a.first - length) - Math.abs(2 * b.first - length) || bestFirst(a, b)) < 0;
  const mostEven = (lie: number): readonly Split[] => {
    const best: Split[] = [];
    for (const split of splits) {
      if (split.line.lie !== lie) continue;
      const before = best.findIndex((one) => comesBefore(split, one));
      best.splice(before < 0 ? best.length : before, 0, split);
      if (best.length > how.chords) best.pop();
    }
    return best;
  };
  const square = [0, 1].flatMap(mostEven);
  return square.length > 0 ? square : mostEven(2);
};

/** Bent seams of the fewest bends that there are, or one more: those first that leave the fewest corners in all. */
const promising = (task: JoinTask, unit: readonly number[]): readonly SeamDivision[] => {
  const graph = task.graph();
  const found: SeamDivision[] = [];
  let fewest = mostBends;
  for (let bends = 1; bends <= Math.min(fewest + 1, mostBends); bends++) {
    const divisions = bentDivisions({ graph, unit, bends });
    if (divisions.length > 0) fewest = Math.min(fewest, bends);
    found.push(...divisions);
  }
  const corners = new Map(
    found.map((division) => [
      division,
      division.parts.reduce((all, part) => all + forcedCorners(graph, part).length, division.bends),
    ]),
  );
  const cornersOf = (division: SeamDivision) => corners.get(division) as number;
  return found.sort((a, b) => cornersOf(a) - cornersOf(b) || a.bends - b.bends || bySeam(a, b));
};
