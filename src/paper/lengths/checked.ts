// The check size of a unit. Where it is no length that can be read off a ruler (a unit with a point that the
// next seam will cross) the nearest mark is given, and said to be near.

import type { Unit } from '#craft/measure';
import { length, toNearestMark } from '#craft/measure';
import type { Rational } from '#ground/exact';
import { figureOnPaper, lengthOnPaper } from './fractions.ts';

export interface Ruler {
  readonly unit: Unit;
  /** The finest mark that cut sizes fall on. */
  readonly ruler: Rational;
}

/** "6½ in"; "about 4⅞ in" where no ruler has a mark for the true length: inches are halved, and halved again down to sixty-fourths. */
export const checkLength = (value: number, ruler: Ruler): string => {
  const { mark, isNear } = read(value, ruler);
  return `${isNear ? 'about\u00a0' : ''}${lengthOnPaper(mark, ruler.unit)}`;
};

/** "6½ × 3½ in", "about 4⅞ × 2½ in": across, then down. */
export const checkSize = (size: readonly [number, number], ruler: Ruler): string => {
  const [across, down] = [read(size[0], ruler), read(size[1], ruler)];
  const about = across.isNear || down.isNear ? 'about\u00a0' : '';
  return `${about}${figureOnPaper(across.mark, ruler.unit)}\u00a0×\u00a0${lengthOnPaper(down.mark, ruler.unit)}`;
};

const read = (value: number, { unit, ruler }: Ruler): { readonly mark: number; readonly isNear: boolean } => {
  const marked = toNearestMark(length(value), ruler);
  const isReadable = marked.way === 'on' || (unit === 'in' && Math.abs(value * 64 - Math.round(value * 64)) < 1e-6);
  return isReadable ? { mark: value, isNear: false } : { mark: marked.size, isNear: true };
};
