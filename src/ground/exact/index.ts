// Exact rational numbers, over the library fraction.js (docs/decisions/0001-number-types.md).
// No float gets in: a double must be written as the fraction it is meant to be.
import Fraction from 'fraction.js';

/** An exact rational; treat as a value, it is never changed in place. */
export type Rational = Fraction;

/** n/d, whole numbers only. Throws RangeError for a zero denominator or a number that is not whole. */
export const rational = (n: number | bigint, d: number | bigint = 1): Rational => {
  if (typeof n === 'number' && !Number.isSafeInteger(n)) throw new RangeError(`not a whole number: ${n}`);
  if (typeof d === 'number' && !Number.isSafeInteger(d)) throw new RangeError(`not a whole number: ${d}`);
  if (BigInt(d) === 0n) throw new RangeError('zero denominator');
  return new Fraction(BigInt(n), BigInt(d));
};

/** The exact value of a decimal literal as JavaScript prints it: 0.1 is one tenth, not the double's binary value. */
export const fromDecimal = (value: number): Rational => {
  if (!Number.isFinite(value)) throw new RangeError(`not a number: ${value}`);
  const [mantissa = '0', exponent = '0'] = value.toString().toLowerCase().split('e');
  const [whole = '0', fraction = ''] = mantissa.split('.');
  const power = Number(exponent) - fraction.length;
  const digits = BigInt(whole + fraction);
  return power >= 0 ? rational(digits * 10n ** BigInt(power)) : rational(digits, 10n ** BigInt(-power));
};

export const add = (a: Rational, b: Rational): Rational => a.add(b);
export const sub = (a: Rational, b: Rational): Rational => a.sub(b);
export const mul = (a: Rational, b: Rational): Rational => a.mul(b);
export const div = (a: Rational, b: Rational): Rational => a.div(b);
export const compare = (a: Rational, b: Rational): number => a.compare(b);
export const isPositive = (a: Rational): boolean => a.n > 0n && a.s > 0n;
export const isZero = (a: Rational): boolean => a.n === 0n;
export const sum = (all: readonly Rational[]): Rational => all.reduce(add, zero);

/** The exact value as a double: the nearest one while both terms stay below 2^53, else off by 1.5 · 2^-52 of itself at most. */
export const toNumber = (a: Rational): number => a.valueOf();

export const zero: Rational = rational(0);
export const one: Rational = rational(1);
export const two: Rational = rational(2);
