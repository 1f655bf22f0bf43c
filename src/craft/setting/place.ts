// From a block's own frame to the top: mirrored left to right, turned clockwise, laid in place.
import { at, type Point, quarterTurned } from '#ground/plane';
import type { PlacedBlock } from './top.ts';

/**
 * Where a point of a block lies in the top.
 *
 * @param placed the block instance; `at` and `size` are those of its turned outline
 * @param size   the block's own finished size, not turned
 * @param p      a point of the block as drafted (not mirrored)
 */
export const pointInTop = (placed: PlacedBlock, size: readonly [number, number], p: Point): Point => {
  const faced = placed.mirror ? at(size[0] - p.x, p.y) : p;
  const turned = quarterTurned(at(faced.x - size[0] / 2, faced.y - size[1] / 2), placed.turn / 90);
  return at(placed.at[0] + placed.size[0] / 2 + turned.x, placed.at[1] + placed.size[1] / 2 + turned.y);
};
