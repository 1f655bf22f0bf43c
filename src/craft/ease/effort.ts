// How much work is a layout for a person with a rotary cutter? Strip heights, measures to set the ruler to, ways to fill a
// strip, strokes of the blade. Squares that are cut apart corner to corner take the same strokes in every layout: not counted.
import { heightOf, type Job, type Kind, lengthOf, type StripPattern, type StripUse, widthOf } from '#craft/strips';

export interface Effort {
  readonly length: number;
  /** Different strip heights. */
  readonly heights: number;
  /** Different measures that the ruler is set to, for strips and within them. */
  readonly settings: number;
  /** Different ways to fill a strip. */
  readonly patterns: number;
  readonly strokes: number;
}

/** @source docs/formulas.md#effort */
export const effortOf = (job: Job, strips: readonly StripUse[]): Effort => {
  const measures = new Set<number>();
  const patterns = new Set<string>();
  const heights = new Set<number>();
  let strokes = 0;
  for (const { pattern, times } of strips) {
    if (times === 0) continue;
    const cuts = cutsIn(job, pattern);
    for (const measure of cuts.measures) measures.add(measure);
    patterns.add(sizesIn(job, pattern));
    heights.add(pattern.height);
    strokes += times * cuts.strokes;
  }
  return {
    length: lengthOf(strips),
    heights: heights.size,
    settings: measures.size,
    patterns: patterns.size,
    strokes,
  };
};

/** What a strip is cut into, whatever the pieces are called: equal neighbours counted. */
const sizesIn = (job: Job, { parts }: StripPattern): string =>
  counted(
    parts.map(({ stack, times }) => [
      counted(
        stack.runs.map(({ kind: index, turned, times: n }) => {
          const kind = job.kinds[index] as Kind;
          return [`${widthOf(kind, turned)}x${heightOf(kind, turned)}`, n];
        }),
      ),
      times,
    ]),
  );

const counted = (all: readonly (readonly [text: string, times: number])[]): string => {
  let said = '';
  let text = '';
  let times = 0;
  for (const [next, n] of all) {
    if (next === text) times += n;
    else {
      said += `${times}*${text};`;
      [text, times] = [next, n];
    }
  }
  return `[${said}${times}*${text}]`;
};

/** Below zero when a is less work, whatever its length; the shorter of equal ones. */
export const compareEase = (a: Effort, b: Effort): number =>
  a.heights - b.heights ||
  a.settings - b.settings ||
  a.patterns - b.patterns ||
  a.strokes - b.strokes ||
  a.length - b.length;

/** Below zero when a is the better one: the shorter, then the one that is less work. */
export const compareEffort = (a: Effort, b: Effort): number => a.length - b.length || compareEase(a, b);

export interface StripCuts {
  readonly strokes: number;
  /** The strip's own height first; one may stand there twice. */
  readonly measures: readonly number[];
}

/**
 * Strokes for one strip and the measures they are cut at: the strip itself; where parts to come are lower
 * (`partsToNarrow`), one stroke that narrows the rest of the strip; one for each part, but for the last where it ends with the cloth; in a
 * part one below each piece that does not end with the strip, and one for each run of pieces narrower than the part.
 *
 * @source docs/formulas.md#effort
 */
export const cutsIn = (job: Job, pattern: StripPattern): StripCuts => {
  const measures = [pattern.height];
  let strokes = 1;
  let rest = pattern.height;
  let across = 0;
  const { parts } = pattern;
  parts.forEach(({ stack, times }, i) => {
    const toCome = parts.slice(i);
    const tallest = Math.max(...toCome.map((p) => p.stack.height));
    const least = partsToNarrow(rest, tallest);
    if (tallest < rest && toCome.reduce((n, p) => n + (p.stack.height >= least ? p.times : 0), 0) >= 2) {
      strokes++;
      measures.push(tallest);
      rest = tallest;
    }
    across += times * stack.width;
    const isLast = i === parts.length - 1 && across === job.width;
    const cuts = isLast ? times - 1 : times;
    if (cuts > 0) measures.push(stack.width);
    const inside = cutsInPart(job, stack, rest);
    strokes += cuts + times * inside.strokes;
    measures.push(...inside.measures);
  });
  return { strokes, measures };
};

/**
 * How high two parts to come must be for the rest of their strip to be narrowed to the tallest of them. For one alone a stroke
 * within it does the same, at a measure that the ruler is set to already; where at least half falls off, it stays whole.
 *
 * @returns in the unit of the heights; a billionth is no difference
 * @source docs/formulas.md#effort
 */
export const partsToNarrow = (rest: number, tallest: number): number =>
  2 * tallest <= rest + 1e-9 ? 0 : tallest - 1e-9;

const cutsInPart = (job: Job, stack: StripPattern['parts'][number]['stack'], rest: number): StripCuts => {
  const measures: number[] = [];
  let strokes = 0;
  let down = 0;
  let before = stack.width;
  for (const run of stack.runs) {
    const kind = job.kinds[run.kind] as Kind;
    const [width, height] = [widthOf(kind, run.turned), heightOf(kind, run.turned)];
    down += run.times * height;
    const below = down === rest ? run.times - 1 : run.times;
    if (below > 0) measures.push(height);
    strokes += below;
    if (width < stack.width && width !== before) {
      strokes++;
      measures.push(width);
    }
    before = width;
  }
  return { strokes, measures };
};
