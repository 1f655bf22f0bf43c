// Do the patches cover the block exactly once? Every inner edge must be walked once each way and the
// rest must be the block's own outline: then the patches' outlines add up to the block's.
// Where they do not, how much lies double or bare, and where.
import { cornerTolerance } from '#craft/limits';
import { at, type Point, type Polygon } from '#ground/plane';
import type { DraftedBlock } from './block.ts';
import { cornersBetween, sortedByX } from './corners-between.ts';
import { coverFaults } from './cover.ts';
import type { DraftingProblem } from './problems.ts';

/**
 * Empty when the patches tile the block.
 *
 * @param block patches with clockwise outlines and nearly meeting corners already made one
 * @source docs/formulas.md#tiling
 */
export const tilingProblems = (block: DraftedBlock): readonly DraftingProblem[] => {
  const [width, height] = block.size;
  const slack = cornerTolerance * Math.max(width, height);
  const outline: Polygon = [at(0, 0), at(width, 0), at(width, height), at(0, height)];
  if (edgesCancel([...block.patches.map((p) => p.points), outline.toReversed()], slack)) return [];
  const listed = block.patches.map((p) => Number(p.path.slice(p.path.lastIndexOf('/') + 1)));
  return coverFaults({ outline, patches: block.patches.map((p) => p.points), slack }).map(
    (fault): DraftingProblem =>
      fault.kind === 'gap'
        ? { code: 'drafting/gap', path: block.path, block: block.id, area: fault.area, at: fault.at }
        : {
            code: 'drafting/overlap',
            path: block.patches[fault.patches[1]]?.path ?? block.path,
            block: block.id,
            patches: [listed[fault.patches[0]] as number, listed[fault.patches[1]] as number],
            area: fault.area,
            at: fault.at,
          },
  );
};

/** True when, split at every corner that lies on them, the directed edges of all outlines cancel in pairs. */
const edgesCancel = (outlines: readonly Polygon[], slack: number): boolean => {
  const corners = cornersOf(outlines);
  const walks = new Map<number, number>();
  const count = corners.all.length;
  for (const outline of outlines) {
    for (let i = 0; i < outline.length; i++) {
      const a = outline[i] as Point;
      const b = outline[(i + 1) % outline.length] as Point;
      const stops = [corners.indexOf(a), ...cornersBetween([a, b], corners.byX, slack), corners.indexOf(b)];
      for (let k = 0; k + 1 < stops.length; k++) {
        const from = stops[k] as number;
        const to = stops[k + 1] as number;
        const forward = from < to;
        const key = forward ? from * count + to : to * count + from;
        walks.set(key, (walks.get(key) ?? 0) + (forward ? 1 : -1));
      }
    }
  }
  for (const net of walks.values()) if (net !== 0) return false;
  return true;
};

const cornersOf = (outlines: readonly Polygon[]) => {
  const indexes = new Map<string, number>();
  const all: Point[] = [];
  const keyOf = (p: Point) => `${p.x},${p.y}`;
  for (const outline of outlines) {
    for (const p of outline) {
      const key = keyOf(p);
      if (indexes.has(key)) continue;
      indexes.set(key, all.length);
      all.push(p);
    }
  }
  const byX = sortedByX(all);
  return { all, byX, indexOf: (p: Point) => indexes.get(keyOf(p)) as number };
};
