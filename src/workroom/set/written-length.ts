// Lengths between a document, which writes them, and what is worked out with them.
import { exactText, parseLength, type Unit } from '#craft/measure';
import { fromDecimal, rational, toNumber } from '#ground/exact';

/** Finer than any ruler, and thirds, fifths and sevenths of its marks. */
const parts = 6720;

/** The fraction that a worked-out number stands for, where it is one of usual parts: 8.333… is "25/3"; else its decimal. */
export const writtenLength = (value: number): string => {
  const whole = Math.round(value * parts);
  return exactText(Math.abs(whole / parts - value) < 1e-9 ? rational(whole, parts) : fromDecimal(value));
};

/** As the document's unit has it; null where it is no length of zero or more. */
export const inUnit = (written: string | number, unit: Unit): number | null => {
  const read = parseLength(written, { unit, sign: 'zero-or-more' });
  return read.ok ? toNumber(read.value) : null;
};
