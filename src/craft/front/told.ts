// Which points of a front to tell? Its three ends, and of the rest always the one that is farthest from those told.
import { spreadOver } from './spread.ts';
import type { FrontPoint } from './weighing.ts';

/** As many as can be told apart at a glance. */
export const mostTold = 9;

/** At most so many, in the front's own order. */
export const toldPoints = (points: readonly FrontPoint[], most: number): readonly FrontPoint[] => {
  const order = spreadOver(points, ({ cloth, minutes, deviation }) => [cloth, minutes, deviation]);
  const told = new Set(order.slice(0, most));
  return points.filter((point) => told.has(point));
};
