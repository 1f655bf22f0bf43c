// How large is a quilt for a bed? Mattress, drop on both sides and at the foot, tuck under the pillow. Trade convention: no
// standard fixes the plan of a mattress for grown people, and widths vary by half an inch.

import { convert, type Length, length, type Unit } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';

/** A cot is left out on purpose: no quilt belongs in it with a sleeping infant. */
export type BedName = 'twin' | 'twin-xl' | 'full' | 'queen' | 'king' | 'california-king';

/** Inches, width by length, the larger where the trade names two. @source docs/sources.md S42 */
const mattresses: Readonly<Record<BedName, readonly [number, number]>> = {
  twin: [39, 75],
  'twin-xl': [39, 80],
  full: [54, 75],
  queen: [60, 80],
  king: [76, 80],
  'california-king': [72, 84],
};

export const bedNames = Object.keys(mattresses) as readonly BedName[];

/** Width and length; in centimetres the same size, converted exactly. */
export const mattressOf = (bed: BedName, unit: Unit): readonly [Length, Length] => {
  const [width, long] = mattresses[bed];
  return [inUnit(width, unit), inUnit(long, unit)];
};

export interface BedTask {
  readonly bed: BedName;
  /** How far the quilt hangs down at both sides and at the foot. */
  readonly drop: Length;
  /** How much of it goes under and over the pillow. */
  readonly tuck: Length;
  readonly unit: Unit;
}

/**
 * Finished size of a quilt for a bed: width + 2·drop by length + drop + tuck.
 *
 * @source docs/formulas.md#beds-and-batting
 */
export const quiltForBed = ({ bed, drop, tuck, unit }: BedTask): readonly [Length, Length] => {
  const [width, long] = mattressOf(bed, unit);
  return [length(width + 2 * drop), length(long + drop + tuck)];
};

const inUnit = (inches: number, unit: Unit): Length =>
  length(toNumber(convert(rational(inches), { from: 'in', to: unit })));
