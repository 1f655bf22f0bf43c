// The proof: how many strips of some level or higher? Where the program takes a fraction of one, either fewer are cut or more,
// and each answer is a program of its own with a higher bound. The lowest open bound holds for all layouts.
import type { SolverLimits } from '#craft/strips';
import type { ColumnUse } from './column.ts';
import { type CoverAnswer, coverBy, type Helper, isBusy } from './cover.ts';
import { dive } from './dive.ts';
import { stripsWithin } from './enumerate.ts';
import { stripCounts } from './level-bounds.ts';
import { addStopgap, type Master, pricesOf, type Relaxed, setCeiling, setFloor, solveByColumns } from './master.ts';
import { coverByTrial, type Trial } from './trial.ts';

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
  const { master, helper, round } = of;
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
  /** Cannot be split, and wait for the solver to be free. */
  const waiting: Part[] = [];
  /** Of the parts that could be neither split nor answered. */
  let stuck = Number.POSITIVE_INFINITY;
  let count = 0;
  let numbered = 1;

  const least = (): number => [...open, ...waiting].reduce((b, p) => Math.min(b, p.bound), stuck);

  const answered = (part: Part, answer: CoverAnswer, upTo: number): readonly ColumnUse[] | null => {
    // what is left of the part is no shorter than the best of its list
    const bound = answer.status === 'found' ? round(answer.bound) : round(upTo + 0.5);
    open.push({ ...part, bound: Math.max(part.bound, bound) });
    return answer.status === 'found' ? answer.uses : null;
  };

  /** The program takes whole numbers of strips of every level: is there a layout as short as it? */
  const decide = (part: Part, limit: number): readonly ColumnUse[] | null => {
    const list = listWithin(master, part.bound, longestTrialList);
    const trial = list === null ? stopped : coverByTrial({ ...list, steps: trialSteps });
    if (trial.status === 'found') return answered(part, trial, part.bound);
    if (trial.status === 'none') {
      const bound = round(part.bound + 0.5);
      if (bound > limit) open.push({ ...part, bound });
      else open.push(...otherCounts({ ...part, bound }));
      return null;
    }
    if (isBusy(helper)) {
      waiting.push(part);
      return null;
    }
    const answer = answerByList({ master, helper, limit: part.bound, ...effortFor(part) });
    if (answer.status !== 'stopped') return answered(part, answer, part.bound);
    if (part.failures < mostFailures) open.push({ ...part, failures: part.failures + 1 });
    else stuck = Math.min(stuck, part.bound);
    return null;
  };

  /** Small programs first: more strips and more of the solver's steps as the parts become many. */
  const effortFor = ({ failures }: Part): { readonly most: number; readonly limits: SolverLimits } => {
    const effort = (1 + count / 20) * 3 ** failures;
    return {
      most: Math.min(longestList, 250 * Math.sqrt(effort)),
      limits: { nodes: Math.floor(20 * effort), work: Math.min(mostWork, leastWork * effort) },
    };
  };

  /** The part without the counts that the program has now: as above a level, and at the level fewer or more. */
  const otherCounts = (part: Part): readonly Part[] => {
    const counts = stripCounts(master).map(Math.round);
    const floors = part.floors.slice();
    const ceilings = part.ceilings.slice();
    const parts: Part[] = [];
    for (let level = counts.length - 1; level >= 0; level--) {
      const now = counts[level] as number;
      // a count is at least that of the level above
      const above = counts[level + 1] ?? 0;
      if (now > Math.max(above, floors[level] as number))
        parts.push(partOf(part, { floors: floors.slice(), ceilings: withAt(ceilings, level, now - 1) }));
      if (now < (ceilings[level] as number))
        parts.push(partOf(part, { floors: withAt(floors, level, now + 1), ceilings: ceilings.slice() }));
      floors[level] = now;
      ceilings[level] = now;
    }
    return parts;
  };

  const partOf = (part: Part, limits: Pick<Part, 'floors' | 'ceilings'>): Part => ({
    ...limits,
    bound: part.bound,
    depth: part.depth + 1,
    number: numbered++,
    failures: 0,
  });

  function* advance(limit: number): Generator<void, readonly ColumnUse[] | null, void> {
    if (!isBusy(helper)) open.push(...waiting.splice(0));
    const lowest = takeLowest(open);
    if (lowest === null) return null;
    count++;
    const relaxed = yield* relaxedFor(master, lowest, limit);
    const part: Part = { ...lowest, bound: round(relaxed.bound) };
    if (part.bound > limit) {
      open.push(part);
      return null;
    }
    if (relaxed.status !== 'whole') {
      stuck = Math.min(stuck, part.bound);
      return null;
    }
    const level = levelToSplit(master);
    if (level === null) return decide(part, limit);
    const answer = answerByList({ master, helper, limit, ...effortFor(part) });
    if (answer.status !== 'stopped') return answered(part, answer, limit);
    const strips = stripCounts(master)[level] as number;
    const { floors, ceilings } = part;
    open.push(partOf(part, { floors, ceilings: withAt(ceilings, level, Math.floor(strips)) }));
    open.push(partOf(part, { floors: withAt(floors, level, Math.ceil(strips)), ceilings }));
    if ((count & (count - 1)) !== 0) return null;
    yield;
    return yield* dive({ master, cutoff: limit, tries: 3, choices: choicesInPart });
  }

  return { bound: least, isOver: () => open.length === 0 && waiting.length === 0, parts: () => count, advance };
};

const stopped: CoverAnswer = { status: 'stopped' };

const withAt = (counts: Float64Array, level: number, count: number): Float64Array => {
  const changed = counts.slice();
  changed[level] = count;
  return changed;
};

/** The program of a part, solved as far as it matters; its bound is no lower than the part's. */
function* relaxedFor(
  master: Master,
  part: Part,
  limit: number,
): Generator<void, Pick<Relaxed, 'status' | 'bound'>, void> {
  for (let level = 0; level < part.floors.length; level++) {
    setFloor(master, level, part.floors[level] as number);
    setCeiling(master, level, part.ceilings[level] as number);
  }
  let { bound } = part;
  for (let rounds = 0; ; rounds++) {
    const relaxed = solveByColumns(master, { rounds: 4, cutoff: limit + 1e-6 });
    bound = Math.max(bound, relaxed.bound);
    if (relaxed.status !== 'cut' || bound > limit + 1e-6 || rounds === mostRounds) return { ...relaxed, bound };
    yield;
  }
}

const mostRounds = 60;

/** Turning back now and then included. */
const choicesInPart = 40;

/** A list that is tried out rather than given to the solver, and how far: about 2 ms. */
const longestTrialList = 200;
const trialSteps = 5000;

const mostFailures = 4;

/** Enough for what the solver answers at all on its list; more, up to the most, as the parts become many. About 80 and 300 ms. */
const leastWork = 400;
const mostWork = 1600;
/** A list of thousands keeps the solver busy before its first step. */
const longestList = 700;

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

/** All strips that a layout of the part within the limit can hold; null when they are too many. */
const listWithin = (master: Master, limit: number, most: number): Omit<Trial, 'steps'> | null => {
  const { task, left } = master;
  const prices = new Float64Array(task.kinds);
  const costs = new Float64Array(task.heights.length);
  const slack = limit - pricesOf(master, prices, costs);
  const columns = stripsWithin({ task, prices, costs, left, slack, most });
  return columns === null ? null : { task, columns, left, prices, costs, slack, cutoff: limit };
};

/** Asks the solver for the best layout of such a list. */
const answerByList = (of: {
  readonly master: Master;
  readonly helper: Helper;
  readonly limit: number;
  readonly most: number;
  readonly limits: SolverLimits;
}): CoverAnswer => {
  const { master, helper, limit } = of;
  if (helper.solver === null || isBusy(helper)) return stopped;
  const list = listWithin(master, limit, of.most);
  if (list === null) return stopped;
  if (list.columns.length === 0) return { status: 'none' };
  return coverBy(helper, { ...list, floors: master.floors, ceilings: master.ceilings }, of.limits);
};
