// A unit as it is drawn at turn 0: the finished outline of each of its places, from its upper left corner.
import { at, distance, type Polygon } from '#ground/plane';
import type { Unit } from './unit.ts';

/** By place of the unit, clockwise. */
export const outlinesOf = ({ kind, size, legs, strips, patches }: Unit): readonly Polygon[] => {
  const [w, h] = size;
  switch (kind) {
    case 'half-square':
      return [
        [at(0, 0), at(w, 0), at(0, h)],
        [at(w, 0), at(w, h), at(0, h)],
      ];
    case 'quarter-square': {
      const middle = at(w / 2, h / 2);
      const corners = [at(0, 0), at(w, 0), at(w, h), at(0, h)] as const;
      return [
        [corners[0], corners[1], middle],
        [corners[1], corners[2], middle],
        [corners[2], corners[3], middle],
        [corners[3], corners[0], middle],
      ];
    }
    case 'flying-geese':
    case 'square-in-square':
    case 'sewn-corners': {
      const [a = 0, b = 0, c = 0, d = 0] = legs;
      const middle = [at(a, 0), at(w - b, 0), at(w, b), at(w, h - c), at(w - c, h), at(d, h), at(0, h - d), at(0, a)];
      const corners: readonly (readonly [number, Polygon])[] = [
        [a, [at(0, 0), at(a, 0), at(0, a)]],
        [b, [at(w, 0), at(w, b), at(w - b, 0)]],
        [c, [at(w, h), at(w - c, h), at(w, h - c)]],
        [d, [at(0, h), at(0, h - d), at(d, h)]],
      ];
      return [withoutTwins(middle), ...corners.flatMap(([leg, outline]) => (leg > 0 ? [outline] : []))];
    }
    case 'rails':
    case 'four-patch':
    case 'nine-patch':
      return patches.map((_, place) => cellAt(strips ?? { widths: [w], height: h }, place));
  }
};

/** Of a grid of rows, in reading order. */
const cellAt = ({ widths, height }: NonNullable<Unit['strips']>, place: number): Polygon => {
  const [row, column] = [Math.floor(place / widths.length), place % widths.length];
  const left = widths.slice(0, column).reduce<number>((sum, width) => sum + width, 0);
  const [right, top] = [left + (widths[column] as number), row * height];
  return [at(left, top), at(right, top), at(right, top + height), at(left, top + height)];
};

/** Corners that fall together are one. */
const withoutTwins = (points: Polygon): Polygon =>
  points.filter((p, i) => {
    const before = points.at(i - 1) ?? p;
    return distance(before, p) > 1e-9;
  });
