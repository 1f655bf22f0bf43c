// How large does a top come out, and of how many patches? Only for saying that it is too much.
import { add, compare, mul, type Rational, rational, sum, two, zero } from '#ground/exact';
import type { BlockDesign, TopDesign } from './quilt.ts';
import { type ExactSize, patchCount, sizeOf } from './size.ts';

export interface TopExtent {
  /** Finished, borders included; a row or column without a block counts nothing. */
  readonly size: ExactSize;
  readonly pieces: number;
}

export const topExtent = (top: TopDesign, blocks: readonly BlockDesign[]): TopExtent => {
  const known = new Map(blocks.map(({ id, shape }) => [id, { size: sizeOf(shape), pieces: patchCount(shape) }]));
  const widths: Rational[] = [];
  const heights: Rational[] = [];
  let pieces = 0;
  top.rows.forEach((row, i) => {
    row.forEach((cell, j) => {
      const block = cell.kind === 'block' ? known.get(cell.block) : undefined;
      pieces += block?.pieces ?? 1;
      if (cell.kind === 'plain' || block === undefined) return;
      const [width, height] = cell.turn % 180 === 0 ? block.size : [block.size[1], block.size[0]];
      widths[j] = larger(widths[j] ?? zero, width);
      heights[i] = larger(heights[i] ?? zero, height);
    });
  });
  const { sashing, borders } = top;
  const around = mul(two, sum(borders.map((border) => border.width)));
  const outer = sashing?.outer ? 1 : -1;
  const sashes = (count: number, width: Rational | undefined): Rational =>
    mul(rational(Math.max(0, count + outer)), width ?? zero);
  const side = (lengths: readonly Rational[], sash: Rational | undefined): Rational =>
    add(add(sum(Object.values(lengths)), sashes(lengths.length, sash)), around);
  return { size: [side(widths, sashing?.across), side(heights, sashing?.down)], pieces };
};

const larger = (a: Rational, b: Rational): Rational => (compare(a, b) < 0 ? b : a);
