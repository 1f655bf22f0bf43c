// A plan may hold more pieces than were asked for; here it comes down to exactly those, and is reported in runs of equal
// strips.
import { alikeTogether, type Job, type Kind, partsWith, type StripPattern, type StripUse } from '#craft/strips';
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
  const parts = partsWith(job, strip, ({ kind, times }) => {
    const some = Math.min(times, rest[kind] as number);
    rest[kind] = (rest[kind] as number) - some;
    return some;
  });
  return parts.length > 0 ? stripOn(task, parts) : null;
};

/** Tallest first, equal strips together. */
const inRuns = (strips: readonly StripPattern[]): readonly StripUse[] =>
  alikeTogether(strips.map((pattern) => ({ pattern, times: 1 }))).toSorted(
    (a, b) => b.pattern.height - a.pattern.height,
  );

export const areaLeft = (kinds: readonly Kind[], left: ArrayLike<number>): number =>
  kinds.reduce((sum, { width, height }, i) => sum + width * height * (left[i] as number), 0);
