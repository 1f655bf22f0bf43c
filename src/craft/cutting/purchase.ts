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
  const bought = amountToBuy({ length: asTaken(laid.layout.length, laid), buying, unit });
  const least = amountToBuy({ length: asTaken(laid.bound, laid), buying, unit });
  return { ...bought, proven: least.amount === bought.amount };
};

/**
 * What a layout takes of a length of cloth before squaring and shrinkage. A shop cuts anywhere in a print's repeat: up to one of it
 * goes before the corner that pieces round a motif are counted from.
 *
 * @param long of the layout, or a bound of it
 * @source docs/formulas.md#motifs
 */
export const asTaken = (long: Length, { motifs }: Pick<LaidOut, 'motifs'>): Length =>
  motifs === undefined || long <= 0 ? long : length(long + motifs.repeat);

/** Of sheets that cost differently the cost is what counts. */
const isLeast = ({ kept, bound, sheets, cost, costBound }: LaidSheets): boolean =>
  kept === 'cost' ? costBound >= cost - 1e-9 : bound >= sheets.length;

/** Where a bought length goes, all in the document's unit; `cut`, `squaring`, `shrinkage` and `rounding` add up to it. */
export interface Allowances {
  /** The layout's length, and one repeat of the print where pieces lie on its motifs. */
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
  const taken = asTaken(laid.layout.length, laid);
  const cut = fromDecimal(taken);
  const bought = amountToBuy({ length: taken, buying, unit });
  const needed = neededFor(taken, buying);
  const squaring = mul(two, buying.squaring);
  // on a step by a billionth, nothing is rounded
  const rounding = Math.max(0, toNumber(sub(mul(fromDecimal(bought.amount), unitsIn(bought.unit, unit)), needed)));
  return {
    cut: taken,
    squaring: length(toNumber(squaring)),
    shrinkage: length(toNumber(sub(sub(needed, cut), squaring))),
    rounding: length(rounding),
    spare: length(rounding / (1 + toNumber(buying.shrinkage))),
  };
};
