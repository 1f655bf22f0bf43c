// How the units of the trade stand to each other, exactly. A plan is in inches or centimetres; a
// length may be written in any of these.
import { div, mul, type Rational, rational } from '#ground/exact';
import type { Unit } from './length.ts';

export const measureUnits = ['in', 'yd', 'mm', 'cm', 'm'] as const;

export type MeasureUnit = (typeof measureUnits)[number];

/** In centimetres. 1 in = 2.54 cm and 1 yd = 36 in exactly (international yard agreement of 1959, from memory). */
const inCentimetres: Readonly<Record<MeasureUnit, Rational>> = {
  in: rational(254, 100),
  yd: rational(36 * 254, 100),
  mm: rational(1, 10),
  cm: rational(1),
  m: rational(100),
};

/** An inch, in the document's unit. */
export const inchIn: Readonly<Record<Unit, number>> = { in: 1, cm: 2.54 };

/** The same length in another unit, exact. */
export const convert = (value: Rational, way: { readonly from: MeasureUnit; readonly to: MeasureUnit }): Rational =>
  way.from === way.to ? value : div(mul(value, inCentimetres[way.from]), inCentimetres[way.to]);
