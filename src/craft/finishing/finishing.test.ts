import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  battingPackageFor,
  bedNames,
  biasBindingFor,
  biasFromSquare,
  biasSquareFor,
  mattressOf,
  quiltForBed,
  sleeveFor,
} from '#craft/finishing';
import { length } from '#craft/measure';

const bare = { seam: length(0), unit: 'in' } as const;

test('the square for a bias strip is that of the books when no seam is counted', () => {
  // soft-furnishing forum FAQ, "Making continuous piping strips": 250 in of 2 in from 22.36, so 23 (case bias-250x2)
  assert.equal(biasSquareFor({ length: length(250), width: length(2), ...bare }), 23);
  // needlecraft question column, 5 Aug 2021: 100 in of 3 1/2 from 18.71, so 19 (case bias-100x3.5)
  assert.equal(biasSquareFor({ length: length(100), width: length(3.5), ...bare }), 19);
  // the same forum FAQ: a 20 in square gives 200 in of 2 in (case bias-20-square)
  assert.equal(biasFromSquare({ side: length(20), width: length(2), seam: length(0) }), 200);
});

test('the two seams of the method are counted in the plan', () => {
  // derived: 23 in give 23² / 2 = 264.5, less 4 · 1/4 · 23 / 2 = 11.5 for the seams: 253
  assert.equal(biasFromSquare({ side: length(23), width: length(2), seam: length(0.25) }), 253);
  // derived: 22 give 242 − 11 = 231, too short for 250
  const square = { length: length(250), width: length(2), seam: length(0.25), unit: 'in' } as const;
  assert.equal(biasSquareFor(square), 23);
  // derived: 252 in of 2 1/2: 26 give 270.4 − 10.4 = 260
  assert.equal(biasSquareFor({ ...square, length: length(252), width: length(2.5) }), 26);
});

test('a cloth too narrow for one square gives several, and joins between them', () => {
  // derived: two squares share 252 + 2.5: 127.25 in each; 18² − 18 = 306 < 318.1 < 19² − 19 = 342
  const task = { length: length(252), width: length(2.5), seam: length(0.25), room: length(20), unit: 'in' } as const;
  assert.deepEqual(biasBindingFor(task), { side: 19, squares: 2, joins: 1, gives: 271.1 });
});

test('in centimetres squares come in steps of 2.5', () => {
  // derived: 640 · 6.5 = 4160; 65² − 3 · 65 = 4030, 67.5² − 3 · 67.5 = 4353.75
  assert.equal(biasSquareFor({ length: length(640), width: length(6.5), seam: length(0.75), unit: 'cm' }), 67.5);
});

test('a quilt for a bed hangs down at both sides and the foot, and tucks under the pillow', () => {
  // derived: queen 60 × 80, drop 12, tuck 10
  assert.deepEqual(quiltForBed({ bed: 'queen', drop: length(12), tuck: length(10), unit: 'in' }), [84, 102]);
  // exact: 60 in = 152.4 cm, 80 in = 203.2 cm
  assert.deepEqual(mattressOf('queen', 'cm'), [152.4, 203.2]);
  assert.ok(!(bedNames as readonly string[]).includes('crib'));
});

test('the smallest package of batting that holds the size, lying either way', () => {
  // by hand from the packages: 68 × 88 fits twin 72 × 90; 88 × 68 too; 75 × 80 asks for full 81 × 96
  assert.equal(battingPackageFor([length(68), length(88)], 'in')?.name, 'twin');
  assert.equal(battingPackageFor([length(88), length(68)], 'in')?.name, 'twin');
  assert.equal(battingPackageFor([length(75), length(80)], 'in')?.name, 'full');
  assert.equal(battingPackageFor([length(121), length(60)], 'in'), null);
  assert.deepEqual(battingPackageFor([length(150), length(150)], 'cm'), { name: 'throw', width: 152.4, height: 152.4 });
});

test('a sleeve is as long as the quilt is wide, and stops an inch short of either side when hemmed', () => {
  // common practice, no source
  assert.deepEqual(sleeveFor(length(40), 'in'), { finished: [38, 4], cut: [40, 8.5] });
});
