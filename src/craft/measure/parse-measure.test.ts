import assert from 'node:assert/strict';
import { test } from 'node:test';
import bigRational from 'big-rational';
import fc from 'fast-check';
import { exactText, parseMeasure } from '#craft/measure';
import { rational } from '#ground/exact';

const readAs = (written: string | number) => {
  const read = parseMeasure(written);
  return read.ok ? `${read.value.amount.toFraction()} ${read.value.unit ?? ''}`.trim() : read.problems[0]?.fault;
};

// all derived by hand from the ways that docs/document.md lists
const read: readonly [string | number, string][] = [
  ['2 1/2', '5/2'],
  ['2-1/2', '5/2'],
  ['2.5', '5/2'],
  ['2½', '5/2'],
  ['2 ½', '5/2'],
  ['½', '1/2'],
  ['1/2', '1/2'],
  ['1⁄2', '1/2'],
  ['2 1 / 2', '5/2'],
  ['  7  ', '7'],
  ['.5', '1/2'],
  ['0', '0'],
  ['-2 1/2', '-5/2'],
  ['−2½', '-5/2'],
  ['-2-1/2', '-5/2'],
  ['5/4', '5/4'],
  ['2 1/2 in', '5/2 in'],
  ['2 1/2in', '5/2 in'],
  ['2 1/2"', '5/2 in'],
  ['2½″', '5/2 in'],
  ['6 cm', '6 cm'],
  ['6 mm', '6 mm'],
  ['1/2 yd', '1/2 yd'],
  ['1/8 yard', '1/8 yd'],
  ['0.5 m', '1/2 m'],
  [0.1, '1/10'],
  [3, '3'],
  [-0.25, '-1/4'],
  [1e-7, '1/10000000'],
];

test('each way of writing a measure gives its exact number and unit', () => {
  for (const [written, expected] of read) assert.equal(readAs(written), expected, JSON.stringify(written));
});

const refusals: readonly [string | number, string][] = [
  ['', 'unreadable'],
  ['   ', 'unreadable'],
  ['in', 'unreadable'],
  ['2 1/0', 'zero-denominator'],
  ['1 1/2/3', 'unreadable'],
  ['1e9', 'unreadable'],
  ['NaN', 'unreadable'],
  ['Infinity', 'unreadable'],
  ['2,5', 'unreadable'],
  ['2.', 'unreadable'],
  ['2 - 1/2', 'unreadable'],
  ['2 1/2 furlongs', 'unreadable'],
  ['--2', 'unreadable'],
  ['2½½', 'unreadable'],
  ['½2', 'unreadable'],
  ['2.5 1/2', 'unreadable'],
  ['0x10', 'unreadable'],
  ['１２', 'unreadable'],
  ['1 5/4', 'improper'],
  ['1 4/4', 'improper'],
  [Number.NaN, 'unreadable'],
  [Number.POSITIVE_INFINITY, 'unreadable'],
  [5e-324, 'too-fine'],
  ['1'.repeat(41), 'text-too-long'],
];

test('what is no measure, or could be read two ways, is refused by its fault', () => {
  for (const [written, fault] of refusals) assert.equal(readAs(written), fault, JSON.stringify(written));
});

test('every one-sign fraction of Unicode is worth what its compatibility decomposition says', () => {
  // source: the Unicode character database, as String.prototype.normalize applies it
  for (const glyph of '¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉') {
    const [n, d] = glyph.normalize('NFKD').split('⁄').map(Number) as [number, number];
    assert.equal(readAs(`3${glyph}`), rational(3 * d + n, d).toFraction(), glyph);
  }
});

test('mixed numbers agree with a general-purpose rational library', () => {
  fc.assert(
    fc.property(
      fc.nat(9999),
      fc.integer({ min: 2, max: 999 }),
      fc.nat(998),
      fc.constantFrom(' ', '-'),
      (w, d, k, gap) => {
        const n = k % d;
        const value = parseMeasure(`${w}${gap}${n}/${d}`);
        const twin = bigRational(w).add(bigRational(n, d));
        assert.ok(value.ok);
        assert.ok(twin.equals(bigRational(value.value.amount.n.toString()).over(value.value.amount.d.toString())));
      },
    ),
    { seed: 41, numRuns: 300 },
  );
});

test('decimals agree with plain whole-number arithmetic', () => {
  fc.assert(
    fc.property(fc.nat(99_999), fc.integer({ min: 0, max: 999_999 }), (whole, millionths) => {
      const value = parseMeasure(`${whole}.${millionths.toString().padStart(6, '0')}`);
      assert.ok(value.ok);
      const { n, d } = value.value.amount;
      assert.equal(n * 1_000_000n, (BigInt(whole) * 1_000_000n + BigInt(millionths)) * d);
    }),
    { seed: 42, numRuns: 300 },
  );
});

test('what exactText writes is read as the same number', () => {
  fc.assert(
    fc.property(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: 1, max: 4096 }), (n, d) => {
      const back = parseMeasure(exactText(rational(n, d)));
      assert.ok(back.ok && back.value.amount.equals(rational(n, d)));
    }),
    { seed: 43, numRuns: 500 },
  );
});

test('exactText writes ruler fractions, finite decimals and the rest apart', () => {
  // derived by hand
  assert.equal(exactText(rational(5, 2)), '2 1/2');
  assert.equal(exactText(rational(-1, 8)), '-1/8');
  assert.equal(exactText(rational(7, 100)), '0.07');
  assert.equal(exactText(rational(300, 127)), '300/127');
  assert.equal(exactText(rational(0)), '0');
});

test('no text makes the reader throw', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ maxLength: 60 }), fc.double()), (written) => {
      parseMeasure(written);
    }),
    { seed: 44, numRuns: 1000 },
  );
});
