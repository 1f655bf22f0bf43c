// Among layouts of at most this length, which is the least work for a person? And what would less work cost in cloth?
// Searches among rearrangements of one layout and strips that are known: nothing is proven least.
import {
  type IntegerSolver,
  type Job,
  ownStripsFor,
  patternKey,
  type StripPattern,
  type StripUse,
} from '#craft/strips';
import { type Candidate, candidatesFor } from './candidates.ts';
import { inCuttingOrder } from './cutting-order.ts';
import { compareEase, type Effort, effortOf } from './effort.ts';
import { fewestOf } from './fewest.ts';

export interface EaseTask {
  readonly job: Job;
  /** A layout of at least the demand. */
  readonly strips: readonly StripUse[];
  /** More strips that may be used. */
  readonly pool?: readonly StripPattern[];
  readonly solver: IntegerSolver | null;
}

/**
 * Strips of exactly the demand, in cutting order, no more work than those given: fewest heights, then measures on the
 * ruler, then ways to fill a strip, then strokes.
 *
 * @returns no longer than `longest`, or than the given layout where that is longer
 */
export const eased = (task: EaseTask & { readonly longest: number }): readonly StripUse[] =>
  easedFrom(task, candidatesFor(task)).strips;

export interface Rung {
  readonly strips: readonly StripUse[];
  readonly effort: Effort;
  /** Each kind lies on strips of its own, as most printed patterns have it. */
  readonly own: boolean;
}

/** Rungs of a ladder at most. */
const mostRungs = 4;

/**
 * Layouts that are ever less work and ever longer: the least work within each of the given lengths, and each kind on
 * its own strips; of those, the ones that no other is both shorter and less work than. At most four.
 *
 * @param longests lengths, the least first
 * @param hardest  index of the length at which the solver is asked too: it costs many times as much as all else
 */
export const easeLadder = (
  task: EaseTask & { readonly longests: readonly number[]; readonly hardest: number },
): readonly Rung[] => {
  const { job, longests } = task;
  const candidates = candidatesFor({ ...task, longest: Math.max(0, ...longests) });
  const own = inCuttingOrder(job, ownStripsFor(job));
  const isOwn = sameStripsAs(own);
  const rungs = longests.map((longest, i): Rung => {
    const solver = i === task.hardest ? task.solver : null;
    const { strips, effort } = easedFrom({ ...task, longest, solver }, candidates);
    return { strips, effort, own: isOwn(strips) };
  });
  const ladder = rising([...rungs, { strips: own, effort: effortOf(job, own), own: true }]);
  return ladder.length <= mostRungs ? ladder : [...ladder.slice(0, mostRungs - 1), ladder.at(-1) as Rung];
};

const sameStripsAs = (own: readonly StripUse[]): ((strips: readonly StripUse[]) => boolean) => {
  const text = (strips: readonly StripUse[]): string =>
    strips.map(({ pattern, times }) => `${times}x${patternKey(pattern)}`).join();
  const ownText = text(own);
  return (strips) => text(strips) === ownText;
};

/** From the shortest on, whatever is less work than all before it. */
const rising = (rungs: readonly Rung[]): readonly Rung[] => {
  const kept: Rung[] = [];
  for (const rung of [...rungs].sort((a, b) => a.effort.length - b.effort.length || compareEase(a.effort, b.effort))) {
    const before = kept.at(-1);
    if (before === undefined || compareEase({ ...rung.effort, length: 0 }, { ...before.effort, length: 0 }) < 0)
      kept.push(rung);
  }
  return kept;
};

const easedFrom = (
  { job, pool, longest, solver }: EaseTask & { readonly longest: number },
  candidates: readonly Candidate[],
): Candidate => {
  const [given, ...others] = candidates as readonly [Candidate, ...Candidate[]];
  const allowed = [given, ...others.filter(({ effort }) => effort.length <= longest)];
  const better = (a: Candidate, b: Candidate): Candidate => (compareEase(b.effort, a.effort) < 0 ? b : a);
  let best = allowed.reduce(better);
  if (solver !== null && job.kinds.length > 0)
    for (const strips of fewestOf({ job, patterns: patternsFrom(allowed, pool ?? []), longest, solver })) {
      const found = { strips, effort: effortOf(job, strips) };
      if (found.effort.length > longest || compareEase(found.effort, best.effort) >= 0) continue;
      best = found;
      break;
    }
  return { strips: inCuttingOrder(job, best.strips), effort: best.effort };
};

/** Patterns a program is made of, at most. */
const mostPatterns = 80;

/** Of the given layout, then of the least work on, then those of the pool. */
const patternsFrom = (candidates: readonly Candidate[], pool: readonly StripPattern[]): readonly StripPattern[] => {
  const [given, ...others] = candidates as readonly [Candidate, ...Candidate[]];
  const order = [given, ...others.toSorted((a, b) => compareEase(a.effort, b.effort))];
  const all = new Map<string, StripPattern>();
  for (const pattern of [...order.flatMap(({ strips }) => strips.map((s) => s.pattern)), ...pool]) {
    if (all.size >= mostPatterns) break;
    all.set(patternKey(pattern), pattern);
  }
  return [...all.values()];
};
