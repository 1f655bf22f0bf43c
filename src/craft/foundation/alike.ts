// Sections that look alike are sewn alike: a later one takes the order of the first, turned as it lies.
import { isNear } from '#ground/outline';
import { boxOf, type Point, type Polygon, quarterTurned } from '#ground/plane';
import type { FoundationOrder } from './order.ts';

/**
 * The patches of a section in the order of one that looks like it, turned by quarters.
 *
 * @param of.unit  patches of the section
 * @param of.slack corners nearer to each other are one
 * @returns null where it does not look like that one in any turn
 */
export const orderLike = (of: {
  readonly patches: readonly Polygon[];
  readonly unit: readonly number[];
  readonly like: FoundationOrder;
  readonly slack: number;
}): readonly number[] | null => {
  if (of.unit.length !== of.like.length) return null;
  const here = of.unit.map((patch) => of.patches[patch] as Polygon);
  const corner = boxOf(here.flat());
  for (const quarters of [0, 1, 2, 3]) {
    const turned = of.like.map(({ patch }) => (of.patches[patch] as Polygon).map((p) => quarterTurned(p, quarters)));
    const box = boxOf(turned.flat());
    const found = turned.map((outline) => {
      const moved = outline.map(({ x, y }): Point => ({ x: x - box.x + corner.x, y: y - box.y + corner.y }));
      return here.findIndex((one) => haveSameCorners(one, moved, of.slack));
    });
    if (found.every((place) => place >= 0)) return found.map((place) => of.unit[place] as number);
  }
  return null;
};

const haveSameCorners = (a: Polygon, b: Polygon, slack: number): boolean =>
  a.length === b.length && a.every((p) => b.some((q) => isNear(p, q, slack)));
