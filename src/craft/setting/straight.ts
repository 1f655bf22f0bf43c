// A straight set: blocks in rows and columns, sashing between them, then borders butted round.
// Positions are summed exactly and become doubles once.

import type { BorderDesign, CellDesign, SashingDesign, TopDesign } from '#craft/design';
import type { DraftedBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { add, mul, type Rational, sub, sum, toNumber, two, zero } from '#ground/exact';
import type { PlacedBlock, PlacedStrip, Rect, SetTop, TopRow } from './top.ts';

type ExactSize = readonly [width: Rational, height: Rational];

/**
 * Where everything lies, finished, from the top's upper left corner.
 *
 * @param design rows of equal length whose blocks agree in size by row and column (checked by design)
 * @param blocks every block that the rows name, by id
 */
export const setStraight = (design: TopDesign, blocks: ReadonlyMap<string, DraftedBlock>): SetTop => {
  const { sashing } = design;
  const columns = columnWidths(design.rows, blocks);
  const heights = rowHeights(design.rows, blocks);
  const rim = design.borders.reduce((all, border) => add(all, border.width), zero);
  const xs = starts({ sizes: columns, sash: sashing?.across ?? zero, outer: sashing?.outer ?? false, from: rim });
  const ys = starts({ sizes: heights, sash: sashing?.down ?? zero, outer: sashing?.outer ?? false, from: rim });
  const middleWidth = sub(xs.end, rim);
  const middleHeight = sub(ys.end, rim);

  const placed: PlacedBlock[] = [];
  const strips: PlacedStrip[] = [];
  const rows: TopRow[] = [];
  const level = (y: Rational): void => {
    if (sashing)
      rows.push({ kind: 'sashes', parts: levelSash({ sashing, columns, xs, y, rim, width: middleWidth, strips }) });
  };
  if (sashing?.outer) level(rim);
  design.rows.forEach((cells, row) => {
    const y = ys.at[row] as Rational;
    const height = heights[row] as Rational;
    const parts: ({ readonly block: number } | { readonly strip: number })[] = [];
    const upright = (x: Rational): void => {
      if (!sashing) return;
      parts.push({ strip: strips.length });
      strips.push(
        plainStrip({
          role: 'sash',
          fabric: sashing.fabric,
          path: '/top/sashing',
          rect: rectOf(x, y, [sashing.across, height]),
        }),
      );
    };
    if (sashing?.outer) upright(rim);
    cells.forEach((cell, column) => {
      const x = xs.at[column] as Rational;
      const size: ExactSize = [columns[column] as Rational, height];
      if (cell.kind === 'plain') {
        parts.push({ strip: strips.length });
        strips.push(
          plainStrip({
            role: 'plain',
            fabric: cell.fabric,
            path: `/top/rows/${row}/${column}`,
            rect: rectOf(x, y, size),
          }),
        );
      } else {
        parts.push({ block: placed.length });
        placed.push({
          block: cell.block,
          colouring: cell.colouring,
          mirror: cell.mirror,
          turn: cell.turn,
          at: [length(toNumber(x)), length(toNumber(y))],
          size: [length(toNumber(size[0])), length(toNumber(size[1]))],
        });
      }
      if (column + 1 < cells.length || sashing?.outer) upright(add(x, size[0]));
    });
    rows.push({ kind: 'blocks', parts });
    if (row + 1 < design.rows.length || sashing?.outer) level(add(y, height));
  });

  const borders = butted({ borders: design.borders, rim, middle: [middleWidth, middleHeight], strips });
  return {
    width: length(toNumber(add(middleWidth, mul(two, rim)))),
    height: length(toNumber(add(middleHeight, mul(two, rim)))),
    middle: rectOf(rim, rim, [middleWidth, middleHeight]),
    placed,
    strips,
    rows,
    borders,
  };
};

/** Size of a block as it lies after its turn. */
export const sizeAsTurned = (block: DraftedBlock, turn: number): ExactSize =>
  turn % 180 === 0 ? block.exactSize : [block.exactSize[1], block.exactSize[0]];

const columnWidths = (rows: readonly (readonly CellDesign[])[], blocks: ReadonlyMap<string, DraftedBlock>) =>
  (rows[0] ?? []).map((_, column) => sharedSize({ cells: rows.map((row) => row[column]), blocks, side: 0 }));

const rowHeights = (rows: readonly (readonly CellDesign[])[], blocks: ReadonlyMap<string, DraftedBlock>) =>
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

const starts = (line: {
  readonly sizes: readonly Rational[];
  readonly sash: Rational;
  readonly outer: boolean;
  readonly from: Rational;
}): { readonly at: readonly Rational[]; readonly end: Rational } => {
  const at: Rational[] = [];
  let place = line.outer ? add(line.from, line.sash) : line.from;
  line.sizes.forEach((size, i) => {
    at.push(place);
    place = add(place, size);
    if (i + 1 < line.sizes.length || line.outer) place = add(place, line.sash);
  });
  return { at, end: place };
};

const levelSash = (row: {
  readonly sashing: SashingDesign;
  readonly columns: readonly Rational[];
  readonly xs: { readonly at: readonly Rational[] };
  readonly y: Rational;
  readonly rim: Rational;
  readonly width: Rational;
  readonly strips: PlacedStrip[];
}): TopRow['parts'] => {
  const { sashing, columns, xs, y, rim, width, strips } = row;
  const parts: { readonly strip: number }[] = [];
  const lay = (role: 'sash' | 'cornerstone', fabric: string, rect: Rect): void => {
    parts.push({ strip: strips.length });
    strips.push(plainStrip({ role, fabric, path: '/top/sashing', rect }));
  };
  if (sashing.cornerstones === null) {
    lay('sash', sashing.fabric, rectOf(rim, y, [width, sashing.down]));
    return parts;
  }
  const stone = (x: Rational): void =>
    lay('cornerstone', sashing.cornerstones as string, rectOf(x, y, [sashing.across, sashing.down]));
  if (sashing.outer) stone(rim);
  columns.forEach((size, column) => {
    const x = xs.at[column] as Rational;
    lay('sash', sashing.fabric, rectOf(x, y, [size, sashing.down]));
    if (column + 1 < columns.length || sashing.outer) stone(add(x, size));
  });
  return parts;
};

/** Borders from the inside outward: left and right as long as the top is high, then the ends across everything. */
const butted = (frame: {
  readonly borders: readonly BorderDesign[];
  readonly rim: Rational;
  readonly middle: ExactSize;
  readonly strips: PlacedStrip[];
}): SetTop['borders'] => {
  let inner = { x: frame.rim, y: frame.rim, width: frame.middle[0], height: frame.middle[1] };
  return frame.borders.map((border, ring) => {
    const { width: w } = border;
    const lay = (rect: Rect): number => {
      frame.strips.push({
        role: 'border',
        fabric: border.fabric,
        rect,
        grain: border.grain,
        border: ring,
        path: `/top/borders/${ring}`,
      });
      return frame.strips.length - 1;
    };
    const across = sum([inner.width, w, w]);
    const left = sub(inner.x, w);
    const top = sub(inner.y, w);
    const sides = [
      lay(rectOf(left, inner.y, [w, inner.height])),
      lay(rectOf(add(inner.x, inner.width), inner.y, [w, inner.height])),
    ] as const;
    const ends = [
      lay(rectOf(left, top, [across, w])),
      lay(rectOf(left, add(inner.y, inner.height), [across, w])),
    ] as const;
    inner = { x: left, y: top, width: across, height: sum([inner.height, w, w]) };
    return { sides, ends };
  });
};

const plainStrip = (strip: Pick<PlacedStrip, 'role' | 'fabric' | 'rect' | 'path'>): PlacedStrip => ({
  ...strip,
  grain: null,
  border: null,
});

const rectOf = (x: Rational, y: Rational, size: ExactSize): Rect => ({
  x: length(toNumber(x)),
  y: length(toNumber(y)),
  width: length(toNumber(size[0])),
  height: length(toNumber(size[1])),
});
