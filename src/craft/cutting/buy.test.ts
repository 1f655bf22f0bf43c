import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Buying } from '#craft/design';
import { length, type Unit } from '#craft/measure';
import { fromDecimal, rational, zero } from '#ground/exact';
import { amountToBuy, lengthHeld, type Purchase, shopStepFor } from './buy.ts';
import type { Demand } from './cloth.ts';
import { planLayout } from './layout.ts';

/** Sources that count no loss at the ends of the cloth have squaring 0. */
const eighths = (shrinkage = zero): Buying => ({
  squaring: zero,
  shrinkage,
  step: { amount: rational(1, 8), unit: 'yd' },
});

const bought = (of: { readonly length: number; readonly buying: Buying; readonly unit?: Unit }): Purchase =>
  amountToBuy({ length: length(of.length), buying: of.buying, unit: of.unit ?? 'in' });

const strips = (of: {
  readonly count: number;
  readonly across: number;
  readonly along: number;
  readonly width: number;
}) => {
  const demands: Demand[] = [{ across: length(of.across), along: length(of.along), count: of.count, mayTurn: false }];
  const { layout } = planLayout({ width: length(of.width), demands, budget: { steps: 0 } });
  return { per: layout.strips[0]?.parts.length, strips: layout.strips.length, inches: layout.length };
};

const squaresFrom = (width: number, height: number, side: number): number => {
  const per = Math.floor(width / side) * Math.floor(height / side);
  const demands: Demand[] = [{ across: length(side), along: length(side), count: per, mayTurn: false }];
  const { layout, bound } = planLayout({ width: length(width), demands, budget: { steps: 0 } });
  assert.ok(layout.length <= height);
  assert.equal(bound, layout.length);
  return layout.strips.reduce((n, s) => n + s.parts.reduce((k, p) => k + p.pieces.length, 0), 0);
};

test('squares from a fat quarter of 22 × 18 in: as many as the guild chart says', () => {
  // published: guild handout 'Number of Squares from a Fat Quarter' (anonymous, public document copy)
  const chart = { 2: 99, 2.5: 56, 3.5: 30, 4: 20, 5: 12, 5.5: 12, 6.5: 6 };
  for (const [side, n] of Object.entries(chart)) assert.equal(squaresFrom(22, 18, Number(side)), n, `${side} in`);
});

test('squares from a yard, 42 × 35 in usable: as many as the guild chart says', () => {
  // published: the same handout; its rows fit 42 × 35 usable
  const chart = { 2: 357, 3: 154, 4.5: 63, 5: 56, 6.5: 30 };
  for (const [side, n] of Object.entries(chart)) assert.equal(squaresFrom(42, 35, Number(side)), n, `${side} in`);
});

test('one square more than the chart says needs a longer cloth', () => {
  // derived by hand: 9 rows of 11 use 18 in; the hundredth square starts a tenth row
  assert.equal(strips({ count: 100, across: 2, along: 2, width: 22 }).inches, 20);
});

test('100 squares of 3 1/2 in on 44 in: 12 to a strip, 9 strips', () => {
  // derived: strips across the width
  assert.deepEqual(strips({ count: 100, across: 3.5, along: 3.5, width: 44 }), { per: 12, strips: 9, inches: 31.5 });
});

test('80 squares of 2 1/2 in on 40 in with 6 % for shrinkage: 5 strips, 13 1/4 in, 3/8 yd', () => {
  // published: quilt-book author's FAQ 'How to figure yardage' (usable 40 in, 106 % for shrinkage, 3/8 yd)
  const needs = strips({ count: 80, across: 2.5, along: 2.5, width: 40 });
  assert.deepEqual(needs, { per: 16, strips: 5, inches: 12.5 });
  assert.equal(12.5 * 1.06, 13.25);
  assert.deepEqual(bought({ length: needs.inches, buying: eighths(rational(6, 100)) }), { amount: 0.375, unit: 'yd' });
});

test('8 squares of 5 in on 42 in: one strip, 5 in', () => {
  // published: 'The Math of Quilting', Lesson 4, June 2016 (guild class handout, public document copy)
  assert.deepEqual(strips({ count: 8, across: 5, along: 5, width: 42 }), { per: 8, strips: 1, inches: 5 });
});

test('36 squares of 4 in on 42 in: 10 to a strip, 4 strips, 16 in, 1/2 yd', () => {
  // an exercise of the same handout, worked by us
  const needs = strips({ count: 36, across: 4, along: 4, width: 42 });
  assert.deepEqual({ ...needs, per: undefined }, { per: undefined, strips: 4, inches: 16 });
  assert.equal(Math.floor(42 / 4), 10);
  assert.deepEqual(bought({ length: needs.inches, buying: eighths() }), { amount: 0.5, unit: 'yd' });
});

test('five 6 in strips the width of the cloth: 30 in, 7/8 yd', () => {
  // published: 'The Math of Quilting', Lesson 4, June 2016: five 6 in strips need 30 in
  const needs = strips({ count: 5, across: 42, along: 6, width: 42 });
  assert.deepEqual(needs, { per: 1, strips: 5, inches: 30 });
  assert.deepEqual(bought({ length: needs.inches, buying: eighths() }), { amount: 0.875, unit: 'yd' });
});

test('31 sashes of 12 1/2 × 3 1/2 in on 42 in: 3 to a strip, 11 strips, 38 1/2 in, 1 1/8 yd', () => {
  // published: 'Math for Quilt Sashings and Borders', Lesson 11 (same guild class series, c. 2016-17)
  const needs = strips({ count: 31, across: 12.5, along: 3.5, width: 42 });
  assert.deepEqual(needs, { per: 3, strips: 11, inches: 38.5 });
  assert.deepEqual(bought({ length: needs.inches, buying: eighths() }), { amount: 1.125, unit: 'yd' });
});

test('the ends are squared before the cloth shrinks', () => {
  // derived by hand: (34 + 2·1) · 1.25 = 45 in = 1 1/4 yd
  const buying: Buying = {
    squaring: rational(1),
    shrinkage: rational(1, 4),
    step: { amount: rational(1, 8), unit: 'yd' },
  };
  assert.deepEqual(bought({ length: 34, buying }), { amount: 1.25, unit: 'yd' });
});

test('a length exactly on a step, or a billionth past it, is that step; more is the next', () => {
  // derived by hand: 4.5 in are 1/8 yd
  assert.equal(bought({ length: 4.5, buying: eighths() }).amount, 0.125);
  assert.equal(bought({ length: 4.5 + 4e-10, buying: eighths() }).amount, 0.125);
  assert.equal(bought({ length: 4.5 + 1e-6, buying: eighths() }).amount, 0.25);
});

test('inches are sold by the metre and centimetres by the yard where the shop does so', () => {
  const tenths: Buying = { squaring: zero, shrinkage: zero, step: { amount: rational(1, 10), unit: 'm' } };
  // derived by hand: 40 in = 101.6 cm; 91.44 cm = 1 yd; 92 cm is past it
  assert.deepEqual(bought({ length: 40, buying: tenths }), { amount: 1.1, unit: 'm' });
  assert.deepEqual(bought({ length: 91.44, buying: eighths(), unit: 'cm' }), { amount: 1, unit: 'yd' });
  assert.deepEqual(bought({ length: 92, buying: eighths(), unit: 'cm' }), { amount: 1.125, unit: 'yd' });
  assert.deepEqual(bought({ length: 30, buying: tenths, unit: 'cm' }), { amount: 0.3, unit: 'm' });
});

test('nothing is bought for nothing', () => {
  const buying: Buying = { squaring: rational(1), shrinkage: zero, step: { amount: rational(1, 8), unit: 'yd' } };
  assert.deepEqual(bought({ length: 0, buying }), { amount: 0, unit: 'yd' });
});

test('what is bought holds the length, and one step less would not', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 0, max: 10 }), (n, percent) => {
      const buying: Buying = {
        squaring: rational(1),
        shrinkage: rational(percent, 100),
        step: { amount: rational(1, 8), unit: 'yd' },
      };
      const steps = fromDecimal(bought({ length: n / 8, buying }).amount).mul(8);
      const needed = rational(n, 8)
        .add(2)
        .mul(rational(100 + percent, 100))
        .div(rational(36, 8));
      assert.ok(steps.compare(needed) >= 0);
      assert.ok(steps.sub(1).compare(needed) < 0);
    }),
    { seed: 21, numRuns: 300 },
  );
});

test('a purchase holds exactly the layouts that it is bought for', () => {
  // derived by hand: 3/8 yd are 13.5 in; less 2 in for squaring 11.5; a step more 16; 4 % shrinkage of 1/2 yd: 18 / 1.04 - 2
  const bought = { amount: 0.375, unit: 'yd' } as const;
  const buying = {
    squaring: rational(1),
    shrinkage: rational(0),
    step: { amount: rational(1, 8), unit: 'yd' },
  } as const;
  assert.equal(lengthHeld({ bought, steps: 0, buying, unit: 'in' }), 11.5);
  assert.equal(lengthHeld({ bought, steps: 1, buying, unit: 'in' }), 16);
  const shrinking = { ...buying, shrinkage: rational(1, 25) };
  const held = lengthHeld({ bought, steps: 1, buying: shrinking, unit: 'in' });
  assert.ok(Math.abs(held - (18 / 1.04 - 2)) < 1e-12);
  assert.equal(amountToBuy({ length: held, buying: shrinking, unit: 'in' }).amount, 0.5);
});

test('the shop’s steps as lengths of layout are where the amount to buy changes', () => {
  const unit = 'in';
  const buying = {
    squaring: rational(1),
    shrinkage: rational(1, 20),
    step: { amount: rational(1, 8), unit: 'yd' },
  } as const;
  const { step, before } = shopStepFor({ buying, unit });
  for (let n = 1; n <= 12; n++) {
    const edge = n * step - before;
    const stepsFor = (value: number) => amountToBuy({ length: length(value), buying, unit }).amount * 8;
    // on the edge n steps hold it, past it they do not
    assert.equal(stepsFor(edge), n);
    assert.equal(stepsFor(edge + 0.01), n + 1);
  }
});
