// Where in a photograph of cloth a piece is cut: each piece elsewhere, as from real cloth, at true scale, and out of one stretch of it
// wherever the photograph shows enough.
import { chanceFrom } from '#ground/chance';
import type { Matrix } from './scene.ts';

export interface PieceOfPhoto {
  /** x, y, x, y … of the piece, as the block lies as drafted. */
  readonly points: readonly number[];
  /** What the whole photograph shows, in the drawing's unit. */
  readonly size: readonly [width: number, height: number];
  /** Of the picture's pixels across. */
  readonly widthPx: number;
  /** Which piece this is: another is cut elsewhere. */
  readonly seed: number;
  /** So many quarters the block is turned clockwise, where the print must stand upright all the same; else 0. */
  readonly quarters: number;
}

/** From pixels of the photograph to the block's own units. */
export const cutOf = ({ points, size, widthPx, seed, quarters }: PieceOfPhoto): Matrix => {
  const [cos, sin] = quarterTurns[(((-quarters % 4) + 4) % 4) as 0 | 1 | 2 | 3];
  // the piece as it lies on the photograph
  const [x, y] = [rangeOf(points, (px, py) => cos * px + sin * py), rangeOf(points, (px, py) => cos * py - sin * px)];
  const chance = chanceFrom(seed);
  const [left, top] = [beginning(x, size[0], chance()), beginning(y, size[1], chance())];
  const scale = size[0] / widthPx;
  return [cos * scale, sin * scale, -sin * scale, cos * scale, cos * left - sin * top, sin * left + cos * top];
};

const quarterTurns = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

const rangeOf = (
  points: readonly number[],
  along: (x: number, y: number) => number,
): readonly [least: number, most: number] => {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i + 1 < points.length; i += 2) {
    const at = along(points[i] as number, points[i + 1] as number);
    least = Math.min(least, at);
    most = Math.max(most, at);
  }
  return [least, most];
};

/** Where the photograph begins, so that a piece no larger than it lies within. */
const beginning = ([least, most]: readonly [number, number], shown: number, share: number): number => {
  const spare = shown - (most - least);
  return least - share * (spare >= 0 ? spare : shown);
};

/** Quarters by which a block lies turned; one on its corner counts by where its upper left edge looks. */
export const quartersOf = ([a, b]: Matrix): number => Math.floor((Math.atan2(b, a) * 2) / Math.PI + 1e-6);
