import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { amountText, lengthText, nearSizeText, nearText, numberText, sizeText } from '#paper/words';

test('inches show as fractions of a ruler, with one sign where there is one', () => {
  // derived by hand
  const shown: readonly [number, string][] = [
    [2.5, '2½ in'],
    [3.875, '3⅞ in'],
    [4.3125, '4 5/16 in'],
    [0.25, '¼ in'],
    [0.3125, '5/16 in'],
    [7, '7 in'],
    [0, '0 in'],
    [-0.5, '−½ in'],
    [-2.3125, '−2 5/16 in'],
    [-1e-9, '0 in'],
    [1 / 3, '⅓ in'],
    [2 + 5 / 6, '2 5/6 in'],
    [1.9999999, '2 in'],
    [6 * Math.SQRT2, '8.485 in'],
    [0.0001, '0 in'],
  ];
  for (const [value, text] of shown) assert.equal(lengthText(value, 'in'), text);
});

test('centimetres show as decimals', () => {
  // derived by hand
  assert.equal(lengthText(2.54, 'cm'), '2.54 cm');
  assert.equal(lengthText(0.1 + 0.2, 'cm'), '0.3 cm');
  assert.equal(lengthText(101.6, 'cm'), '101.6 cm');
  assert.equal(lengthText(1 / 3, 'cm'), '0.333 cm');
  assert.equal(lengthText(-0.0004, 'cm'), '0 cm');
  assert.equal(lengthText(-1.5, 'cm'), '−1.5 cm');
});

test('a size names its unit once, and cloth is asked for in fractions of a yard or decimals of a metre', () => {
  // derived by hand
  assert.equal(sizeText([9.5, 6], 'in'), '9½ × 6 in');
  assert.equal(sizeText([9.5, 6], 'cm'), '9.5 × 6 cm');
  assert.equal(amountText(0.875, 'yd'), '⅞ yd');
  assert.equal(amountText(5.625, 'yd'), '5⅝ yd');
  assert.equal(amountText(2 / 3, 'yd'), '⅔ yd');
  // by hand: 23 of 36 in
  assert.equal(amountText(23 / 36, 'yd'), '23 in');
  assert.equal(amountText(1 / 12, 'yd'), '3 in');
  assert.equal(amountText(0.30000000000000004, 'm'), '0.3 m');
  assert.equal(numberText(1234.5678), '1234.568');
});

test('what no ruler shows is told to the nearest sixteenth, or tenth of a centimetre, and said to be near', () => {
  // by hand: 4 + 1/2 + 1/4·√2 is 4.8536, nearest to 4 14/16; 0.0411 to 1/16; 14.5607 to 14.6
  assert.equal(nearText(4.5 + Math.SQRT2 / 4, 'in'), 'about 4⅞ in');
  assert.equal(nearText(0.0411, 'in'), 'about 1/16 in');
  assert.equal(nearText(0.02, 'in'), 'less than 1/16 in');
  assert.equal(nearText(4 + 3 / 64, 'in'), '4 3/64 in');
  assert.equal(nearText(0, 'in'), '0 in');
  assert.equal(nearText(14.5607, 'cm'), 'about 14.6 cm');
  assert.equal(nearText(0.05, 'cm'), '0.05 cm');
  assert.equal(nearSizeText([4.5 + Math.SQRT2 / 4, 2.5], 'in'), 'about 4⅞ × 2½ in');
  assert.equal(nearSizeText([4.5, 2.5], 'in'), '4½ × 2½ in');
});

test('a sixty-fourth is read back from its text as the same number', () => {
  const glyphs: Readonly<Record<string, number>> = {
    '½': 1 / 2,
    '¼': 1 / 4,
    '¾': 3 / 4,
    '⅛': 1 / 8,
    '⅜': 3 / 8,
    '⅝': 5 / 8,
    '⅞': 7 / 8,
  };
  const valueOf64ths = (text: string): number => {
    const [, whole = '', rest = ''] = /^(\d*) ?(.*)$/.exec(text.replace(' in', '')) ?? [];
    const [n, d] = rest.split('/').map(Number);
    return Number(whole) + (glyphs[rest] ?? (n && d ? n / d : 0));
  };
  fc.assert(
    fc.property(fc.nat(64 * 200), (parts) => {
      const text = lengthText(parts / 64, 'in');
      // "5/16 in" has its numerator where a whole number could stand
      const read = /^\d+\//.test(text) ? valueOf64ths(`0 ${text}`) : valueOf64ths(text);
      assert.equal(read, parts / 64, text);
    }),
    { seed: 71, numRuns: 300 },
  );
});
