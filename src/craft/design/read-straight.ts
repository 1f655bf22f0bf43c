// A straight set: rows that agree in size with their neighbours, or an arrangement of one block.

import { limits } from '#craft/limits';
import { compare, type Rational } from '#ground/exact';
import type { WrittenTop } from './document.ts';
import type { ArrangementDesign, CellDesign, CellRows, QuarterTurn, StraightTop } from './quilt.ts';
import { namedColouring, readRows, type TopReading } from './read-cells.ts';
import { readSashing } from './read-sashing.ts';
import type { Reading } from './reading.ts';
import { sizeOf } from './size.ts';

export const readStraight = (written: WrittenTop, at: TopReading): Omit<StraightTop, 'borders'> => {
  const { report } = at.reading;
  const { rows, arrangement } = written;
  if (rows !== undefined && arrangement !== undefined) {
    report({ code: 'design/filled-twice', path: '/top', found: ['rows', 'arrangement'] });
  }
  if (arrangement !== undefined) {
    const read = readArrangement(arrangement, at);
    return { set: 'straight', rows: unturned(read), arrangement: read, sashing: readSashing(written.sashing, at) };
  }
  if (rows === undefined || rows.length === 0) {
    report({ code: 'design/empty-top', path: rows === undefined ? '/top' : '/top/rows' });
  }
  const read = withinLimit(rows ?? [], at);
  checkSizes(read, at);
  return { set: 'straight', rows: read, arrangement: null, sashing: readSashing(written.sashing, at) };
};

/** No row where there are too many cells. */
export const withinLimit = (rows: NonNullable<WrittenTop['rows']>, at: TopReading): CellRows => {
  const cells = rows.reduce((sum, row) => sum + row.length, 0);
  if (cells <= limits.cells) return readRows(rows, { ...at, path: '/top/rows' });
  at.reading.report({ code: 'design/too-many', path: '/top/rows', what: 'cells', found: cells, most: limits.cells });
  return [];
};

const readArrangement = (written: NonNullable<WrittenTop['arrangement']>, at: TopReading): ArrangementDesign => {
  const path = '/top/arrangement';
  const { kind, block, rows, columns, swap = false, darkCorner = null } = written;
  const colouring = namedColouring(written, { ...at, path });
  const cells = rows * columns;
  if (cells > limits.cells) {
    at.reading.report({ code: 'design/too-many', path, what: 'cells', found: cells, most: limits.cells });
  }
  return { kind, block, colouring, rows, columns, swap, darkCorner };
};

const unturned = ({ block, colouring, rows, columns }: ArrangementDesign): CellRows => {
  const cell: CellDesign = { kind: 'block', block, colouring, turn: 0, mirror: false };
  if (rows * columns > limits.cells) return [];
  return Array.from({ length: rows }, () => Array.from({ length: columns }, () => cell));
};

/** Says nothing where a block in the way has no size of its own to compare. */
const checkSizes = (rows: CellRows, { reading, blocks }: TopReading): void => {
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

interface Side {
  readonly block: string;
  readonly side: Rational;
  readonly path: string;
}

/** The first of those that most are like: the few that differ are told, not the many. */
const usualOf = (sides: readonly Side[]): Side | undefined => {
  const alike = new Map<string, { readonly first: Side; count: number }>();
  for (const one of sides) {
    const key = one.side.toFraction();
    const known = alike.get(key);
    if (known === undefined) alike.set(key, { first: one, count: 1 });
    else known.count += 1;
  }
  return [...alike.values()].toSorted((a, b) => b.count - a.count)[0]?.first;
};

const checkLine = ({ line, index, cells, sizes, reading }: Line): void => {
  const sides = cells.flatMap(({ cell, path }): readonly Side[] => {
    const size = cell.kind === 'block' ? sizes.get(cell.block) : undefined;
    if (cell.kind === 'plain' || size === undefined) return [];
    return [{ block: cell.block, side: size[isUpright(cell.turn) === (line === 'row') ? 1 : 0], path }];
  });
  const usual = usualOf(sides);
  for (const { block, side, path } of sides) {
    if (usual === undefined || compare(side, usual.side) === 0) continue;
    reading.report({
      code: 'design/sizes-differ',
      path,
      line,
      index,
      block,
      found: side,
      other: usual.block,
      expected: usual.side,
      unit: reading.unit,
    });
  }
  if (cells.length > 0 && cells.every(({ cell }) => cell.kind === 'plain')) {
    const path = line === 'row' ? `/top/rows/${index}` : `/top/rows/0/${index}`;
    reading.report({ code: 'design/plain-size-unknown', path, line, index });
  }
};

const isUpright = (turn: QuarterTurn): boolean => turn === 0 || turn === 180;
