// Which lengths of a block must fall on a mark of the ruler for it to come out as drawn? Rectangles and squares
// are sewn as they are cut, so their cut sides; triangles are trimmed to the grid, so their finished sides along it.
// Slanted rectangles, templates and whatever has a curved side are cut to a line, not to a mark, and ask for nothing here.
import type { CutRule } from '#craft/cutting';
import { type DraftedBlock, outlineOf } from '#craft/drafting';
import { cornerTolerance } from '#craft/limits';
import { type Length, length, toNearestMark } from '#craft/measure';
import type { Point, Polygon } from '#ground/plane';

/** A length that grows with the block: `finished` at the block's own size, and what is added for the seams. */
export interface RuledFigure {
  readonly finished: Length;
  readonly added: Length;
}

/** Each once; the block's own sides, unfinished, are in it. */
export const ruledFigures = (block: DraftedBlock, rule: CutRule): readonly RuledFigure[] => {
  const both = length(2 * rule.seam);
  const figures = new Map<string, RuledFigure>();
  const take = (finished: number, added: Length): void => {
    figures.set(`${finished.toFixed(9)} ${added}`, { finished: length(finished), added });
  };
  for (const side of block.size) take(side, both);
  const slack = cornerTolerance * Math.max(...block.size);
  for (const patch of block.patches) {
    if (patch.arcs !== undefined) continue;
    const outline = outlineOf(patch, slack);
    const level = sidesAlongGrid(outline);
    if (level === null) continue;
    for (const side of level.sides) take(side, level.isTrimmed ? length(0) : both);
  }
  return [...figures.values()];
};

/** Whether every figure is on a mark when the block is made `scale` times as large. */
export const fitsRuler = (figures: readonly RuledFigure[], rule: CutRule, scale = 1): boolean =>
  figures.every(({ finished, added }) => toNearestMark(length(finished * scale + added), rule.ruler).way === 'on');

/** Null where no rule of this room holds for the shape. */
const sidesAlongGrid = (
  outline: Polygon,
): { readonly sides: readonly number[]; readonly isTrimmed: boolean } | null => {
  const sides = outline.map((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    return { along: alongAxis(a, b), length: Math.hypot(b.x - a.x, b.y - a.y) };
  });
  const straight = sides.filter(({ along }) => along).map((side) => side.length);
  if (outline.length === 3 && straight.length > 0) return { sides: straight, isTrimmed: true };
  if (outline.length === 4 && straight.length === 4) return { sides: straight, isTrimmed: false };
  return null;
};

const alongAxis = (a: Point, b: Point): boolean =>
  Math.min(Math.abs(b.x - a.x), Math.abs(b.y - a.y)) < 1e-6 * Math.hypot(b.x - a.x, b.y - a.y);
