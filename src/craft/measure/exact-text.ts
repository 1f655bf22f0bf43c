// How an exact number is written so that reading it again gives the same number: "2 1/2", "0.07", "300/127".
// For documents; what a maker reads is worded in paper.
import type { Rational } from '#ground/exact';

/** Fractions of the ruler are written as such, other finite decimals as decimals, the rest as one fraction. */
export const exactText = (value: Rational): string => {
  const sign = value.s < 0n ? '-' : '';
  const whole = value.n / value.d;
  const over = value.n % value.d;
  if (over === 0n) return `${sign}${whole}`;
  if (value.d <= 64n && isPowerOfTwo(value.d)) return `${sign}${whole === 0n ? '' : `${whole} `}${over}/${value.d}`;
  const digits = decimalDigits(value.d);
  if (digits === null) return `${sign}${value.n}/${value.d}`;
  const scaled = (over * 10n ** BigInt(digits)) / value.d;
  return `${sign}${whole}.${scaled.toString().padStart(digits, '0')}`;
};

const isPowerOfTwo = (d: bigint): boolean => (d & (d - 1n)) === 0n;

/** Decimal places that 1/d needs; null when it never ends. */
const decimalDigits = (d: bigint): number | null => {
  let rest = d;
  let twos = 0;
  let fives = 0;
  while (rest % 2n === 0n) {
    rest /= 2n;
    twos++;
  }
  while (rest % 5n === 0n) {
    rest /= 5n;
    fives++;
  }
  return rest === 1n ? Math.max(twos, fives) : null;
};
