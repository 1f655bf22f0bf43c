// Which of two layouts is better for a person with a rotary cutter? First the shorter; then fewer strip heights to
// set the ruler to, then fewer cuts.
import type { Job, Kind } from '#craft/strips';
import { heightOf, lengthOf, type StripPattern, type StripUse, widthOf } from '#craft/strips';

export interface Effort {
  readonly length: number;
  readonly heights: number;
  readonly cuts: number;
}

export const effortOf = (job: Job, strips: readonly StripUse[]): Effort => ({
  length: lengthOf(strips),
  heights: new Set(strips.map((s) => s.pattern.height)).size,
  cuts: strips.reduce((all, s) => all + s.times * cutsIn(job, s.pattern), 0),
});

/** Below zero when a is the better one. */
export const compareEffort = (a: Effort, b: Effort): number =>
  a.length - b.length || a.heights - b.heights || a.cuts - b.cuts;

/** Blade strokes for one strip: the strip itself, each part, each piece below another, and trims. */
const cutsIn = (job: Job, pattern: StripPattern): number => {
  let cuts = 1;
  for (const { stack, times } of pattern.parts) {
    let pieces = 0;
    let trims = 0;
    for (const run of stack.runs) {
      pieces += run.times;
      if (widthOf(job.kinds[run.kind] as Kind, run.turned) < stack.width) trims += run.times;
    }
    cuts += times * (1 + pieces - (stack.height === pattern.height ? 1 : 0) + trims);
  }
  return cuts;
};

/** Order of cutting: tallest strips first, equal heights together, fuller strips before emptier ones. */
export const inCuttingOrder = (job: Job, strips: readonly StripUse[]): readonly StripUse[] => {
  const area = (p: StripPattern): number =>
    p.parts.reduce(
      (all, { stack, times }) =>
        all +
        times *
          stack.runs.reduce((sum, r) => {
            const k = job.kinds[r.kind] as Kind;
            return sum + r.times * widthOf(k, r.turned) * heightOf(k, r.turned);
          }, 0),
      0,
    );
  return strips
    .map((s, i) => ({ s, i, area: area(s.pattern) }))
    .sort((a, b) => b.s.pattern.height - a.s.pattern.height || b.area - a.area || a.i - b.i)
    .map(({ s }) => s);
};
