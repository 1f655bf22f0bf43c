// Chosen patches moved, mirrored, turned and repeated, as they lie on the grid.
import { arcExtremes } from '#ground/arc';
import { at, type Box, boxOf, type Point, quarterTurned } from '#ground/plane';
import { mapped } from './curves.ts';
import { laidOn } from './lay.ts';
import { type Drawn, type DrawnPatch, slackOf } from './patch.ts';

export const chosenBox = (patches: readonly DrawnPatch[], chosen: readonly number[]): Box =>
  boxOf(
    chosen.flatMap((index) => {
      const { points = [], arcs = [] } = patches[index] ?? {};
      return [...points, ...arcs.flatMap(arcExtremes)];
    }),
  );

const changed = (
  patches: readonly DrawnPatch[],
  chosen: readonly number[],
  to: (p: Point) => Point,
  kind: 'turned' | 'mirrored' = 'turned',
): readonly DrawnPatch[] => patches.map((patch, index) => (chosen.includes(index) ? mapped(patch, to, kind) : patch));

/** Moved, but not over the block's edge: those that would be stay at it. */
export const movedBy = (
  { grid, patches }: Drawn,
  chosen: readonly number[],
  by: readonly [number, number],
): readonly DrawnPatch[] => {
  const box = chosenBox(patches, chosen);
  const held = (way: number, from: number, long: number, most: number): number =>
    Math.min(Math.max(way, -from), most - from - long);
  const dx = held(by[0], box.x, box.width, grid[0]);
  const dy = held(by[1], box.y, box.height, grid[1]);
  return changed(patches, chosen, ({ x, y }) => at(x + dx, y + dy));
};

/** Left and right exchanged, or top and bottom, within the box round them. */
export const mirroredIn = (
  patches: readonly DrawnPatch[],
  chosen: readonly number[],
  way: 'left-right' | 'top-bottom',
): readonly DrawnPatch[] => {
  const { x, y, width, height } = chosenBox(patches, chosen);
  const to = (p: Point): Point => (way === 'left-right' ? at(2 * x + width - p.x, p.y) : at(p.x, 2 * y + height - p.y));
  return changed(patches, chosen, to, 'mirrored');
};

/** A quarter turn clockwise; the upper left corner of the box round them stays, or as near as the block's edge lets it. */
export const turnedIn = ({ grid, patches }: Drawn, chosen: readonly number[]): readonly DrawnPatch[] => {
  const { x, y, width, height } = chosenBox(patches, chosen);
  const dx = Math.min(x, grid[0] - height) + height;
  const dy = Math.min(y, grid[1] - width);
  return changed(patches, chosen, (p) => {
    const turned = quarterTurned(at(p.x - x, p.y - y), 1);
    return at(turned.x + dx, turned.y + dy);
  });
};

export interface Repeating {
  /** So many there are then, side by side and one under the other. */
  readonly times: readonly [across: number, down: number];
  readonly step: readonly [across: number, down: number];
}

/**
 * Laid again at each step; what would lie over the block's edge is left out.
 *
 * @returns null where an arc would end under a patch
 */
export const repeatedBy = (
  drawn: Drawn,
  chosen: readonly number[],
  { times, step }: Repeating,
): readonly DrawnPatch[] | null => {
  const shifts = Array.from(
    { length: times[0] * times[1] },
    (_, i) => [i % times[0], Math.floor(i / times[0])] as const,
  );
  return laidAll(
    drawn,
    chosen,
    shifts.slice(1).map(
      ([i, j]) =>
        ({ x, y }: Point) =>
          at(x + i * step[0], y + j * step[1]),
    ),
  );
};

/**
 * Laid again at each quarter turn round the middle of the block, which has as many squares across as down.
 *
 * @returns null where an arc would end under a patch
 */
export const repeatedRound = (drawn: Drawn, chosen: readonly number[]): readonly DrawnPatch[] | null => {
  const [cx, cy] = [drawn.grid[0] / 2, drawn.grid[1] / 2];
  return laidAll(
    drawn,
    chosen,
    [1, 2, 3].map((quarters) => (p: Point) => {
      const turned = quarterTurned(at(p.x - cx, p.y - cy), quarters);
      return at(turned.x + cx, turned.y + cy);
    }),
  );
};

const laidAll = (
  { grid, patches }: Drawn,
  chosen: readonly number[],
  ways: readonly ((p: Point) => Point)[],
): readonly DrawnPatch[] | null => {
  const slack = slackOf(grid);
  const own = chosen.flatMap((index) => patches[index] ?? []);
  const copies = ways
    .map((to) => own.map((patch) => mapped(patch, to, 'turned')))
    .filter((all) => all.every(({ points }) => points.every((p) => isOnGrid(p, grid, slack))))
    .flat();
  return copies.reduce<readonly DrawnPatch[] | null>((all, copy) => all && laidOn(all, copy, slack), patches);
};

const isOnGrid = ({ x, y }: Point, grid: Drawn['grid'], slack: number): boolean =>
  x > -slack && y > -slack && x < grid[0] + slack && y < grid[1] + slack;
