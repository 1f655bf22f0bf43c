// What is bought of one cloth, could any layout do with less, and where does the bought length go?

import type { Buying } from '#craft/design';
import { type Length, length, type Unit } from '#craft/measure';
import { fromDecimal, mul, sub, toNumber, two } from '#ground/exact';
import { amountToBuy, neededFor, type Purchase, unitsIn } from './buy.ts';
import type { LaidOut, LaidSheets } from './cloth.ts';

/** Yards, metres or sheets of one cloth. */
export interface ClothPurchase {
  readonly amount: number;
  readonly unit: Purchase['unit'] | 'sheets';
  /** No layout of these pieces does with a smaller purchase: the bound alone asks for this much. */
  readonly proven: boolean;
}

export interface PurchaseOf {
  readonly laid: LaidOut | LaidSheets;
  readonly buying: Buying;
  /** The document's unit. */
  readonly unit: Unit;
}

/** @source docs/formulas.md#buying */
export const purchaseFor = ({ laid, buying, unit }: PurchaseOf): ClothPurchase => {
  if ('sheets' in laid) return { amount: laid.sheets.length, unit: 'sheets', proven: isLeast(laid) };
  const bought = amountToBuy({ length: laid.layout.length, buying, unit });
  const least = amountToBuy({ length: laid.bound, buying, unit });
  return { ...bought, proven: least.amount === bought.amount };
};

/** Of sheets that cost differently the cost is what counts. */
const isLeast = ({ kept, bound, sheets, cost, costBound }: LaidSheets): boolean =>
  kept === 'cost' ? costBound >= cost - 1e-9 : bound >= sheets.length;

/** Where a bought length goes, all in the document's unit; `cut`, `squaring`, `shrinkage` and `rounding` add up to it. */
export interface Allowances {
  /** The layout's length. */
  readonly cut: Length;
  /** Both ends together. */
  readonly squaring: Length;
  readonly shrinkage: Length;
  /** Up to the shop's step. */
  readonly rounding: Length;
  /** What is over once the cloth has shrunk, is squared up and cut: the part of `rounding` that is left. */
  readonly spare: Length;
}

/** Null for sheets, and for cloth of which nothing is cut. */
export const allowancesFor = ({ laid, buying, unit }: PurchaseOf): Allowances | null => {
  if ('sheets' in laid || laid.layout.length <= 0) return null;
  const cut = fromDecimal(laid.layout.length);
  const bought = amountToBuy({ length: laid.layout.length, buying, unit });
  const needed = neededFor(laid.layout.length, buying);
  const squaring = mul(two, buying.squaring);
  // on a step by a billionth, nothing is rounded
  const rounding = Math.max(0, toNumber(sub(mul(fromDecimal(bought.amount), unitsIn(bought.unit, unit)), needed)));
  return {
    cut: laid.layout.length,
    squaring: length(toNumber(squaring)),
    shrinkage: length(toNumber(sub(sub(needed, cut), squaring))),
    rounding: length(rounding),
    spare: length(rounding / (1 + toNumber(buying.shrinkage))),
  };
};
