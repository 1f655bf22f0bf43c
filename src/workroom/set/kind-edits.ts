// From one way of setting to another: straight, on point, in sections. What can be kept is kept: blocks as they lie, sashing,
// borders; what belongs to one way alone goes with it.
import type { QuiltPicture } from '#workroom/compute';
import { type Held, isRun, partsOf, type Section } from './place-edits.ts';
import {
  betweenSize,
  type Cell,
  filledWith,
  isBlock,
  leaveKeys,
  type Rows,
  rowsOf,
  type SetKind,
  setOf,
  type Top,
  writeOut,
} from './top-edits.ts';
import { writtenLength } from './written-length.ts';

export interface SetChange {
  readonly kind: SetKind;
  /** Tells how the blocks of an arrangement lie, and how wide blocks are. */
  readonly picture: QuiltPicture | null;
  /** Cloth of what is plain and new. */
  readonly cloth: string;
}

export const changeSet = (top: Top, of: SetChange): void => {
  const from = setOf(top);
  const rows = from === 'sections' ? rowsOfSections(top.sections, of.cloth) : rowsOf(top, of.picture);
  if (from === of.kind || rows === null) return;
  const { sashing } = top;
  const cloth = top.settingFabric ?? of.cloth;
  top.set = of.kind;
  switch (of.kind) {
    case 'straight':
      top.rows = rows;
      leaveKeys(top, ['between', 'settingFabric', 'float', 'sections']);
      break;
    case 'on-point':
      top.rows = rows;
      top.between = filledWith({ plain: cloth }, betweenSize(rows.length, rows[0]?.length ?? 0));
      top.settingFabric = cloth;
      // on point all sashes lie slanted: they have one width
      if (typeof sashing?.width === 'object') sashing.width = sashing.width.across;
      leaveKeys(top, ['arrangement', 'sections']);
      break;
    case 'sections':
      top.sections = sectionsOf(rows, { sashing, picture: of.picture });
      leaveKeys(top, ['rows', 'between', 'arrangement', 'settingFabric', 'float', 'sashing']);
      break;
  }
};

/** Blocks in the order of reading: run by run where the sections are rows of as many, else in as near a square as they make. */
const rowsOfSections = (root: Section | undefined, cloth: string): Rows | null => {
  if (root === undefined) return null;
  const lines = ('down' in root ? root.down : [root]).map(blocksIn).filter((line) => line.length > 0);
  const blocks = lines.flat();
  if (blocks.length === 0) return null;
  const [first] = lines;
  const isInRows = 'down' in root || !partsOf(root).some(isRun);
  if (isInRows && lines.every((line) => line.length === first?.length)) return lines;
  const columns = Math.ceil(Math.sqrt(blocks.length));
  const rows = Math.ceil(blocks.length / columns);
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => blocks[row * columns + column] ?? { plain: cloth }),
  );
};

const blocksIn = (section: Section): Cell[] => {
  if (isRun(section)) return partsOf(section).flatMap(blocksIn);
  return 'block' in section ? [{ ...section }] : [];
};

type Sashing = NonNullable<Top['sashing']>;

/** Rows one under the other; sashes and plain squares become strips of their width. */
const sectionsOf = (
  rows: Rows,
  of: { readonly sashing: Sashing | undefined; readonly picture: QuiltPicture | null },
): Section => {
  const { sashing, picture } = of;
  const columns = (rows[0] ?? []).map((_, column) => widthOfColumn(rows, column, picture));
  const across = (row: Rows[number]): Section => ({
    across: withSashes(
      row.map((cell, column) => asPart(cell, columns[column] ?? null)),
      sashing && {
        isOuter: sashing.outer === true,
        sash: () => ({ strip: sashing.fabric, width: widthsOf(sashing).across }),
      },
    ),
  });
  return {
    down: withSashes(
      rows.map(across),
      sashing && { isOuter: sashing.outer === true, sash: () => levelSash(sashing, columns) },
    ),
  };
};

const widthsOf = ({ width }: Sashing) => (typeof width === 'object' ? width : { across: width, down: width });

const withSashes = (
  parts: readonly Section[],
  of: { readonly isOuter: boolean; readonly sash: () => Section } | undefined,
): Section[] => {
  if (of === undefined) return [...parts];
  const between = parts.flatMap((part, i) => (i === 0 ? [part] : [of.sash(), part]));
  return of.isOuter ? [of.sash(), ...between, of.sash()] : between;
};

/** One strip; or strips with cornerstones, which are as wide as is left over. */
const levelSash = (sashing: Sashing, columns: readonly (string | null)[]): Section => {
  const { down } = widthsOf(sashing);
  const { cornerstones, fabric } = sashing;
  if (cornerstones === undefined || columns.includes(null)) return { strip: fabric, width: down };
  return {
    across: withSashes(
      columns.map((width): Section => ({ strip: fabric, width: width as string })),
      { isOuter: sashing.outer === true, sash: () => ({ down: [{ strip: cornerstones, width: down }] }) },
    ),
  };
};

const asPart = (cell: Cell, width: string | null): Section => {
  if (isBlock(cell)) return { ...cell };
  return width === null ? { fill: cell.plain } : { strip: cell.plain, width };
};

/** As a block of the column lies; null where the picture has none of them. */
const widthOfColumn = (rows: Rows, column: number, picture: QuiltPicture | null): string | null => {
  for (const cell of rows.map((row) => row[column])) {
    if (!isBlock(cell)) continue;
    const size = picture?.entries.find(({ id }) => id === cell.block)?.size;
    if (size !== undefined) return writtenLength(size[(cell.turn ?? 0) % 180 === 0 ? 0 : 1]);
  }
  return null;
};

/** Every other place: in a straight set those whose row and column differ in evenness, on point all between the rows. */
export const alternate = (
  top: Top,
  of: { readonly picture: QuiltPicture | null; readonly change: (held: Held) => Held },
): void => {
  if (setOf(top) === 'sections') return;
  writeOut(top, of.picture);
  const changed = (cell: Cell): Cell => of.change(cell) as Cell;
  if (setOf(top) === 'on-point') top.between = top.between?.map((row) => row.map(changed)) ?? [];
  else top.rows = top.rows?.map((row, i) => row.map((cell, j) => ((i + j) % 2 === 1 ? changed(cell) : cell))) ?? [];
};
