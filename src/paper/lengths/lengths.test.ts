import assert from 'node:assert/strict';
import { test } from 'node:test';
import { rational } from '#ground/exact';
import { checkLength, checkSize } from './checked.ts';
import { figureOnPaper, lengthOnPaper, sizeOnPaper, withTrueFractions } from './fractions.ts';

const inches = { unit: 'in', ruler: rational(1, 8) } as const;

test('a fraction without a glyph is built of raised and lowered figures, on one line', () => {
  // derived by hand
  assert.equal(withTrueFractions('4 5/16 in'), '4\u00a0⁵⁄₁₆\u00a0in');
  assert.equal(lengthOnPaper(4.3125, 'in'), '4\u00a0⁵⁄₁₆\u00a0in');
  assert.equal(lengthOnPaper(2.5, 'in'), '2½\u00a0in');
});

test('a size says its unit once', () => {
  assert.equal(figureOnPaper(6.5, 'cm'), '6.5');
  assert.equal(sizeOnPaper([6.5, 3.5], 'in'), '6½\u00a0×\u00a03½\u00a0in');
});

test('a check size that no ruler shows is given to the nearest mark and said to be near', () => {
  // derived by hand: 3 + 2·(1/4)·√2 ≈ 3.7071 lies between 3⅝ and 3¾, nearer to 3¾
  assert.equal(checkLength(3 + Math.SQRT2 / 2, inches), 'about\u00a03¾\u00a0in');
  assert.equal(checkSize([3 + Math.SQRT2 / 2, 2.5], inches), 'about\u00a03¾\u00a0×\u00a02½\u00a0in');
});

test('a check size between the marks of the document is given as it is where an inch ruler can show it', () => {
  assert.equal(checkLength(3 + 5 / 16, inches), '3\u00a0⁵⁄₁₆\u00a0in');
  // by hand: no inch ruler has sixths; 3.8333 is nearest to 3⅞
  assert.equal(checkLength(3 + 5 / 6, inches), 'about\u00a03⅞\u00a0in');
  assert.equal(checkSize([4.5, 4.5], inches), '4½\u00a0×\u00a04½\u00a0in');
});
