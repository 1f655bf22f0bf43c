// In which order are strips cut? Those with the longest pieces first, strips of one height together, and of these the
// ones alike together.
import {
  alikeTogether,
  heightOf,
  type Job,
  type Kind,
  patternKey,
  type StripPattern,
  type StripUse,
  widthOf,
} from '#craft/strips';

/** Equal patterns become one entry. */
export const inCuttingOrder = (job: Job, strips: readonly StripUse[]): readonly StripUse[] => {
  const uses = alikeTogether(strips.filter(({ times }) => times > 0));
  const longest = new Map<number, number>();
  for (const { pattern } of uses)
    longest.set(pattern.height, Math.max(longestIn(job, pattern), longest.get(pattern.height) ?? 0));
  return uses
    .map((use) => ({ key: patternKey(use.pattern), use, height: use.pattern.height, own: longestIn(job, use.pattern) }))
    .sort(
      (a, b) =>
        (longest.get(b.height) as number) - (longest.get(a.height) as number) ||
        b.height - a.height ||
        b.own - a.own ||
        areaIn(job, b.use.pattern) - areaIn(job, a.use.pattern) ||
        (a.key < b.key ? -1 : 1),
    )
    .map(({ use }) => use);
};

/** Longest side of a piece. */
const longestIn = (job: Job, pattern: StripPattern): number =>
  Math.max(
    0,
    ...pattern.parts.flatMap(({ stack }) =>
      stack.runs.map(({ kind }) => Math.max((job.kinds[kind] as Kind).width, (job.kinds[kind] as Kind).height)),
    ),
  );

const areaIn = (job: Job, pattern: StripPattern): number =>
  pattern.parts.reduce(
    (all, { stack, times }) =>
      all +
      times *
        stack.runs.reduce((sum, { kind, turned, times: n }) => {
          const k = job.kinds[kind] as Kind;
          return sum + n * widthOf(k, turned) * heightOf(k, turned);
        }, 0),
    0,
  );
