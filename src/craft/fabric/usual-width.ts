// How wide cloth is taken to be where nobody has measured it.
import type { Unit } from '#craft/measure';
import { type Rational, rational } from '#ground/exact';

/** Usable width between the selvages, as docs/document.md sets it. */
export const usualWidth: Readonly<Record<Unit, Rational>> = { in: rational(40), cm: rational(1016, 10) };
