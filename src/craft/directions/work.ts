// How much work is it to cut as the directions say? The same count as for layouts (docs/formulas.md#effort), over whatever is cut:
// a cloth, its ends and what lies on the fold count together.
import type { Strip } from '#craft/cutting';
import type { StripCut } from './strip-cuts.ts';

/** Strokes that cut squares apart are not counted. */
export interface CutEffort {
  readonly heights: number;
  readonly settings: number;
  readonly patterns: number;
  readonly strokes: number;
}

/** As much of a part of the directions as its work depends on. */
interface Worked {
  readonly count: number;
  readonly heights: readonly { readonly height: number; readonly patterns: readonly WorkedPattern[] }[];
}

interface WorkedPattern {
  readonly count: number;
  readonly strip: Strip;
  readonly cuts: readonly StripCut[];
}

/** @source docs/formulas.md#effort */
export const workOf = (parts: readonly Worked[]): CutEffort => {
  const heights = parts.flatMap((part) => part.heights);
  const patterns = heights.flatMap((height) => height.patterns);
  const measures = [
    ...heights.map(({ height }) => height),
    ...patterns.flatMap(({ cuts }) => cuts.flatMap(measuresOf)),
  ];
  return {
    heights: new Set(heights.map(({ height }) => height)).size,
    settings: new Set(measures.map((measure) => Math.round(measure * 1e6))).size,
    patterns: new Set(patterns.map(({ strip }) => sizesIn(strip))).size,
    strokes: parts.reduce(
      (all, part) => all + part.count * part.heights.flatMap((height) => height.patterns).reduce(addStrokes, 0),
      0,
    ),
  };
};

const measuresOf = (cut: StripCut): readonly number[] => {
  if (cut.cut === 'narrow') return [cut.to];
  const inside = cut.runs.flatMap((run) => [
    ...(run.below > 0 ? [run.cut[1]] : []),
    ...(run.trimmed ? [run.cut[0]] : []),
  ]);
  return cut.strokes > 0 ? [cut.width, ...inside] : inside;
};

/** The strip's own, and those within it. */
const addStrokes = (sum: number, { count, cuts }: WorkedPattern): number =>
  sum + count * cuts.reduce((all, cut) => all + strokesOf(cut), 1);

const strokesOf = (cut: StripCut): number =>
  cut.cut === 'narrow'
    ? 1
    : cut.strokes + cut.count * cut.runs.reduce((all, { below, trimmed }) => all + below + (trimmed ? 1 : 0), 0);

/** What a strip is cut into, whatever the pieces are for. */
const sizesIn = ({ parts }: Strip): string =>
  JSON.stringify(parts.map(({ width, pieces }) => [width, pieces.map(({ cut }) => cut)]));
