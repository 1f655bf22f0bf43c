// A block drawn as patches on a grid: corners read exactly, each patch judged by itself. Whether the
// patches tile the block is drafting's question.
import { isPositive, type Rational, toNumber } from '#ground/exact';
import { at } from '#ground/plane';
import type { WrittenBlock, WrittenPatches } from './document.ts';
import { foundText } from './found.ts';
import { outlineFault } from './outline-fault.ts';
import type { GridPoint, PatchesDesign } from './quilt.ts';
import type { Reading, Spot } from './reading.ts';
import type { ExactSize } from './size.ts';

export const readPatches = (
  block: WrittenBlock & { readonly patches: WrittenPatches },
  { path, reading }: Spot,
): PatchesDesign | null => {
  const size = readSize(block.size, { path: `${path}/size`, reading });
  const grid = readGrid(block.patches.grid, { path: `${path}/patches/grid`, reading });
  const patches = block.patches.list.map((patch, i) => {
    const place = `${path}/patches/list/${i}`;
    const named = reading.name(patch.tone, `${place}/tone`);
    const corners = patch.points.map((point, j) =>
      Array.isArray(point) ? readCorner(point, { path: `${place}/points/${j}`, reading }) : null,
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

const readGrid = (written: WrittenPatches['grid'], { path, reading }: Spot): PatchesDesign['grid'] | null => {
  const [across, down] = written.map((count, i) => {
    const read = reading.place(count, `${path}/${i}`);
    if (read === null || isPositive(read)) return read;
    reading.report({ code: 'design/not-positive', path: `${path}/${i}`, found: foundText(count) });
    return null;
  });
  return across && down ? [across, down] : null;
};

const readCorner = (written: WrittenPatches['grid'], { path, reading }: Spot): GridPoint | null => {
  const x = reading.place(written[0], `${path}/0`);
  const y = reading.place(written[1], `${path}/1`);
  return x && y && [x, y];
};

/** Corners nearer than this share of the grid's larger side are one corner (docs/document.md). */
const cornerShare = 1e-6;

interface OutlineAt {
  readonly outline: readonly GridPoint[];
  readonly grid: PatchesDesign['grid'];
  readonly block: string;
  readonly path: string;
  readonly reading: Reading;
}

const isOutline = ({ outline, grid, block, path, reading }: OutlineAt): boolean => {
  const [across, down] = grid.map(toNumber) as [number, number];
  const slack = cornerShare * Math.max(across, down);
  const points = outline.map(([x, y]: readonly [Rational, Rational]) => at(toNumber(x), toNumber(y)));
  let sound = true;
  points.forEach(({ x, y }, i) => {
    if (x >= -slack && x <= across + slack && y >= -slack && y <= down + slack) return;
    reading.report({
      code: 'design/outside-grid',
      path: `${path}/points/${i}`,
      block,
      found: [x, y],
      grid: [across, down],
    });
    sound = false;
  });
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
