// A block drawn as patches on a grid: corners read exactly, each patch judged by itself. Whether the
// patches tile the block is drafting's question.

import { cornerTolerance } from '#craft/limits';
import { toNumber } from '#ground/exact';
import { outlineFault } from '#ground/outline';
import type { WrittenBlock, WrittenPatches } from './document.ts';
import type { GridRun, PatchesDesign } from './quilt.ts';
import { readCounts, readSize } from './read-grid.ts';
import { readRun } from './read-run.ts';
import type { Reading, Spot } from './reading.ts';
import { runInChords } from './run-in-chords.ts';

export const readPatches = (
  block: WrittenBlock & { readonly patches: WrittenPatches },
  { path, reading }: Spot,
): PatchesDesign | null => {
  const size = readSize(block.size, { path: `${path}/size`, reading });
  const grid = readCounts(block.patches.grid, { path: `${path}/patches/grid`, reading });
  const patches = block.patches.list.map((patch, i) => {
    const place = `${path}/patches/list/${i}`;
    const named = reading.name(patch.tone, `${place}/tone`);
    const outline = readRun(patch.points, {
      reading,
      block: block.id,
      size,
      grid,
      ends: 'closed',
      path: `${place}/points`,
    });
    if (!named || grid === null || outline === null) return null;
    return isOutline({ outline, grid, block: block.id, path: place, reading })
      ? { ...outline, tone: patch.tone }
      : null;
  });
  if (size === null || grid === null || patches.some((patch) => patch === null)) return null;
  return { kind: 'patches', size, grid, patches: patches.flatMap((patch) => patch ?? []) };
};

interface OutlineAt {
  readonly outline: GridRun;
  readonly grid: PatchesDesign['grid'];
  readonly block: string;
  readonly path: string;
  readonly reading: Reading;
}

const isOutline = ({ outline, grid, block, path, reading }: OutlineAt): boolean => {
  const slack = cornerTolerance * Math.max(...grid.map(toNumber));
  const least = (outline.arcs ?? []).length === 0 ? 3 : 2;
  if (outline.corners.length < least) {
    const found = outline.corners.length;
    reading.report({ code: 'design/too-few', path: `${path}/points`, what: 'corners', found, least });
    return false;
  }
  const { points, cornerOf } = runInChords(outline, grid);
  const fault = outlineFault(points, slack);
  if (fault === null) return true;
  if (fault.kind === 'no-area') {
    reading.report({ code: 'design/no-area', path, block });
    return false;
  }
  const [a, b] = fault.places.map((place) => cornerOf[place]) as [number, number];
  if (fault.kind === 'corner-twice')
    reading.report({ code: 'design/corner-twice', path: `${path}/points/${b}`, block, corners: [a, b] });
  else reading.report({ code: 'design/crosses-itself', path, block, edges: [a, b] });
  return false;
};
