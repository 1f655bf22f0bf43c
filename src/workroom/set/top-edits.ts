// What one does to a whole top: each a change of the document's draft, and nothing else. What a change would leave without sense it
// leaves alone.
import type { QuiltDocument } from '#craft/design';
import type { QuiltPicture } from '#workroom/compute';

export type Top = QuiltDocument['top'];
export type Rows = NonNullable<Top['rows']>;
export type Cell = Rows[number][number];
export type BlockCell = Extract<Cell, { block: string }>;
export type Turn = NonNullable<BlockCell['turn']>;
export type Arrangement = NonNullable<Top['arrangement']>;
export type ArrangementKind = Arrangement['kind'];
export type SetKind = NonNullable<Top['set']>;

export const isBlock = (place: object | undefined): place is BlockCell => place !== undefined && 'block' in place;

export const setOf = ({ set }: Top): SetKind => set ?? 'straight';

/** Rows as they are, also where a rule makes them: then the picture tells how each block lies. None in sections. */
export const rowsOf = (top: Top, picture: QuiltPicture | null): Rows | null => {
  if (top.rows !== undefined) return top.rows;
  const { arrangement } = top;
  if (arrangement === undefined || picture === null) return null;
  const rows: Rows = Array.from({ length: arrangement.rows }, () => []);
  for (const { path, turn } of picture.placed) {
    const at = cellAt(path);
    if (at === null) continue;
    const { block, colouring } = arrangement;
    rows[at.row]?.splice(at.place, 0, {
      block,
      ...(turn === 0 ? {} : { turn: turn as Turn }),
      ...(colouring === undefined ? {} : { colouring }),
    });
  }
  return rows.every((row) => row.length === arrangement.columns) ? rows : null;
};

export interface Counts {
  readonly rows: number;
  readonly columns: number;
}

/** Of the main cells; null where the top is not in rows. */
export const countsOf = (top: Top, picture: QuiltPicture | null): Counts | null => {
  if (top.arrangement !== undefined) return top.arrangement;
  const rows = rowsOf(top, picture);
  return rows === null || rows[0] === undefined ? null : { rows: rows.length, columns: rows[0].length };
};

/** Rows, or columns: more than anyone sews, and few enough to draw. */
export const mostLines = 60;

/** Width of a sash, or of a strip in a section, before the maker says another; our own. */
export const usualStrip = { in: '1 1/2', cm: '4' } as const;

export interface CellPlace {
  /** Cells of the rows, or on point those between them. */
  readonly part: 'rows' | 'between';
  readonly row: number;
  readonly place: number;
}

/** @returns null where the pointer is to no cell */
export const cellAt = (path: string): CellPlace | null => {
  const found = /^\/top\/(rows|between)\/(\d+)\/(\d+)$/.exec(path);
  return found === null
    ? null
    : { part: found[1] as CellPlace['part'], row: Number(found[2]), place: Number(found[3]) };
};

/** A rule that makes the rows ends: they are written out, as they lie. */
export const writeOut = (top: Top, picture: QuiltPicture | null): void => {
  if (top.rows !== undefined) return;
  const rows = rowsOf(top, picture);
  if (rows === null) return;
  top.rows = rows;
  delete top.arrangement;
};

/** More rows go on as those before them do, by twos; fewer leave from the end. On point what lies between them too. */
export const resize = (top: Top, of: Counts & { readonly picture: QuiltPicture | null }): void => {
  if (top.arrangement !== undefined) {
    top.arrangement.rows = of.rows;
    top.arrangement.columns = of.columns;
    return;
  }
  const rows = rowsOf(top, of.picture);
  if (rows === null || rows.length === 0) return;
  top.rows = goneOnTo(rows, [of.rows, of.columns]);
  if (setOf(top) !== 'on-point') return;
  const before = top.between ?? [];
  const size = betweenSize(of.rows, of.columns);
  top.between =
    (before[0]?.length ?? 0) > 0 ? goneOnTo(before, size) : filledWith({ plain: top.settingFabric ?? '' }, size);
};

/** A row fewer and a column fewer than the main cells; none where there is but one column. */
export const betweenSize = (rows: number, columns: number): readonly [number, number] =>
  columns < 2 ? [0, 0] : [Math.max(0, rows - 1), columns - 1];

export const filledWith = (cell: Cell, [rows, columns]: readonly [number, number]): Rows =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => ({ ...cell })));

const goneOnTo = (from: Rows, [rows, columns]: readonly [number, number]): Rows =>
  Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => {
      const source = from[goneOn(row, from.length)] ?? [];
      return { ...(source[goneOn(column, source.length)] as Cell) };
    }),
  );

/** The place that one past the end repeats: two before it, so that what alternates goes on alternating. */
const goneOn = (place: number, length: number): number => {
  if (place < length) return place;
  return length === 1 ? 0 : length - 2 + ((place - length) % 2);
};

export const arrange = (top: Top, of: Counts & { readonly kind: ArrangementKind; readonly block: string }): void => {
  top.set = 'straight';
  const { swap, colouring } = top.arrangement ?? {};
  top.arrangement = {
    ...of,
    ...(swap === undefined ? {} : { swap }),
    ...(colouring === undefined ? {} : { colouring }),
  };
  leaveKeys(top, ['rows', 'between', 'sections', 'settingFabric', 'float']);
};

/** Keys that belong to another way of setting are refused, so they go with it. */
export const leaveKeys = (top: Top, keys: readonly (keyof Top)[]): void => {
  for (const key of keys) delete top[key];
};
