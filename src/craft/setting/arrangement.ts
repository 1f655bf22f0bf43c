// How does each block of a log cabin arrangement turn? From the corner where its dark half lies, by the rule
// of the arrangement, for any number of rows and columns.
import type { ArrangementDesign, ArrangementKind, BlockCell, CellRows, Corner, QuarterTurn } from '#craft/design';

/** Quarter turns clockwise of a block whose dark half lies lower right. */
export type Quarters = 0 | 1 | 2 | 3;

/** The arrangement's cells, turned. @param darkCorner of the block as drafted */
export const arrangedRows = (design: ArrangementDesign, darkCorner: Corner): CellRows => {
  const own = quartersOf[darkCorner];
  return quartersFor(design).map((row) =>
    row.map((quarters): BlockCell => {
      const turn = (90 * ((quarters - own + (design.swap ? 2 : 0) + 4) % 4)) as QuarterTurn;
      return { kind: 'block', block: design.block, colouring: design.colouring, turn, mirror: false };
    }),
  );
};

/** A dark half lower right comes to lie there by so many quarter turns. */
const quartersOf: Readonly<Record<Corner, Quarters>> = {
  'lower-right': 0,
  'lower-left': 1,
  'upper-left': 2,
  'upper-right': 3,
};

/**
 * By row and column. Two blocks have one tone along the edge they share exactly when "its right half is dark" changes at
 * every step along a row and "its lower half is dark" at every step down a column; what is left to choose, how each row
 * and each column begins, makes the arrangement.
 *
 * @source docs/formulas.md#arrangements
 */
export const quartersFor = (
  size: Pick<ArrangementDesign, 'kind' | 'rows' | 'columns'>,
): readonly (readonly Quarters[])[] => {
  const rule = rules[size.kind];
  return Array.from({ length: size.rows }, (_, row) =>
    Array.from({ length: size.columns }, (_, column) => {
      const { right, lower } = rule({ row, column, ...size });
      return lower ? (right ? 0 : 1) : right ? 3 : 2;
    }),
  );
};

interface Cell {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

interface Dark {
  readonly right: boolean;
  readonly lower: boolean;
}

const even = (n: number): boolean => n % 2 === 0;

const rules: Readonly<Record<ArrangementKind, (cell: Cell) => Dark>> = {
  // rings round the middle: the lower right corner of the middle block where a count is odd
  'barn-raising': ({ row, column, rows, columns }) => ({
    right: even(fromMiddle(row, rows) + column - lastBefore(columns)),
    lower: even(fromMiddle(column, columns) + row - lastBefore(rows)),
  }),
  'straight-furrow': ({ row, column }) => ({ right: even(row + column), lower: even(row + column) }),
  'sunshine-and-shadow': ({ row, column }) => ({ right: even(column), lower: even(row) }),
  'streak-of-lightning': ({ row, column }) => ({ right: even(row + column), lower: even(row) }),
  // groups of two by two furrows, each the mirror image of its neighbours
  'fields-and-furrows': ({ row, column }) => ({
    right: even(column + Math.floor((row + 1) / 2)),
    lower: even(row + Math.floor((column + 1) / 2)),
  }),
  // four blocks, each a further quarter turn: edges do not agree
  pinwheel: ({ row, column }) => ({ right: even(row), lower: !even(column) }),
};

/** The last place before the middle, or in it. */
const lastBefore = (count: number): number => Math.ceil(count / 2) - 1;

/**
 * Whole steps from the middle, which lies behind `lastBefore`. With an odd count the middle block counts as the last
 * before it: edges that agree leave no arrangement that is its own mirror image about a block.
 */
const fromMiddle = (place: number, count: number): number =>
  place <= lastBefore(count) ? lastBefore(count) - place : place - lastBefore(count) - 1;
