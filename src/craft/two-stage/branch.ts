// The proof: how many strips of some level or higher? Where the program takes a fraction of one, either fewer are cut or more,
// and each answer is a program of its own with a higher bound. The lowest open bound holds for all layouts.
import type { ColumnUse } from './column.ts';
import { type CoverAnswer, coverBy, type Helper } from './cover.ts';
import { dive } from './dive.ts';
import { stripsWithin } from './enumerate.ts';
import { stripCounts } from './level-bounds.ts';
import { addStopgap, type Master, pricesOf, setCeiling, setFloor, solveByColumns } from './master.ts';

/** One part of the question: so many strips at least and at most, by level. */
interface Part {
  readonly floors: Float64Array;
  readonly ceilings: Float64Array;
  readonly bound: number;
  readonly depth: number;
  readonly number: number;
  /** How often a list was too long, or the solver gave up, where nothing was left to split. */
  readonly failures: number;
}

export interface Tree {
  /** No layout is shorter than this, those already known aside. */
  readonly bound: () => number;
  /** Parts not yet answered, those given up aside. */
  readonly isOver: () => boolean;
  /** Parts looked at. */
  readonly parts: () => number;
  /** Looks at the part with the lowest bound; yields between pieces of the work. @returns a layout, when it came upon one */
  readonly advance: (limit: number) => Generator<void, readonly ColumnUse[] | null, void>;
}

/**
 * @param of.master solved, with the rows of the level bounds; changed from here on
 * @param of.round  raises a bound to a length that a layout can have
 */
export const treeFor = (of: {
  readonly master: Master;
  readonly bound: number;
  /** No layout longer than this is of interest. */
  readonly longest: number;
  readonly helper: Helper;
  readonly round: (bound: number) => number;
}): Tree => {
  const { master, round } = of;
  const root: Part = {
    floors: master.floors.slice(),
    ceilings: master.ceilings.slice(),
    bound: of.bound,
    depth: 0,
    number: 0,
    failures: 0,
  };
  addStopgap(master, stopgapCost * of.longest);
  const open: Part[] = [root];
  /** Of the parts that could be neither split nor answered. */
  let stuck = Number.POSITIVE_INFINITY;
  let count = 0;
  let numbered = 1;

  const least = (): number => open.reduce((b, p) => Math.min(b, p.bound), stuck);

  function* advance(limit: number): Generator<void, readonly ColumnUse[] | null, void> {
    const part = takeLowest(open);
    if (part === null) return null;
    count++;
    for (let level = 0; level < part.floors.length; level++) {
      setFloor(master, level, part.floors[level] as number);
      setCeiling(master, level, part.ceilings[level] as number);
    }
    let bound = part.bound;
    let status: 'whole' | 'cut' | 'infeasible' = 'cut';
    for (let rounds = 0; rounds < 60; rounds++) {
      const relaxed = solveByColumns(master, { rounds: 4, cutoff: limit + 1e-6 });
      status = relaxed.status;
      bound = Math.max(bound, relaxed.bound);
      if (status !== 'cut' || bound > limit + 1e-6) break;
      yield;
    }
    bound = round(bound);
    const again: Part = { ...part, bound };
    if (bound > limit) {
      open.push(again);
      return null;
    }
    if (status !== 'whole') {
      stuck = Math.min(stuck, bound);
      return null;
    }
    // small programs first: more strips and more of the solver's steps as the parts become many
    const effort = (1 + count / 20) * 3 ** part.failures;
    const answer = answerByList({
      master,
      helper: of.helper,
      limit,
      most: 250 * Math.sqrt(effort),
      nodes: 20 * effort,
    });
    if (answer.status === 'none') {
      open.push({ ...again, bound: round(limit + 0.5) });
      return null;
    }
    if (answer.status === 'found') {
      // what is left of this part is no shorter than the best of its list
      open.push({ ...again, bound: Math.max(bound, round(answer.bound)) });
      return answer.uses;
    }
    yield;
    const level = levelToSplit(master);
    if (level === null) {
      if (part.failures < mostFailures) open.push({ ...again, failures: part.failures + 1 });
      else stuck = Math.min(stuck, bound);
      return yield* dive({ master, cutoff: limit, tries: 3, choices: 40 });
    }
    const strips = stripCounts(master)[level] as number;
    const fewer = part.ceilings.slice();
    fewer[level] = Math.floor(strips);
    const more = part.floors.slice();
    more[level] = Math.ceil(strips);
    open.push({ floors: part.floors, ceilings: fewer, bound, depth: part.depth + 1, number: numbered++, failures: 0 });
    open.push({ floors: more, ceilings: part.ceilings, bound, depth: part.depth + 1, number: numbered++, failures: 0 });
    if ((count & (count - 1)) === 0) return yield* dive({ master, cutoff: limit, tries: 3, choices: 1000 });
    return null;
  }

  return { bound: least, isOver: () => open.length === 0, parts: () => count, advance };
};

const mostFailures = 4;

/** So many times the longest length: a thousandth of the stopgap is dearer than any layout. */
const stopgapCost = 1e4;

const takeLowest = (open: Part[]): Part | null => {
  let at = -1;
  for (let p = 0; p < open.length; p++) {
    const part = open[p] as Part;
    const best = open[at];
    const isFirst =
      best === undefined ||
      part.bound < best.bound ||
      (part.bound === best.bound &&
        (part.depth > best.depth || (part.depth === best.depth && part.number > best.number)));
    if (isFirst) at = p;
  }
  return at < 0 ? null : (open.splice(at, 1)[0] as Part);
};

/** The level whose count is most in between, weighed by what a strip more would cost. */
const levelToSplit = (master: Master): number | null => {
  const counts = stripCounts(master);
  let best: number | null = null;
  let most = 0;
  for (let level = 0; level < counts.length; level++) {
    const x = counts[level] as number;
    const between = Math.min(x - Math.floor(x), Math.ceil(x) - x);
    if (between < 1e-5) continue;
    const step = (master.task.heights[level] as number) - (level > 0 ? (master.task.heights[level - 1] as number) : 0);
    const weight = between * (1 + step);
    if (weight > most) {
      most = weight;
      best = level;
    }
  }
  return best;
};

/** Lists all strips that a layout within the limit can hold, and asks the solver for the best of them. */
const answerByList = (of: {
  readonly master: Master;
  readonly helper: Helper;
  readonly limit: number;
  readonly most: number;
  readonly nodes: number;
}): CoverAnswer => {
  const { master, helper, limit } = of;
  if (helper.solver === null || helper.owed > 0) return { status: 'stopped' };
  const { task, left } = master;
  const prices = new Float64Array(task.kinds);
  const costs = new Float64Array(task.heights.length);
  const value = pricesOf(master, prices, costs);
  const slack = limit - value;
  const columns = stripsWithin({ task, prices, costs, left, slack, most: of.most });
  if (columns === null) return { status: 'stopped' };
  if (columns.length === 0) return { status: 'none' };
  const cover = { task, columns, left, floors: master.floors, ceilings: master.ceilings, cutoff: limit };
  return coverBy(helper, cover, of.nodes);
};
