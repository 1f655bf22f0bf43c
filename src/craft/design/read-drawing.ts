// A block drawn by its seams: runs of lines and arcs on the grid, and a place in each patch that names its
// tone. What patches the lines make is drafting's question.

import { cornerTolerance, limits } from '#craft/limits';
import { toNumber } from '#ground/exact';
import type { WrittenBlock, WrittenDrawing } from './document.ts';
import type { DrawingDesign, GridPoint, GridRun } from './quilt.ts';
import { isOnGrid, readCounts, readPlace, readSize } from './read-grid.ts';
import { readRun } from './read-run.ts';
import type { Spot } from './reading.ts';
import type { ExactSize } from './size.ts';

/** @param at.path of the block */
export const readDrawing = (
  block: WrittenBlock & { readonly drawing: WrittenDrawing },
  { path, reading }: Spot,
): DrawingDesign | null => {
  const { drawing } = block;
  const place = `${path}/drawing`;
  const size = readSize(block.size, { path: `${path}/size`, reading });
  const grid = readCounts(drawing.grid, { path: `${place}/grid`, reading });
  const lines = drawing.seams.reduce((all, seam) => all + seam.length - 1, 0);
  if (lines > limits.seams) {
    reading.report({
      code: 'design/too-many',
      path: `${place}/seams`,
      what: 'seams',
      found: lines,
      most: limits.seams,
    });
    return null;
  }
  const spot = { grid, block: block.id, reading };
  const seams = drawing.seams.map((seam, i) => readSeam(seam, { ...spot, size, path: `${place}/seams/${i}` }));
  const tonesAt = drawing.tonesAt.map(({ at, tone }, i) => {
    const named = reading.name(tone, `${place}/tonesAt/${i}/tone`);
    const read = readOnGrid(at, { ...spot, path: `${place}/tonesAt/${i}/at` });
    return named && read ? { at: read, tone } : null;
  });
  if (size === null || grid === null) return null;
  if (seams.some((seam) => seam === null) || tonesAt.some((tone) => tone === null)) return null;
  return {
    kind: 'drawing',
    size,
    grid,
    seams: seams.flatMap((seam) => (seam ? [seam] : [])),
    tonesAt: tonesAt.flatMap((tone) => tone ?? []),
  };
};

type SeamSpot = GridSpot & { readonly size: ExactSize | null };

interface GridSpot extends Spot {
  readonly grid: DrawingDesign['grid'] | null;
  readonly block: string;
}

const readSeam = (written: WrittenDrawing['seams'][number], spot: SeamSpot): GridRun | null => {
  const { path, reading, block, grid } = spot;
  const seam = readRun(written, { ...spot, ends: 'open' });
  if (grid === null || seam === null) return null;
  const slack = cornerTolerance * Math.max(...grid.map(toNumber));
  const still = seam.corners.flatMap((point, i) =>
    i > 0 && isNear(point, seam.corners[i - 1] as GridPoint, slack) ? [i] : [],
  );
  for (const i of still) reading.report({ code: 'design/seam-without-length', path: `${path}/${i}`, block });
  return still.length === 0 ? seam : null;
};

const readOnGrid = (written: WrittenDrawing['tonesAt'][number]['at'], spot: GridSpot): GridPoint | null => {
  const place = readPlace(written, spot);
  if (place === null || spot.grid === null) return null;
  return isOnGrid({ ...spot, place, grid: spot.grid }) ? place : null;
};

const isNear = (a: GridPoint, b: GridPoint, slack: number): boolean =>
  Math.abs(toNumber(a[0]) - toNumber(b[0])) < slack && Math.abs(toNumber(a[1]) - toNumber(b[1])) < slack;
