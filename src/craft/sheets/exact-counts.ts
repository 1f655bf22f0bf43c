// A plan may hold more pieces than were asked for; here it comes down to exactly those, and is reported in runs of equal
// strips.
import { type Job, type Kind, patternKey, type StripPattern, type StripUse, stackOf } from '#craft/strips';
import { type SheetTask, stripOn } from './fill.ts';
import type { Sheet, SheetUse } from './job.ts';
import type { PatternUse } from './restart.ts';

/** Whole sheets as long as their pieces are wanted; then sheets with some pieces less; sheets with none are not taken. */
export const exactly = (task: SheetTask, uses: readonly PatternUse[]): readonly SheetUse[] => {
  const rest = task.job.kinds.map(({ count }) => count);
  const out: SheetUse[] = [];
  for (const { pattern, times } of uses) {
    let whole = times;
    pattern.counts.forEach((n, i) => {
      if (n > 0) whole = Math.min(whole, Math.floor((rest[i] as number) / n));
    });
    if (whole > 0) {
      pattern.counts.forEach((n, i) => {
        rest[i] = (rest[i] as number) - whole * n;
      });
      out.push({ sheet: pattern.sheet, times: whole, strips: inRuns(pattern.strips) });
    }
    for (let n = whole; n < times; n++) {
      const job = { width: (task.job.sheets[pattern.sheet] as Sheet).width, kinds: task.job.kinds };
      const strips = pattern.strips.flatMap((strip) => {
        const some = lessened({ task, job, strip, rest });
        return some === null ? [] : [some];
      });
      if (strips.length > 0) out.push({ sheet: pattern.sheet, times: 1, strips: inRuns(strips) });
    }
  }
  return out;
};

const lessened = (of: {
  readonly task: SheetTask;
  readonly job: Job;
  readonly strip: StripPattern;
  readonly rest: number[];
}): StripPattern | null => {
  const { task, job, strip, rest } = of;
  const parts = strip.parts.flatMap(({ stack, times }) =>
    Array.from({ length: times }, () => {
      const runs = stack.runs.flatMap((run) => {
        const some = Math.min(run.times, rest[run.kind] as number);
        rest[run.kind] = (rest[run.kind] as number) - some;
        return some > 0 ? [{ ...run, times: some }] : [];
      });
      return runs.length > 0 ? [{ stack: stackOf(job, runs), times: 1 }] : [];
    }).flat(),
  );
  return parts.length > 0 ? stripOn(task, parts) : null;
};

/** Tallest first, equal strips together. */
const inRuns = (strips: readonly StripPattern[]): readonly StripUse[] => {
  const runs = new Map<string, StripUse>();
  for (const pattern of strips) {
    const key = patternKey(pattern);
    runs.set(key, { pattern, times: (runs.get(key)?.times ?? 0) + 1 });
  }
  return [...runs.values()].sort((a, b) => b.pattern.height - a.pattern.height);
};

export const areaLeft = (kinds: readonly Kind[], left: ArrayLike<number>): number =>
  kinds.reduce((sum, { width, height }, i) => sum + width * height * (left[i] as number), 0);
