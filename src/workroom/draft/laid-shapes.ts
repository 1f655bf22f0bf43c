// The shapes that are laid by their place: as they lie at each quarter turn.
import { at, type Point, type Polygon } from '#ground/plane';

export type LaidShape = 'square' | 'rectangle' | 'half-square' | 'quarter-square' | 'corners';

export interface Laying {
  readonly shape: LaidShape;
  /** Squares of the grid; a square is as high as it is wide. */
  readonly across: number;
  readonly down: number;
  /** Quarter turns clockwise. At none a half-square has its square corner upper left, a quarter-square its long side on top. */
  readonly turn: number;
}

const heightOf = ({ shape, across, down }: Laying): number => (shape === 'rectangle' ? down : across);

/** The widest that the shape may be on a grid: what is as high as wide may be no wider than the block is high. */
export const mostAcross = ({ shape }: Laying, [across, down]: readonly [number, number]): number =>
  shape === 'rectangle' ? across : Math.min(across, down);

/** The same shape, or as much of it as there is room for on a grid. */
export const fittedOn = (grid: readonly [number, number], laying: Laying): Laying => ({
  ...laying,
  across: Math.min(laying.across, mostAcross(laying, grid)),
  down: Math.min(laying.down, grid[1]),
});

/** @param from its upper left corner; none where corners are given one by one */
export const outlineOfLaid = (laying: Laying, from: Point): Polygon | null => {
  const { shape, across, turn } = laying;
  const corners: readonly Point[] = [
    from,
    at(from.x + across, from.y),
    at(from.x + across, from.y + heightOf(laying)),
    at(from.x, from.y + heightOf(laying)),
  ];
  const corner = (n: number): Point => corners[(n + turn) % 4] as Point;
  switch (shape) {
    case 'square':
    case 'rectangle':
      return corners;
    case 'half-square':
      return [corner(0), corner(1), corner(3)];
    case 'quarter-square':
      return [corner(0), corner(1), at(from.x + across / 2, from.y + across / 2)];
    case 'corners':
      return null;
  }
};

/** The same place, or the nearest to it at which the whole shape lies on the block. */
export const keptOn = (grid: readonly [number, number], laying: Laying, { x, y }: Point): Point =>
  laying.shape === 'corners'
    ? at(x, y)
    : at(Math.max(0, Math.min(x, grid[0] - laying.across)), Math.max(0, Math.min(y, grid[1] - heightOf(laying))));
