// A straight set: blocks in rows and columns, with sashing between them. Positions are summed exactly and
// become doubles once. Borders are laid round it afterwards.

import type { CellDesign, SashingDesign } from '#craft/design';
import type { DraftedBlock } from '#craft/drafting';
import { type Length, length } from '#craft/measure';
import { add, type Rational, toNumber, zero } from '#ground/exact';
import { type Laying, layBlock, layStrip, plainRectangle, rectOf, type SetMiddle } from './pieces.ts';
import type { Assembly, StripRole, TopRow, TopThing } from './top.ts';

export type ExactSize = readonly [width: Rational, height: Rational];

interface StraightCells {
  readonly rows: readonly (readonly CellDesign[])[];
  readonly sashing: SashingDesign | null;
}

/**
 * Where everything of the middle lies, finished, from its upper left corner.
 *
 * @param design rows of equal length whose blocks agree in size by row and column (checked by design)
 * @param blocks every block that the rows name, by id
 */
export const setStraight = (design: StraightCells, blocks: ReadonlyMap<string, DraftedBlock>): SetMiddle => {
  const { sashing } = design;
  const columns = columnWidths(design.rows, blocks);
  const heights = rowHeights(design.rows, blocks);
  const outer = sashing?.outer ?? false;
  const xs = starts({ sizes: columns, sash: sashing?.across ?? zero, outer });
  const ys = starts({ sizes: heights, sash: sashing?.down ?? zero, outer });

  const laying: Laying = { placed: [], strips: [] };
  const rows: TopRow[] = [];
  const level = (y: Rational): void => {
    if (sashing) rows.push({ kind: 'sashes', parts: levelSash({ sashing, columns, xs, y, laying }) });
  };
  if (outer) level(zero);
  design.rows.forEach((cells, row) => {
    const y = ys.at[row] as Rational;
    const height = heights[row] as Rational;
    const parts: TopThing[] = [];
    const upright = (x: Rational): void => {
      if (sashing)
        parts.push(laySash({ laying, sashing, role: 'sash', corner: [x, y], size: [sashing.across, height] }));
    };
    if (outer) upright(zero);
    cells.forEach((cell, column) => {
      const corner: ExactSize = [xs.at[column] as Rational, y];
      const size: ExactSize = [columns[column] as Rational, height];
      parts.push(layCell({ laying, cell, corner, size, path: `/top/rows/${row}/${column}` }));
      if (column + 1 < cells.length || outer) upright(add(corner[0], size[0]));
    });
    rows.push({ kind: 'blocks', parts });
    if (row + 1 < design.rows.length || outer) level(add(y, height));
  });
  return {
    width: length(toNumber(xs.end)),
    height: length(toNumber(ys.end)),
    ...laying,
    rows,
    assembly: assemblyOfRows(rows),
  };
};

/** Every row from left to right, then the rows from the top down. */
const assemblyOfRows = (rows: readonly TopRow[]): Assembly => ({
  run: 'down',
  angle: 0,
  stage: 'rows',
  of: 0,
  parts: rows.map(({ parts }, of) => ({
    run: 'across',
    angle: 0,
    stage: 'row',
    of,
    parts: parts.map((thing) => ({ thing })),
  })),
});

/** Size of a block as it lies after its turn. */
export const sizeAsTurned = (block: DraftedBlock, turn: number): ExactSize =>
  turn % 180 === 0 ? block.exactSize : [block.exactSize[1], block.exactSize[0]];

const columnWidths = (rows: StraightCells['rows'], blocks: ReadonlyMap<string, DraftedBlock>) =>
  (rows[0] ?? []).map((_, column) => sharedSize({ cells: rows.map((row) => row[column]), blocks, side: 0 }));

const rowHeights = (rows: StraightCells['rows'], blocks: ReadonlyMap<string, DraftedBlock>) =>
  rows.map((row) => sharedSize({ cells: row, blocks, side: 1 }));

/** The size that the blocks of a row or column share; a plain cell takes it from its neighbours. */
const sharedSize = (line: {
  readonly cells: readonly (CellDesign | undefined)[];
  readonly blocks: ReadonlyMap<string, DraftedBlock>;
  readonly side: 0 | 1;
}): Rational => {
  for (const cell of line.cells) {
    const block = cell?.kind === 'block' ? line.blocks.get(cell.block) : undefined;
    if (block && cell?.kind === 'block') return sizeAsTurned(block, cell.turn)[line.side];
  }
  throw new Error('a row or column without a block passed the door of the document');
};

interface Starts {
  readonly at: readonly Rational[];
  readonly end: Rational;
}

const starts = (line: {
  readonly sizes: readonly Rational[];
  readonly sash: Rational;
  readonly outer: boolean;
}): Starts => {
  const at: Rational[] = [];
  let place = line.outer ? line.sash : zero;
  line.sizes.forEach((size, i) => {
    at.push(place);
    place = add(place, size);
    if (i + 1 < line.sizes.length || line.outer) place = add(place, line.sash);
  });
  return { at, end: place };
};

/** One piece, or sashes with cornerstones between them. */
const levelSash = (row: {
  readonly sashing: SashingDesign;
  readonly columns: readonly Rational[];
  readonly xs: Starts;
  readonly y: Rational;
  readonly laying: Laying;
}): TopRow['parts'] => {
  const { sashing, columns, xs, y, laying } = row;
  const lay = (role: 'sash' | 'cornerstone', x: Rational, width: Rational): TopThing =>
    laySash({ laying, sashing, role, corner: [x, y], size: [width, sashing.down] });
  if (sashing.cornerstones === null) return [lay('sash', zero, xs.end)];
  const parts: TopThing[] = sashing.outer ? [lay('cornerstone', zero, sashing.across)] : [];
  columns.forEach((size, column) => {
    const x = xs.at[column] as Rational;
    parts.push(lay('sash', x, size));
    if (column + 1 < columns.length || sashing.outer) parts.push(lay('cornerstone', add(x, size), sashing.across));
  });
  return parts;
};

const laySash = (of: {
  readonly laying: Laying;
  readonly sashing: SashingDesign;
  readonly role: Extract<StripRole, 'sash' | 'cornerstone'>;
  readonly corner: ExactSize;
  readonly size: ExactSize;
}): TopThing => {
  const { sashing, role } = of;
  const fabric = role === 'cornerstone' ? (sashing.cornerstones as string) : sashing.fabric;
  return layStrip(
    of.laying,
    plainRectangle({ role, fabric, path: '/top/sashing', rect: exactRect(of.corner, of.size) }),
  );
};

/** A block or a plain piece that fills its cell. */
export const layCell = (of: {
  readonly laying: Laying;
  readonly cell: CellDesign;
  readonly corner: ExactSize;
  readonly size: ExactSize;
  readonly path: string;
}): TopThing => {
  const { laying, cell, path } = of;
  const rect = exactRect(of.corner, of.size);
  if (cell.kind === 'plain')
    return layStrip(laying, plainRectangle({ role: 'plain', fabric: cell.fabric, path, rect }));
  const { block, colouring, mirror, turn } = cell;
  const size: readonly [Length, Length] = [rect.width, rect.height];
  return layBlock(laying, { block, colouring, mirror, turn, at: [rect.x, rect.y], size, path });
};

export const exactRect = (corner: ExactSize, size: ExactSize) =>
  rectOf({
    x: toNumber(corner[0]),
    y: toNumber(corner[1]),
    width: toNumber(size[0]),
    height: toNumber(size[1]),
  });
