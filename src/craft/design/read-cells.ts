// The cells of a top: which block, in which colours and how turned, or which plain cloth; every name known.
import type { WrittenBlock, WrittenTop } from './document.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import type { BlockCell, BlockDesign, CellDesign, CellRows } from './quilt.ts';
import type { Reading } from './reading.ts';

export interface TopReading {
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
  /** Each block's id, as written, with the names of its colourings: also where a shape could not be read. */
  readonly colourings: ReadonlyMap<string, readonly string[]>;
  readonly blocks: readonly BlockDesign[];
}

export const colouringsById = (written: readonly WrittenBlock[]): TopReading['colourings'] =>
  new Map(
    written
      .filter((block) => block.id !== '')
      .map((block) => [block.id, Object.keys(block.colourings ?? { default: {} })]),
  );

type WrittenRows = NonNullable<WrittenTop['rows']>;
type WrittenCell = WrittenRows[number][number];
type WrittenPlace = Extract<WrittenCell, { readonly block: string }>;

/** Rows of equal length; no other check of their sizes. @param path of the list of rows */
export const readRows = (rows: WrittenRows, at: TopReading & { readonly path: string }): CellRows => {
  const { report } = at.reading;
  const expected = rows[0]?.length ?? 0;
  rows.forEach((row, i) => {
    const path = `${at.path}/${i}`;
    if (row.length === 0) report({ code: 'design/too-few', path, what: 'cells', found: 0, least: 1 });
    else if (row.length !== expected && expected > 0) {
      report({ code: 'design/uneven-rows', path, row: i, found: row.length, expected });
    }
  });
  return rows.map((row, i) => row.map((cell, j) => readCell(cell, { ...at, path: `${at.path}/${i}/${j}` })));
};

const readCell = (cell: WrittenCell, at: TopReading & { readonly path: string }): CellDesign =>
  'plain' in cell
    ? { kind: 'plain', fabric: fabricAt(cell.plain, { ...at, path: `${at.path}/plain` }) }
    : readPlace(cell, at);

/** A block in its place. */
export const readPlace = (cell: WrittenPlace, at: TopReading & { readonly path: string }): BlockCell => {
  const { block, turn = 0, mirror = false } = cell;
  return { kind: 'block', block, colouring: namedColouring(cell, at), turn, mirror };
};

/** The colouring's name, once the block and the colouring are known. */
export const namedColouring = (
  { block, colouring }: { readonly block: string; readonly colouring?: string | undefined },
  { path, reading, colourings }: TopReading & { readonly path: string },
): string => {
  const found = colouring ?? 'default';
  const known = colourings.get(block);
  if (known === undefined) {
    const place = `${path}/block`;
    reading.report({ code: 'design/unknown-block', path: place, found: block, known: [...colourings.keys()] });
  } else if (!known.includes(found)) {
    const place = colouring === undefined ? path : `${path}/colouring`;
    reading.report({ code: 'design/unknown-colouring', path: place, block, found, known });
  }
  return found;
};

export const fabricAt = (
  found: string,
  { path, reading, fabrics }: Pick<TopReading, 'reading' | 'fabrics'> & { readonly path: string },
): string => {
  if (!fabrics.has.has(found)) reading.report({ code: 'design/unknown-fabric', path, found, known: fabrics.ids });
  return found;
};
