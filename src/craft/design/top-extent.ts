// About how large does a top come out, and of how many patches? Only for saying that it is too much.
import { add, compare, div, mul, type Rational, rational, sum, toNumber, two, zero } from '#ground/exact';
import type { BlockDesign, BorderDesign, CellRows, SectionDesign, StraightTop, TopDesign } from './quilt.ts';
import { type ExactSize, patchCount, sizeOf } from './size.ts';

export interface TopExtent {
  /** Finished, borders included, spacers and fills not; a row or column without a block counts nothing. */
  readonly size: ExactSize;
  readonly pieces: number;
}

type Known = ReadonlyMap<string, TopExtent>;

export const topExtent = (top: TopDesign, blocks: readonly BlockDesign[]): TopExtent => {
  const known: Known = new Map(
    blocks.map(({ id, shape }) => [id, { size: sizeOf(shape), pieces: Math.max(1, patchCount(shape)) }]),
  );
  return top.borders.reduce((inner, border) => bordered(inner, border, known), middleOf(top, known));
};

const middleOf = (top: TopDesign, known: Known): TopExtent => {
  if (top.set === 'sections') return sectionExtent(top.sections, known);
  if (top.set === 'straight') return straightExtent(top, known);
  const main = straightExtent(top, known);
  const between = straightExtent({ rows: top.between, sashing: null }, known);
  return { size: [slanted(main.size[0]), slanted(main.size[1])], pieces: main.pieces + between.pieces };
};

/** Up to a ten-thousandth more than √2 times. */
const slanted = (side: Rational): Rational => mul(side, rational(99, 70));

const straightExtent = ({ rows, sashing }: Pick<StraightTop, 'rows' | 'sashing'>, known: Known): TopExtent => {
  const { widths, heights, pieces } = lines(rows, known);
  const outer = sashing?.outer ? 1 : -1;
  const side = (lengths: readonly Rational[], sash: Rational | undefined): Rational =>
    add(sum(Object.values(lengths)), mul(rational(Math.max(0, lengths.length + outer)), sash ?? zero));
  return { size: [side(widths, sashing?.across), side(heights, sashing?.down)], pieces };
};

const lines = (rows: CellRows, known: Known) => {
  const widths: Rational[] = [];
  const heights: Rational[] = [];
  let pieces = 0;
  rows.forEach((row, i) => {
    row.forEach((cell, j) => {
      const block = cell.kind === 'block' ? known.get(cell.block) : undefined;
      pieces += block?.pieces ?? 1;
      if (cell.kind === 'plain' || block === undefined) return;
      const [width, height] = asTurned(block.size, cell.turn);
      widths[j] = larger(widths[j] ?? zero, width);
      heights[i] = larger(heights[i] ?? zero, height);
    });
  });
  return { widths, heights, pieces };
};

const sectionExtent = (section: SectionDesign, known: Known): TopExtent => {
  switch (section.kind) {
    case 'block': {
      const block = known.get(section.block);
      return block
        ? { size: asTurned(block.size, section.turn), pieces: block.pieces }
        : { size: [zero, zero], pieces: 1 };
    }
    case 'run': {
      const parts = section.parts.map((part) => sectionExtent(part, known));
      const along = section.run === 'across' ? 0 : 1;
      const long = sum(parts.map(({ size }, i) => ownWidth(section.parts[i] as SectionDesign) ?? size[along]));
      const other = parts.map(({ size }) => size[1 - along] as Rational).reduce(larger, zero);
      const pieces = parts.reduce((all, part) => all + part.pieces, 0);
      return { size: along === 0 ? [long, other] : [other, long], pieces };
    }
    default:
      return { size: [zero, zero], pieces: 1 };
  }
};

const ownWidth = (section: SectionDesign): Rational | null => (section.kind === 'strip' ? section.width : null);

const bordered = (inner: TopExtent, border: BorderDesign, known: Known): TopExtent => {
  const block = border.kind === 'pieced' ? known.get(border.block) : undefined;
  const width = border.kind === 'pieced' ? (block?.size[1] ?? zero) : border.width;
  const [across, down] = inner.size.map((side) => add(side, mul(two, width))) as [Rational, Rational];
  if (block === undefined) return { size: [across, down], pieces: inner.pieces + 4 };
  const units = toNumber(div(mul(two, add(across, down)), block.size[0]));
  return { size: [across, down], pieces: inner.pieces + Math.ceil(units + 4) * block.pieces };
};

const asTurned = (size: ExactSize, turn: number): ExactSize => (turn % 180 === 0 ? size : [size[1], size[0]]);

const larger = (a: Rational, b: Rational): Rational => (compare(a, b) < 0 ? b : a);
