// From a block's own frame to the top: mirrored left to right, turned clockwise, laid in place.
import { at, type Point, type Polygon, quarterTurned, turned } from '#ground/plane';
import type { PlacedBlock } from './top.ts';

/**
 * Where a point of a block lies in the top.
 *
 * @param placed the block instance; `at` and `size` are those of the box round its turned outline
 * @param size   the block's own finished size, not turned
 * @param p      a point of the block as drafted (not mirrored)
 */
export const pointInTop = (
  placed: Pick<PlacedBlock, 'mirror' | 'turn' | 'at' | 'size'>,
  size: readonly [number, number],
  p: Point,
): Point => {
  const faced = placed.mirror ? at(size[0] - p.x, p.y) : p;
  const fromMiddle = at(faced.x - size[0] / 2, faced.y - size[1] / 2);
  const { x, y } = turnedBy(fromMiddle, placed.turn);
  return at(placed.at[0] + placed.size[0] / 2 + x, placed.at[1] + placed.size[1] / 2 + y);
};

/** Turned clockwise about the origin by degrees; quarter turns are exact. */
export const turnedBy = (p: Point, degrees: number): Point =>
  degrees % 90 === 0 ? quarterTurned(p, degrees / 90) : turned(p, (degrees * Math.PI) / 180);

/** The outline of a placed block in the top, clockwise: a rectangle, or on point a square standing on its corner. */
export const outlineOfPlaced = ({ at: [x, y], size: [width, height], turn }: PlacedBlock): Polygon =>
  turn % 90 === 0
    ? [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)]
    : [at(x + width / 2, y), at(x + width, y + height / 2), at(x + width / 2, y + height), at(x, y + height / 2)];
