// A set on point: the main cells, those between them, and the cloth of the setting triangles.
import { zero } from '#ground/exact';
import type { WrittenTop } from './document.ts';
import type { CellRows, OnPointTop } from './quilt.ts';
import { fabricAt, readRows, type TopReading } from './read-cells.ts';
import { readSashing } from './read-sashing.ts';
import { withinLimit } from './read-straight.ts';

export const readOnPoint = (written: WrittenTop, at: TopReading): Omit<OnPointTop, 'borders'> => {
  const { reading } = at;
  const { rows, settingFabric } = written;
  if (rows === undefined || rows.length === 0) {
    reading.report({ code: 'design/empty-top', path: rows === undefined ? '/top' : '/top/rows' });
  }
  const main = withinLimit(rows ?? [], at);
  const between = readBetween(written.between ?? [], { ...at, main });
  if (settingFabric === undefined) {
    reading.report({ code: 'design/missing-key', path: '/top/settingFabric', key: 'settingFabric' });
  } else fabricAt(settingFabric, { ...at, path: '/top/settingFabric' });
  return {
    set: 'on-point',
    rows: main,
    between,
    sashing: readSashing(written.sashing, at),
    settingFabric: settingFabric ?? '',
    float: reading.length({ written: written.float, path: '/top/float', sign: 'zero-or-more', missing: zero }) ?? zero,
  };
};

/** A row fewer and a column fewer than the main cells. */
const readBetween = (
  written: NonNullable<WrittenTop['between']>,
  at: TopReading & { readonly main: CellRows },
): CellRows => {
  const path = '/top/between';
  const columns = Math.max(0, (at.main[0]?.length ?? 0) - 1);
  const expected = [columns === 0 ? 0 : Math.max(0, at.main.length - 1), columns] as const;
  const found = [written.length, written[0]?.length ?? 0] as const;
  if (at.main.length > 0 && (found[0] !== expected[0] || (found[0] > 0 && found[1] !== expected[1]))) {
    at.reading.report({ code: 'design/between-size', path, found, expected });
  }
  return readRows(written, { ...at, path });
};
