// The order in which a reader meets patches: from the top down, then from left to right.
import { boxOf, centroid, type Polygon } from '#ground/plane';

/** Keeps drafting fractions away from the places where rounding changes, so that noise cannot change an order. */
const offGrid = 0.2679;

/** Sorted by the box's upper edge, its left edge, then the centre of area; differences below slack are none. */
export const inReadingOrder = <T extends { readonly points: Polygon }>(
  patches: readonly T[],
  slack: number,
): readonly T[] => {
  const keyed = patches.map((patch) => {
    const box = boxOf(patch.points);
    const centre = centroid(patch.points);
    return { patch, key: [box.y, box.x, centre.y, centre.x].map((v) => Math.floor(v / slack / 4 + offGrid)) };
  });
  keyed.sort((a, b) => {
    for (let i = 0; i < a.key.length; i++) {
      const difference = (a.key[i] as number) - (b.key[i] as number);
      if (difference !== 0) return difference;
    }
    return 0;
  });
  return keyed.map(({ patch }) => patch);
};
