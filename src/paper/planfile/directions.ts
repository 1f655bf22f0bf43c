// The directions for a cloth in the plan file: what is cut in which order, and what is left.
import type { ClothDirections, HeightCut, PatternCut, StripCut } from '#craft/directions';

export const directionsEntry = ({ parts, effort, remnants, area }: ClothDirections): unknown => ({
  effort,
  parts: parts.map(({ count, sheet, heights, end }) => ({
    count,
    ...(sheet === null ? {} : { sheet }),
    heights: heights.map(heightEntry),
    end: end && { size: end.size, remnant: end.remnant },
  })),
  remnants: remnants.map(({ name, from, size, count }) => ({ name, from, size, count })),
  area,
});

const heightEntry = ({ height, count, patterns }: HeightCut): unknown => ({
  height,
  count,
  patterns: patterns.map(patternEntry),
});

const patternEntry = ({ number, count, cuts, offcuts }: PatternCut): unknown => ({
  number,
  count,
  cuts: cuts.map(cutEntry),
  remnants: offcuts.flatMap(({ remnant, at, size }) => (remnant === null ? [] : [{ name: remnant, at, size }])),
});

const cutEntry = (cut: StripCut): unknown =>
  cut.cut === 'narrow'
    ? { cut: cut.cut, at: cut.at, to: cut.to }
    : {
        cut: cut.cut,
        at: cut.at,
        width: cut.width,
        count: cut.count,
        strokes: cut.strokes,
        runs: cut.runs.map(({ of, cut: size, count, below, trimmed }) => ({ of, cut: size, count, below, trimmed })),
      };
