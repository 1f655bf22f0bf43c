// By how much does a block drift from its drawing when its cuts go to the nearest marks? Pieces that are trimmed
// after sewing come true; rectangles and squares keep what they are off, and in a row of them it adds up.
import { type Cut, type CutRule, patchCut } from '#craft/cutting';
import { type DraftedBlock, outlineOf } from '#craft/drafting';
import { cornerTolerance } from '#craft/limits';
import { type Length, tidy } from '#craft/measure';
import { boxOf, type Polygon } from '#ground/plane';

export interface BlockDrift {
  /** Different rectangles and squares that no mark fits, in the order of the patches. */
  readonly off: readonly Cut[];
  /** Different cuts in all. */
  readonly cuts: number;
  /**
   * What the pieces of one row, or one column, are off together, where that is most; above zero: too large. Slanted
   * pieces are not counted. Our own measure: it says what cutting alone does, before any seam is sewn.
   */
  readonly across: Length;
  readonly down: Length;
}

export const blockDrift = (block: DraftedBlock, rule: CutRule): BlockDrift => {
  const slack = cornerTolerance * Math.max(...block.size);
  const pieces = block.patches.map((patch) => {
    const outline = outlineOf(patch, slack);
    return { outline, cut: patchCut({ points: outline, arcs: patch.arcs ?? [] }, rule) };
  });
  const different = new Map(pieces.map(({ cut }) => [`${cut.shape} ${cut.exact.map((side) => side.toFixed(9))}`, cut]));
  const straight = pieces.filter(({ cut, outline }) => isRectangle(cut) && isLevel(outline, slack));
  return {
    off: [...different.values()].filter((cut) => isRectangle(cut) && (isOff(cut, 0) || isOff(cut, 1))),
    cuts: different.size,
    across: mostOff({ pieces: straight, side: 0, slack }),
    down: mostOff({ pieces: straight, side: 1, slack }),
  };
};

const isRectangle = ({ shape }: Cut): boolean => shape === 'square' || shape === 'rectangle';

const isOff = ({ size, exact }: Cut, side: 0 | 1): boolean => Math.abs(size[side] - exact[side]) > 1e-9;

const isLevel = (outline: Polygon, slack: number): boolean => {
  const [a, b] = outline;
  return a !== undefined && b !== undefined && Math.min(Math.abs(b.x - a.x), Math.abs(b.y - a.y)) < slack;
};

interface Laid {
  readonly outline: Polygon;
  readonly cut: Cut;
}

/** Looked at in the middle of every band between two corners: in a band nothing changes. */
const mostOff = (of: { readonly pieces: readonly Laid[]; readonly side: 0 | 1; readonly slack: number }): Length => {
  const spans = of.pieces.map(({ outline, cut }) => {
    const { x, y, width, height } = boxOf(outline);
    const [from, length] = of.side === 0 ? [y, height] : [x, width];
    return { from, to: from + length, off: cut.size[of.side] - cut.exact[of.side] };
  });
  const stops = spans.flatMap(({ from, to }) => [from, to]).sort((a, b) => a - b);
  let most = 0;
  stops.forEach((stop, i) => {
    const next = stops[i + 1];
    if (next === undefined || next - stop < of.slack) return;
    const middle = (stop + next) / 2;
    const off = spans.reduce((all, span) => (span.from < middle && middle < span.to ? all + span.off : all), 0);
    if (Math.abs(off) > Math.abs(most) + 1e-12) most = off;
  });
  return tidy(most);
};
