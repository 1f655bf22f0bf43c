// At which sizes near an asked one does every cut of a block fall on a mark of the ruler? The whole block is made
// larger or smaller; nothing else of it changes.
import type { CutRule } from '#craft/cutting';
import type { DraftedBlock } from '#craft/drafting';
import { type Length, length, tidy, toNearestMark } from '#craft/measure';
import { fitsRuler, type RuledFigure, ruledFigures } from './ruled-figures.ts';

/** Finished. */
export type BlockSize = readonly [width: Length, height: Length];

export interface RulerSizes {
  /** From the smallest up: at most `each` below the asked size, itself if it is one, and at most `each` above it. */
  readonly sizes: readonly BlockSize[];
  /** The nearest of them; of two as near, the larger. */
  readonly nearest: BlockSize | null;
  /** Widths that were looked at. */
  readonly from: Length;
  readonly to: Length;
}

/** Our own figures: half to double the asked size, and never more marks than that. */
const mostMarks = 5_000;

/**
 * @param of.block drafted at any size
 * @param of.near  finished width to look near, above zero
 * @param of.each  how many sizes to give on either side
 */
export const rulerSizes = (of: {
  readonly block: DraftedBlock;
  readonly near: Length;
  readonly rule: CutRule;
  readonly each: number;
}): RulerSizes => {
  const { block, near, rule, each } = of;
  const figures = ruledFigures(block, rule);
  const first = markIndex(length(near + 2 * rule.seam), rule);
  const search = { figures, block, rule, near, each };
  const below = walk({ ...search, from: first, step: -1 });
  const above = walk({ ...search, from: first + 1, step: 1 });
  const sizes = [...below.sizes.toReversed(), ...above.sizes];
  const nearest = sizes.reduce<BlockSize | null>((best, size) => {
    if (best === null) return size;
    return Math.abs(size[0] - near) <= Math.abs(best[0] - near) + 1e-9 ? size : best;
  }, null);
  return { sizes, nearest, from: below.last, to: above.last };
};

/** The mark at or below an unfinished width, counted from zero. */
const markIndex = (unfinished: Length, { ruler }: CutRule): number => {
  const { size, way } = toNearestMark(unfinished, ruler);
  const index = Math.round((size * Number(ruler.d)) / Number(ruler.n));
  return way === 'up' ? index - 1 : index;
};

interface Walk {
  readonly figures: readonly RuledFigure[];
  readonly block: DraftedBlock;
  readonly rule: CutRule;
  readonly near: Length;
  readonly each: number;
  readonly from: number;
  readonly step: 1 | -1;
}

const walk = ({ figures, block, rule, near, each, from, step }: Walk) => {
  const sizes: BlockSize[] = [];
  let last = near;
  let found = 0;
  for (let n = 0; n < mostMarks && found < each; n++) {
    const mark = ((from + n * step) * Number(rule.ruler.n)) / Number(rule.ruler.d);
    const width = tidy(mark - 2 * rule.seam);
    if (width <= 0 || width < near / 2 || width > near * 2) break;
    last = width;
    const scale = width / block.size[0];
    if (!fitsRuler(figures, rule, scale)) continue;
    sizes.push([width, tidy(block.size[1] * scale)]);
    if (Math.abs(width - near) > 1e-9) found += 1;
  }
  return { sizes, last };
};
