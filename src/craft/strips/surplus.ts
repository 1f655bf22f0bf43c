// What is left of strips when nothing is cut beyond the demand?
import type { Job } from './job.ts';
import { alikeTogether, countsOf, partsWith, patternOf, type StripPattern, type StripUse } from './pattern.ts';

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
  return alikeTogether(lean);
};

/** One strip without the surplus pieces it holds; `surplus` is lowered by what was taken out. */
const leaner = (job: Job, pattern: StripPattern, surplus: number[]): StripPattern =>
  patternOf(
    partsWith(job, pattern, ({ kind, times }) => {
      const out = Math.min(times, Math.max(0, surplus[kind] ?? 0));
      surplus[kind] = (surplus[kind] ?? 0) - out;
      return times - out;
    }),
  );
