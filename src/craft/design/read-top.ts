// The top of a document: cells by rows, sashing and borders, with every name known and every size in step.
import { compare, type Rational } from '#ground/exact';
import type { WrittenBlock, WrittenTop } from './document.ts';
import { largestTop, limits } from './limits.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import type { BlockDesign, BorderDesign, CellDesign, QuarterTurn, SashingDesign, TopDesign } from './quilt.ts';
import type { Reading } from './reading.ts';
import { sizeOf } from './size.ts';
import { topExtent } from './top-extent.ts';

interface Around {
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
  /** As written: ids are known even where a shape could not be read. */
  readonly written: readonly WrittenBlock[];
  readonly blocks: readonly BlockDesign[];
}

export const readTop = (written: WrittenTop, around: Around): TopDesign => {
  const top: TopDesign = {
    set: 'straight',
    rows: readRows(written, around),
    sashing: readSashing(written.sashing, around),
    borders: readBorders(written.borders ?? [], around),
  };
  checkExtent(top, around);
  return top;
};

const readRows = (top: WrittenTop, around: Around): TopDesign['rows'] => {
  const { report } = around.reading;
  const rows = top.rows ?? [];
  // other ways to fill a top are told apart as not built
  if (rows.length === 0 && (top.rows !== undefined || (top.sections === undefined && top.arrangement === undefined))) {
    report({ code: 'design/empty-top', path: top.rows === undefined ? '/top' : '/top/rows' });
  }
  const cells = rows.reduce((sum, row) => sum + row.length, 0);
  if (cells > limits.cells) {
    report({ code: 'design/too-many', path: '/top/rows', what: 'cells', found: cells, most: limits.cells });
    return [];
  }
  const expected = rows[0]?.length ?? 0;
  rows.forEach((row, i) => {
    const path = `/top/rows/${i}`;
    if (row.length === 0) report({ code: 'design/too-few', path, what: 'cells', found: 0, least: 1 });
    else if (row.length !== expected && expected > 0) {
      report({ code: 'design/uneven-rows', path, row: i, found: row.length, expected });
    }
  });
  const known = blocksById(around);
  const read = rows.map((row, i) =>
    row.map((cell, j) => readCell(cell, { ...around, known, path: `/top/rows/${i}/${j}` })),
  );
  checkSizes(read, around);
  return read;
};

const checkExtent = (top: TopDesign, { reading, blocks }: Around): void => {
  const { report, unit } = reading;
  const { size, pieces } = topExtent(top, blocks);
  if (pieces > limits.pieces) {
    report({ code: 'design/too-many', path: '/top/rows', what: 'pieces', found: pieces, most: limits.pieces });
  }
  const most = largestTop[unit];
  if (size.some((side) => compare(side, most) > 0)) {
    report({ code: 'design/top-too-large', path: '/top', found: size, most, unit });
  }
};

interface Known {
  readonly known: ReadonlyMap<string, readonly string[]>;
}

/** Each block's id with the names of its colourings. */
const blocksById = ({ written }: Around): Known['known'] =>
  new Map(
    written
      .filter((block) => block.id !== '')
      .map((block) => [block.id, Object.keys(block.colourings ?? { default: {} })]),
  );

type WrittenCell = NonNullable<WrittenTop['rows']>[number][number];

const readCell = (cell: WrittenCell, around: Around & Known & { readonly path: string }): CellDesign => {
  const { path, reading, known } = around;
  if ('plain' in cell) return { kind: 'plain', fabric: fabricAt(cell.plain, { ...around, path: `${path}/plain` }) };
  const colouring = cell.colouring ?? 'default';
  const colourings = known.get(cell.block);
  if (colourings === undefined) {
    reading.report({
      code: 'design/unknown-block',
      path: `${path}/block`,
      found: cell.block,
      known: [...known.keys()],
    });
  } else if (!colourings.includes(colouring)) {
    const place = cell.colouring === undefined ? path : `${path}/colouring`;
    const { block } = cell;
    reading.report({ code: 'design/unknown-colouring', path: place, block, found: colouring, known: colourings });
  }
  return { kind: 'block', block: cell.block, colouring, turn: cell.turn ?? 0, mirror: cell.mirror ?? false };
};

/** Says nothing where a block in the way has no size of its own to compare. */
const checkSizes = (rows: TopDesign['rows'], { reading, blocks }: Around): void => {
  const sizes = new Map(blocks.map((block) => [block.id, sizeOf(block.shape)]));
  const columns = Math.max(0, ...rows.map((row) => row.length));
  rows.forEach((row, i) => {
    const cells = row.map((cell, j) => ({ cell, path: `/top/rows/${i}/${j}` }));
    checkLine({ line: 'row', index: i, cells, sizes, reading });
  });
  for (let j = 0; j < columns; j++) {
    const cells = rows.flatMap((row, i) =>
      row[j] ? [{ cell: row[j] as CellDesign, path: `/top/rows/${i}/${j}` }] : [],
    );
    checkLine({ line: 'column', index: j, cells, sizes, reading });
  }
};

interface Line {
  readonly line: 'row' | 'column';
  readonly index: number;
  readonly cells: readonly { readonly cell: CellDesign; readonly path: string }[];
  readonly sizes: ReadonlyMap<string, readonly [Rational, Rational]>;
  readonly reading: Reading;
}

const checkLine = ({ line, index, cells, sizes, reading }: Line): void => {
  let first: { readonly block: string; readonly side: Rational } | null = null;
  for (const { cell, path } of cells) {
    const size = cell.kind === 'block' ? sizes.get(cell.block) : undefined;
    if (cell.kind === 'plain' || size === undefined) continue;
    const upright = isUpright(cell.turn) === (line === 'row');
    const side = size[upright ? 1 : 0];
    first ??= { block: cell.block, side };
    if (compare(side, first.side) === 0) continue;
    const { unit } = reading;
    const { block } = cell;
    reading.report({
      code: 'design/sizes-differ',
      path,
      line,
      index,
      block,
      found: side,
      other: first.block,
      expected: first.side,
      unit,
    });
  }
  if (cells.length > 0 && cells.every(({ cell }) => cell.kind === 'plain')) {
    const path = line === 'row' ? `/top/rows/${index}` : `/top/rows/0/${index}`;
    reading.report({ code: 'design/plain-size-unknown', path, line, index });
  }
};

const isUpright = (turn: QuarterTurn): boolean => turn === 0 || turn === 180;

const readSashing = (written: WrittenTop['sashing'], around: Around): SashingDesign | null => {
  if (written === undefined) return null;
  const path = '/top/sashing';
  const { width } = written;
  const pair = typeof width === 'object';
  const across = around.reading.length({
    written: pair ? width.across : width,
    path: pair ? `${path}/width/across` : `${path}/width`,
  });
  const down = pair ? around.reading.length({ written: width.down, path: `${path}/width/down` }) : across;
  const fabric = fabricAt(written.fabric, { ...around, path: `${path}/fabric` });
  const { cornerstones = null, outer = false } = written;
  if (cornerstones !== null) fabricAt(cornerstones, { ...around, path: `${path}/cornerstones` });
  return across && down && { across, down, fabric, cornerstones, outer };
};

const readBorders = (written: NonNullable<WrittenTop['borders']>, around: Around): readonly BorderDesign[] =>
  written.flatMap((border, i) => {
    if ('pieced' in border) return [];
    const path = `/top/borders/${i}`;
    const width = around.reading.length({ written: border.width, path: `${path}/width` });
    const fabric = fabricAt(border.fabric, { ...around, path: `${path}/fabric` });
    return width === null ? [] : [{ width, fabric, corners: 'butted' as const, grain: border.grain ?? 'least' }];
  });

const fabricAt = (found: string, { path, reading, fabrics }: Around & { readonly path: string }): string => {
  if (!fabrics.has.has(found)) reading.report({ code: 'design/unknown-fabric', path, found, known: fabrics.ids });
  return found;
};
