// What one does to a top: each a change of the document's draft, and nothing else. What a change would leave without sense it leaves
// alone.
import type { QuiltDocument } from '#craft/design';
import type { QuiltPicture } from '#workroom/compute';

export type Top = QuiltDocument['top'];
export type Rows = NonNullable<Top['rows']>;
export type Cell = Rows[number][number];
export type BlockCell = Extract<Cell, { block: string }>;
export type Turn = NonNullable<BlockCell['turn']>;
export type ArrangementKind = NonNullable<Top['arrangement']>['kind'];

export const isBlock = (cell: Cell | undefined): cell is BlockCell => cell !== undefined && 'block' in cell;

export const isStraight = ({ set }: Top): boolean => set === undefined || set === 'straight';

/** Rows of a straight set as they are, also where a rule makes them: then the picture tells how each block lies. */
export const rowsOf = (top: Top, picture: QuiltPicture | null): Rows | null => {
  if (!isStraight(top)) return null;
  if (top.rows !== undefined) return top.rows;
  const { arrangement } = top;
  if (arrangement === undefined || picture === null) return null;
  const rows: Rows = Array.from({ length: arrangement.rows }, () => []);
  for (const { cell, turn } of picture.placed) {
    if (cell === null) return null;
    const { block, colouring } = arrangement;
    rows[cell[0]]?.splice(cell[1], 0, {
      block,
      ...(turn === 0 ? {} : { turn: turn as Turn }),
      ...(colouring === undefined ? {} : { colouring }),
    });
  }
  return rows.every((row) => row.length === arrangement.columns) ? rows : null;
};

/** A block that goes its own way ends the rule: the rows are written out, as they lie. */
export const changeCell = (
  top: Top,
  of: {
    readonly at: readonly [number, number];
    readonly picture: QuiltPicture | null;
    readonly change: (cell: Cell) => Cell;
  },
): void => {
  const rows = rowsOf(top, of.picture);
  const cell = rows?.[of.at[0]]?.[of.at[1]];
  if (rows === null || cell === undefined) return;
  const changed = of.change(cell);
  if (top.rows === undefined) {
    top.rows = rows.map((row) => row.map((one) => ({ ...one })));
    delete top.arrangement;
  }
  top.rows[of.at[0]]?.splice(of.at[1], 1, changed);
};

export const turned =
  (turn: Turn) =>
  (cell: Cell): Cell =>
    isBlock(cell) ? withKey(cell, 'turn', turn === 0 ? undefined : turn) : cell;

export const mirrored = (cell: Cell): Cell =>
  isBlock(cell) ? withKey(cell, 'mirror', cell.mirror === true ? undefined : true) : cell;

const withKey = <K extends keyof BlockCell>(cell: BlockCell, key: K, value: BlockCell[K] | undefined): BlockCell => {
  const { [key]: _, ...rest } = cell;
  return (value === undefined ? rest : { ...rest, [key]: value }) as BlockCell;
};

/** The turn after this one. */
export const quarterOn = (turn: Turn | undefined): Turn => (((turn ?? 0) + 90) % 360) as Turn;

/** More rows go on as those before them do, by twos; fewer leave from the end. */
export const resize = (
  top: Top,
  of: { readonly rows: number; readonly columns: number; readonly picture: QuiltPicture | null },
): void => {
  if (top.arrangement !== undefined) {
    top.arrangement.rows = of.rows;
    top.arrangement.columns = of.columns;
    return;
  }
  const rows = rowsOf(top, of.picture);
  if (rows === null || rows.length === 0) return;
  const from = rows;
  top.rows = Array.from({ length: of.rows }, (_, row) =>
    Array.from({ length: of.columns }, (__, column) => {
      const source = from[goneOn(row, from.length)] ?? [];
      return { ...(source[goneOn(column, source.length)] as Cell) };
    }),
  );
};

/** The place that one past the end repeats: two before it, so that what alternates goes on alternating. */
const goneOn = (place: number, length: number): number => {
  if (place < length) return place;
  return length === 1 ? 0 : length - 2 + ((place - length) % 2);
};

export const arrange = (
  top: Top,
  of: { readonly kind: ArrangementKind; readonly block: string; readonly rows: number; readonly columns: number },
): void => {
  top.set = 'straight';
  const { swap, colouring } = top.arrangement ?? {};
  top.arrangement = {
    ...of,
    ...(swap === undefined ? {} : { swap }),
    ...(colouring === undefined ? {} : { colouring }),
  };
  delete top.rows;
  delete top.between;
  delete top.sections;
};
