// A length that was worked out, as a document writes it.
import { exactText } from '#craft/measure';
import { fromDecimal, rational } from '#ground/exact';

/** Finer than any ruler, and thirds, fifths and sevenths of its marks. */
const parts = 6720;

/** The fraction that a worked-out number stands for, where it is one of usual parts: 8.333… is "25/3"; else its decimal. */
export const writtenLength = (value: number): string => {
  const whole = Math.round(value * parts);
  return exactText(Math.abs(whole / parts - value) < 1e-9 ? rational(whole, parts) : fromDecimal(value));
};
