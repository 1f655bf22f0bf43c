// A sleeve to hang a quilt by: a tube as wide as a rod needs, sewn to the back along the top. Common practice, no source: a
// tube of 4 in from a strip of 8 1/2, ends hemmed so that it stops an inch short of either side.

import { type Length, length, type Unit } from '#craft/measure';

export interface Sleeve {
  /** Of the flat tube. */
  readonly finished: readonly [long: Length, high: Length];
  readonly cut: readonly [long: Length, high: Length];
}

const sizes = {
  in: { strip: 8.5, tube: 4, short: 1 },
  cm: { strip: 22, tube: 10, short: 2.5 },
} as const;

/** @param width of the finished quilt */
export const sleeveFor = (width: Length, unit: Unit): Sleeve => {
  const { strip, tube, short } = sizes[unit];
  // each end is turned in twice, half of what it stops short each time, so the strip is as long as the quilt is wide
  return { finished: [length(width - 2 * short), length(tube)], cut: [width, length(strip)] };
};
