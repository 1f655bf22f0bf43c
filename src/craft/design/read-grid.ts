// Sizes, grids and places on a grid, as every drawn block gives them.
import { cornerTolerance } from '#craft/limits';
import { isPositive, toNumber } from '#ground/exact';
import type { WrittenBlock, WrittenPlace } from './document.ts';
import { foundText } from './found.ts';
import type { GridPoint } from './quilt.ts';
import type { Reading, Spot } from './reading.ts';
import type { ExactSize } from './size.ts';

/** A side for a square block, or both; required for a drawing. */
export const readSize = (written: WrittenBlock['size'], { path, reading }: Spot): ExactSize | null => {
  if (!Array.isArray(written)) {
    const side = reading.length({ written, path });
    return side && [side, side];
  }
  const width = reading.length({ written: written[0], path: `${path}/0` });
  const height = reading.length({ written: written[1], path: `${path}/1` });
  return width && height && [width, height];
};

/** Two numbers above zero: a grid, or a span on it. */
export const readCounts = (written: WrittenPlace, { path, reading }: Spot): GridPoint | null => {
  const [across, down] = written.map((count, i) => {
    const read = reading.place(count, `${path}/${i}`);
    if (read === null || isPositive(read)) return read;
    reading.report({ code: 'design/not-positive', path: `${path}/${i}`, found: foundText(count) });
    return null;
  });
  return across && down ? [across, down] : null;
};

export const readPlace = (written: WrittenPlace, { path, reading }: Spot): GridPoint | null => {
  const x = reading.place(written[0], `${path}/0`);
  const y = reading.place(written[1], `${path}/1`);
  return x && y && [x, y];
};

/** Whether a place lies on the grid, edges included; reported where it does not. */
export const isOnGrid = (of: {
  readonly place: GridPoint;
  readonly grid: GridPoint;
  readonly block: string;
  readonly path: string;
  readonly reading: Reading;
}): boolean => {
  const [x, y] = of.place.map(toNumber) as [number, number];
  const grid = of.grid.map(toNumber) as [number, number];
  const slack = cornerTolerance * Math.max(...grid);
  if (x >= -slack && x <= grid[0] + slack && y >= -slack && y <= grid[1] + slack) return true;
  of.reading.report({ code: 'design/outside-grid', path: of.path, block: of.block, found: [x, y], grid });
  return false;
};
