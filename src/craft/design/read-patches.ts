// A block drawn as patches on a grid: corners read exactly, each patch judged by itself. Whether the
// patches tile the block is drafting's question.

import { cornerTolerance } from '#craft/limits';
import { type Rational, toNumber } from '#ground/exact';
import { outlineFault } from '#ground/outline';
import { at } from '#ground/plane';
import type { WrittenBlock, WrittenPatches } from './document.ts';
import type { GridPoint, PatchesDesign } from './quilt.ts';
import { isOnGrid, readCounts, readPlace, readSize } from './read-grid.ts';
import type { Reading, Spot } from './reading.ts';

export const readPatches = (
  block: WrittenBlock & { readonly patches: WrittenPatches },
  { path, reading }: Spot,
): PatchesDesign | null => {
  const size = readSize(block.size, { path: `${path}/size`, reading });
  const grid = readCounts(block.patches.grid, { path: `${path}/patches/grid`, reading });
  const patches = block.patches.list.map((patch, i) => {
    const place = `${path}/patches/list/${i}`;
    const named = reading.name(patch.tone, `${place}/tone`);
    const corners = patch.points.map((point, j) =>
      Array.isArray(point) ? readPlace(point, { path: `${place}/points/${j}`, reading }) : null,
    );
    if (!named || grid === null || corners.some((corner) => corner === null)) return null;
    const outline = corners as readonly GridPoint[];
    return isOutline({ outline, grid, block: block.id, path: place, reading })
      ? { corners: outline, tone: patch.tone }
      : null;
  });
  if (size === null || grid === null || patches.some((patch) => patch === null)) return null;
  return { kind: 'patches', size, grid, patches: patches.flatMap((patch) => patch ?? []) };
};

interface OutlineAt {
  readonly outline: readonly GridPoint[];
  readonly grid: PatchesDesign['grid'];
  readonly block: string;
  readonly path: string;
  readonly reading: Reading;
}

const isOutline = ({ outline, grid, block, path, reading }: OutlineAt): boolean => {
  const slack = cornerTolerance * Math.max(...grid.map(toNumber));
  const points = outline.map(([x, y]: readonly [Rational, Rational]) => at(toNumber(x), toNumber(y)));
  const placed = outline.map((place, i) => isOnGrid({ place, grid, block, path: `${path}/points/${i}`, reading }));
  const sound = placed.every(Boolean);
  const fault = points.length < 3 ? null : outlineFault(points, slack);
  if (fault === null) return sound;
  switch (fault.kind) {
    case 'corner-twice':
      reading.report({
        code: 'design/corner-twice',
        path: `${path}/points/${fault.places[1]}`,
        block,
        corners: fault.places,
      });
      return false;
    case 'crosses-itself':
      reading.report({ code: 'design/crosses-itself', path, block, edges: fault.places });
      return false;
    case 'no-area':
      reading.report({ code: 'design/no-area', path, block });
      return false;
  }
};
