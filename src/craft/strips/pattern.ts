// One way to fill a strip, and how often it is cut: strips are counted, pieces are not drawn one by one.
import type { Job, Kind } from './job.ts';

/** So many pieces of one kind, one below the other. */
export interface Run {
  readonly kind: number;
  readonly turned: boolean;
  readonly times: number;
}

/** Pieces one below the other: a part of a strip. */
export interface Stack {
  readonly width: number;
  readonly height: number;
  readonly runs: readonly Run[];
}

export interface StackUse {
  readonly stack: Stack;
  readonly times: number;
}

export interface StripPattern {
  readonly height: number;
  readonly parts: readonly StackUse[];
}

export interface StripUse {
  readonly pattern: StripPattern;
  readonly times: number;
}

export const widthOf = (kind: Kind, turned: boolean): number => (turned ? kind.height : kind.width);
export const heightOf = (kind: Kind, turned: boolean): number => (turned ? kind.width : kind.height);

/** A stack of these runs; widest first, so that each cut lies inside the one before. */
export const stackOf = (job: Job, runs: readonly Run[]): Stack => {
  let width = 0;
  let height = 0;
  for (const run of runs) {
    const kind = job.kinds[run.kind] as Kind;
    width = Math.max(width, widthOf(kind, run.turned));
    height += run.times * heightOf(kind, run.turned);
  }
  const wide = (r: Run): number => widthOf(job.kinds[r.kind] as Kind, r.turned);
  const tall = (r: Run): number => heightOf(job.kinds[r.kind] as Kind, r.turned);
  return { width, height, runs: [...runs].sort((a, b) => wide(b) - wide(a) || tall(b) - tall(a) || a.kind - b.kind) };
};

/** A strip of these parts, as high as the tallest; tallest parts first, equal ones together. */
export const patternOf = (parts: readonly StackUse[]): StripPattern => {
  const together = new Map<string, StackUse>();
  for (const part of parts) {
    if (part.times === 0) continue;
    const key = stackKey(part.stack);
    together.set(key, { stack: part.stack, times: part.times + (together.get(key)?.times ?? 0) });
  }
  const sorted = [...together.entries()].sort(
    ([ka, a], [kb, b]) => b.stack.height - a.stack.height || b.stack.width - a.stack.width || (ka < kb ? -1 : 1),
  );
  return { height: sorted[0]?.[1].stack.height ?? 0, parts: sorted.map(([, part]) => part) };
};

export const stackKey = (stack: Stack): string =>
  stack.runs.map((r) => `${r.kind}${r.turned ? 't' : 'f'}${r.times}`).join('+');

export const patternKey = (pattern: StripPattern): string =>
  pattern.parts.map((p) => `${p.times}*${stackKey(p.stack)}`).join('|');

/** Pieces of each kind that one such strip gives. */
export const countsOf = (pattern: StripPattern, kinds: number): number[] => {
  const counts = new Array<number>(kinds).fill(0);
  for (const { stack, times } of pattern.parts)
    for (const run of stack.runs) counts[run.kind] = (counts[run.kind] ?? 0) + run.times * times;
  return counts;
};

export const lengthOf = (strips: readonly StripUse[]): number =>
  strips.reduce((all, s) => all + s.times * s.pattern.height, 0);

/** The same strip for a list of kinds in which each has another place. */
export const renamedIn = (pattern: StripPattern, placeOf: (kind: number) => number): StripPattern => ({
  ...pattern,
  parts: pattern.parts.map(({ stack, times }) => ({
    stack: { ...stack, runs: stack.runs.map((run) => ({ ...run, kind: placeOf(run.kind) })) },
    times,
  })),
});

/** Strips that are cut alike become one entry, where the first of them was. */
export const alikeTogether = (strips: readonly StripUse[]): readonly StripUse[] => {
  const all = new Map<string, StripUse>();
  for (const { pattern, times } of strips) {
    const key = `${pattern.height}:${patternKey(pattern)}`;
    all.set(key, { pattern, times: times + (all.get(key)?.times ?? 0) });
  }
  return [...all.values()];
};

/** The parts of a strip one by one, with so many pieces of each run as are told for it; those left empty vanish. */
export const partsWith = (job: Job, pattern: StripPattern, timesOf: (run: Run) => number): readonly StackUse[] =>
  pattern.parts.flatMap(({ stack, times }) =>
    Array.from({ length: times }, () => {
      const runs = stack.runs.map((run) => ({ ...run, times: timesOf(run) })).filter((run) => run.times > 0);
      return runs.length > 0 ? [{ stack: stackOf(job, runs), times: 1 }] : [];
    }).flat(),
  );
