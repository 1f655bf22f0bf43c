// What is left of strips when nothing is cut beyond the demand?
import type { Job } from './job.ts';
import {
  countsOf,
  patternKey,
  patternOf,
  type StackUse,
  type StripPattern,
  type StripUse,
  stackOf,
} from './pattern.ts';

/** Takes out what is cut beyond the demand, from the least full strips first; empty strips vanish. */
export const withoutSurplus = (job: Job, strips: readonly StripUse[]): readonly StripUse[] => {
  const surplus = job.kinds.map((k) => -k.count);
  for (const { pattern, times } of strips) {
    countsOf(pattern, surplus.length).forEach((n, i) => {
      surplus[i] = (surplus[i] ?? 0) + n * times;
    });
  }
  const lean: StripUse[] = [];
  for (const { pattern, times } of [...strips].reverse()) {
    let left = times;
    while (left > 0 && countsOf(pattern, surplus.length).some((n, i) => n > 0 && (surplus[i] ?? 0) > 0)) {
      const one = leaner(job, pattern, surplus);
      left--;
      if (one.parts.length > 0) lean.push({ pattern: one, times: 1 });
    }
    if (left > 0) lean.push({ pattern, times: left });
  }
  return merged(lean);
};

/** One strip without the surplus pieces it holds; `surplus` is lowered by what was taken out. */
const leaner = (job: Job, pattern: StripPattern, surplus: number[]): StripPattern => {
  const parts: StackUse[] = [];
  for (const { stack, times } of pattern.parts) {
    for (let n = 0; n < times; n++) {
      const runs = stack.runs
        .map((run) => {
          const out = Math.min(run.times, Math.max(0, surplus[run.kind] ?? 0));
          surplus[run.kind] = (surplus[run.kind] ?? 0) - out;
          return { ...run, times: run.times - out };
        })
        .filter((run) => run.times > 0);
      if (runs.length > 0) parts.push({ stack: stackOf(job, runs), times: 1 });
    }
  }
  return patternOf(parts);
};

const merged = (strips: readonly StripUse[]): readonly StripUse[] => {
  const all = new Map<string, StripUse>();
  for (const { pattern, times } of strips) {
    const key = patternKey(pattern);
    all.set(key, { pattern, times: times + (all.get(key)?.times ?? 0) });
  }
  return [...all.values()];
};
