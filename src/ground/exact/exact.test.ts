import assert from 'node:assert/strict';
import { test } from 'node:test';
import bigRational from 'big-rational';
import fc from 'fast-check';
import {
  add,
  compare,
  div,
  fromDecimal,
  isPositive,
  isZero,
  mul,
  type Rational,
  rational,
  sub,
  sum,
  toNumber,
} from './index.ts';

const term = fc.integer({ min: -100_000, max: 100_000 });
const fraction = fc.tuple(term, fc.integer({ min: 1, max: 100_000 }));

/** The other library writes some whole numbers over 1. */
const otherText = (value: { toString(): string }): string => value.toString().replace(/\/1$/, '');

/** In lowest terms, the denominator left out where it is 1. */
const textOf = (value: Rational): string => {
  const sign = value.s < 0n ? '-' : '';
  return value.d === 1n ? `${sign}${value.n}` : `${sign}${value.n}/${value.d}`;
};

test('sums, differences, products and quotients agree with another library', () => {
  fc.assert(
    fc.property(fraction, fraction, ([a, b], [c, d]) => {
      const [ours, others] = [rational(a, b), bigRational(a, b)];
      const [second, other] = [rational(c, d), bigRational(c, d)];
      assert.equal(textOf(add(ours, second)), otherText(others.add(other)));
      assert.equal(textOf(sub(ours, second)), otherText(others.subtract(other)));
      assert.equal(textOf(mul(ours, second)), otherText(others.multiply(other)));
      if (c !== 0) assert.equal(textOf(div(ours, second)), otherText(others.divide(other)));
      assert.equal(Math.sign(compare(ours, second)), Math.sign(others.compare(other)));
      assert.equal(isPositive(ours), a > 0);
      assert.equal(isZero(ours), a === 0);
      assert.equal(toNumber(ours), a / b);
    }),
    { seed: 41, numRuns: 300 },
  );
});

test('a decimal is the number that is written, not the double nearest to it', () => {
  // by hand
  assert.equal(textOf(fromDecimal(0.1)), '1/10');
  assert.equal(textOf(fromDecimal(2.375)), '19/8');
  assert.equal(textOf(fromDecimal(-1e-7)), '-1/10000000');
  assert.equal(textOf(fromDecimal(1.5e21)), '1500000000000000000000');
});

/** From a billionth to a million, either sign. */
const lengthLike = fc
  .tuple(fc.double({ min: 1e-9, max: 1e6, noNaN: true }), fc.constantFrom(1, -1))
  .map(([size, sign]) => size * sign);

test('every double as large as a length comes back from its decimal', () => {
  fc.assert(
    fc.property(lengthLike, (value) => {
      const exact = fromDecimal(value);
      // by hand: terms beyond 2^53 are rounded, then the quotient is: three halves of EPSILON at most
      assert.ok(Math.abs(toNumber(exact) - value) <= 1.5 * Math.abs(value) * Number.EPSILON);
    }),
    { seed: 42, numRuns: 300 },
  );
});

test('a hundred tenths are ten', () => {
  assert.equal(textOf(sum(Array.from({ length: 100 }, () => fromDecimal(0.1)))), '10');
});

test('a zero denominator, a part of a number and what is no number are refused', () => {
  assert.throws(() => rational(1, 0), RangeError);
  assert.throws(() => rational(0.5), RangeError);
  assert.throws(() => rational(1, 2.5), RangeError);
  assert.throws(() => fromDecimal(Number.NaN), RangeError);
  assert.throws(() => fromDecimal(Number.POSITIVE_INFINITY), RangeError);
});
