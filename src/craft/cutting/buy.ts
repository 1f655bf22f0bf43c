// How much to ask for in the shop: the layout's length, what is lost at both ends, what the cloth shrinks, up to the
// shop's step. Prices are not its business.

import type { Buying } from '#craft/design';
import { type Length, length, type Unit } from '#craft/measure';
import type { ShopStep } from '#craft/strips';
import { add, compare, div, fromDecimal, mul, one, type Rational, rational, sub, toNumber, two } from '#ground/exact';

export interface Purchase {
  /** Yards or metres. */
  readonly amount: number;
  readonly unit: 'yd' | 'm';
}

export interface PurchaseTask {
  /** Of the layout. */
  readonly length: Length;
  readonly buying: Buying;
  /** The document's unit, in which length and squaring are. */
  readonly unit: Unit;
}

/**
 * The smallest whole number of the shop's steps that holds (length + 2·squaring)·(1 + shrinkage). A value within
 * 1e-9 of a step is on it. Nothing is bought for a length of zero.
 *
 * @source docs/formulas.md#buying; 1 in = 2.54 cm and 1 yd = 36 in exactly
 */
export const amountToBuy = ({ length, buying, unit }: PurchaseTask): Purchase => {
  const { step } = buying;
  if (length <= 0) return { amount: 0, unit: step.unit };
  const inShopUnit = div(neededFor(length, buying), unitsIn(step.unit, unit));
  const steps = wholeUp(div(inShopUnit, step.amount));
  return { amount: toNumber(mul(step.amount, rational(steps))), unit: step.unit };
};

/** (length + 2·squaring)·(1 + shrinkage), before the shop's step; in the document's unit. */
export const neededFor = (length: Length, buying: Buying): Rational =>
  mul(add(fromDecimal(length), mul(two, buying.squaring)), add(one, buying.shrinkage));

/**
 * The longest layout that a purchase of so many steps more holds: amountToBuy turned round.
 *
 * @returns of (amount + steps·step) yards or metres, less shrinkage and what is lost at both ends; not below zero
 * @source docs/formulas.md#buying
 */
export const lengthHeld = (of: {
  readonly bought: Purchase;
  readonly steps: number;
  readonly buying: Buying;
  readonly unit: Unit;
}): Length => {
  const { bought, steps, buying, unit } = of;
  const amount = add(fromDecimal(bought.amount), mul(rational(steps), buying.step.amount));
  const long = div(mul(amount, unitsIn(bought.unit, unit)), add(one, buying.shrinkage));
  return length(Math.max(0, toNumber(sub(long, mul(two, buying.squaring)))));
};

/**
 * The shop's steps as lengths of layout: `amountToBuy` asks for one step more at each `step` past `before`.
 *
 * @returns in the document's unit
 */
export const shopStepFor = ({ buying, unit }: Omit<PurchaseTask, 'length'>): ShopStep => ({
  step: toNumber(div(mul(buying.step.amount, unitsIn(buying.step.unit, unit)), add(one, buying.shrinkage))),
  before: toNumber(mul(two, buying.squaring)),
});

/** One yard or metre in the document's unit. */
export const unitsIn = (shop: Purchase['unit'], unit: Unit): Rational => {
  if (shop === 'yd') return unit === 'in' ? rational(36) : rational(9144, 100);
  return unit === 'cm' ? rational(100) : rational(10000, 254);
};

const onStep = rational(1, 1_000_000_000);

/** Up to a whole number, never past one by less than 1e-9. */
const wholeUp = (value: Rational): bigint => {
  const down = value.n / value.d;
  return compare(sub(value, rational(down)), onStep) <= 0 ? down : down + 1n;
};
