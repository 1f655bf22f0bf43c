import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { convert, type LengthWish, length, measureUnits, parseLength } from '#craft/measure';
import { rational } from '#ground/exact';

const inches: LengthWish = { unit: 'in', sign: 'positive' };
const readAs = (written: string | number, wish = inches) => {
  const read = parseLength(written, wish);
  return read.ok ? read.value.toFraction() : read.problems[0]?.fault;
};

test('a length in another unit comes back in the document’s unit, exact', () => {
  // derived by hand from 1 in = 2.54 cm and 1 yd = 36 in
  assert.equal(readAs('6 cm'), '300/127');
  assert.equal(readAs('2.54 cm'), '1');
  assert.equal(readAs('1/2 yd'), '18');
  assert.equal(readAs('0.5 m', { unit: 'cm', sign: 'positive' }), '50');
  assert.equal(readAs('1/4 in', { unit: 'cm', sign: 'positive' }), '127/200');
});

test('signs and sizes beyond the wish are refused by their fault', () => {
  assert.equal(readAs('0'), 'not-positive');
  assert.equal(readAs('-1'), 'not-positive');
  assert.equal(readAs('-1', { unit: 'in', sign: 'zero-or-more' }), 'negative');
  assert.equal(readAs('0', { unit: 'in', sign: 'zero-or-more' }), '0');
  assert.equal(readAs('-1', { unit: 'in', sign: 'any' }), '-1');
  assert.equal(readAs('10000'), '10000');
  assert.equal(readAs('10000.001'), 'too-large');
  assert.equal(readAs('1000000000'), 'too-large');
  assert.equal(readAs(1e9), 'too-large');
  assert.equal(readAs('300 yd'), 'too-large');
  assert.equal(readAs('1 1/2', { ...inches, most: rational(1) }), 'too-large');
  assert.equal(readAs(1e-45), 'too-fine');
});

test('there and back between two units is the same length', () => {
  const unit = fc.constantFrom(...measureUnits);
  fc.assert(
    fc.property(fc.integer(), fc.integer({ min: 1, max: 640 }), unit, unit, (n, d, from, to) => {
      const value = rational(n, d);
      assert.ok(convert(convert(value, { from, to }), { from: to, to: from }).equals(value));
    }),
    { seed: 45, numRuns: 200 },
  );
});

test('a bare number is not a length', () => {
  // @ts-expect-error a bare number is not a length
  const bare: ReturnType<typeof length> = 2.5;
  assert.equal(bare, length(2.5));
});
