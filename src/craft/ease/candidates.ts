// Which layouts might be less work than this one? The layout itself, each kind on strips of its own, and the parts of both
// on every choice of strip heights. Nothing is said of which is best.
import {
  type Job,
  ownStripsFor,
  patternKey,
  patternOf,
  type Run,
  type StackUse,
  type StripUse,
  stackKey,
  stackOf,
  withoutSurplus,
} from '#craft/strips';
import { fillings, heightChoices, onHeights, partsOf, roughLengthOn, singleParts } from './by-height.ts';
import { type Effort, effortOf } from './effort.ts';

export interface Candidate {
  readonly strips: readonly StripUse[];
  readonly effort: Effort;
}

/** Each of exactly the demand, none longer than `longest` but the first, which is the layout that was given. */
export const candidatesFor = (of: {
  readonly job: Job;
  readonly strips: readonly StripUse[];
  readonly longest: number;
}): readonly Candidate[] => {
  const { job, longest } = of;
  const known = new Set<string>();
  const all: Candidate[] = [];
  const offer = (strips: readonly StripUse[]): void => {
    const effort = effortOf(job, strips);
    if (all.length > 0 && effort.length > longest) return;
    const key = strips
      .map(({ pattern, times }) => `${times}x${patternKey(pattern)}`)
      .sort()
      .join();
    if (known.has(key)) return;
    known.add(key);
    all.push({ strips, effort });
  };
  const given = tidied(job, withoutSurplus(job, of.strips));
  offer(given);
  offer(ownStripsFor(job).filter(({ times }) => times > 0));
  for (const parts of sourcesFor(job, given))
    for (const heights of heightChoices(parts, job.width)) {
      if (roughLengthOn(parts, heights, job.width) > longest) continue;
      for (const filling of fillings) offer(onHeights({ job, parts, heights, filling }));
    }
  return all;
};

/** A search may list one kind twice in a part, and one part twice in a strip: written once, strips alike are seen to be so. */
const tidied = (job: Job, strips: readonly StripUse[]): readonly StripUse[] =>
  strips.map(({ pattern, times }) => ({
    pattern: patternOf(pattern.parts.map((part) => ({ ...part, stack: stackOf(job, togetherIn(part.stack.runs)) }))),
    times,
  }));

const togetherIn = (runs: readonly Run[]): readonly Run[] => {
  const kinds = new Map<string, Run>();
  for (const run of runs) {
    const key = `${run.kind} ${run.turned}`;
    kinds.set(key, { ...run, times: run.times + (kinds.get(key)?.times ?? 0) });
  }
  return [...kinds.values()];
};

const sourcesFor = (job: Job, strips: readonly StripUse[]): readonly (readonly StackUse[])[] => {
  const sources = [
    partsOf(strips),
    ...(['across', 'along', 'mixed'] as const)
      // a piece that lies along may be wider than the cloth only where it may not turn at all
      .map((lie) => singleParts(job, lie))
      .filter((parts) => parts.every(({ stack }) => stack.width <= job.width)),
  ];
  const bySet = new Map(sources.map((parts) => [parts.map((p) => `${p.times}x${stackKey(p.stack)}`).join(), parts]));
  return [...bySet.values()];
};
