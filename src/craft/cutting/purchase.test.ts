import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Buying } from '#craft/design';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import type { LaidOut, LaidSheets } from './cloth.ts';
import { allowancesFor, purchaseFor } from './purchase.ts';

const buying = (shrinkage: number): Buying => ({
  squaring: rational(1),
  shrinkage: rational(shrinkage, 100),
  step: { amount: rational(1, 8), unit: 'yd' },
});

const laidOut = (long: number, bound: number): LaidOut => ({
  layout: { width: length(40), length: length(long), strips: [] },
  bound: length(bound),
  boundKind: 'area',
});

test('a purchase is proven least where the bound rounds up to the same step', () => {
  // derived by hand: 18 in are 1/2 yd; 14 + 2 and 15.5 + 2 both round up to it, 11 + 2 = 13 in to 3/8 yd
  const of = { buying: buying(0), unit: 'in' } as const;
  assert.deepEqual(purchaseFor({ laid: laidOut(15.5, 14), ...of }), { amount: 0.5, unit: 'yd', proven: true });
  assert.deepEqual(purchaseFor({ laid: laidOut(15.5, 11), ...of }), { amount: 0.5, unit: 'yd', proven: false });
});

test('sheets are proven least where the bound is their number', () => {
  const sheet = { kind: 0, width: length(20), length: length(17), strips: [] };
  const laid = (bound: number): LaidSheets => ({
    sheets: [sheet, sheet, sheet],
    layout: sheet,
    cost: 3,
    bound,
    kept: 'sheets',
    costBound: bound,
    boundKind: 'area',
    left: [],
    holds: 'yes',
  });
  const of = { buying: buying(0), unit: 'in' } as const;
  // by definition
  assert.deepEqual(purchaseFor({ laid: laid(3), ...of }), { amount: 3, unit: 'sheets', proven: true });
  assert.deepEqual(purchaseFor({ laid: laid(2), ...of }), { amount: 3, unit: 'sheets', proven: false });
  assert.equal(allowancesFor({ laid: laid(3), ...of }), null);
});

test('layout, squaring, shrinkage and rounding are told apart', () => {
  // derived by hand: 30 + 2 = 32, a quarter more is 40; 9/8 yd are 40 1/2, so 1/2 in is over, shrunk to 0.4
  assert.deepEqual(allowancesFor({ laid: laidOut(30, 30), buying: buying(25), unit: 'in' }), {
    cut: 30,
    squaring: 2,
    shrinkage: 8,
    rounding: 0.5,
    spare: 0.4,
  });
});

test('allowances add up to what is bought, and less than a step is over', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 0, max: 20 }), (n, percent) => {
      const of = { laid: laidOut(n / 8, 0), buying: buying(percent), unit: 'in' } as const;
      const { cut, squaring, shrinkage, rounding, spare } = allowancesFor(of) as NonNullable<
        ReturnType<typeof allowancesFor>
      >;
      const bought = purchaseFor(of).amount * 36;
      assert.ok(Math.abs(cut + squaring + shrinkage + rounding - bought) < 1e-9);
      assert.ok(rounding >= 0 && rounding < 4.5 && spare <= rounding);
    }),
    { seed: 8, numRuns: 200 },
  );
});
