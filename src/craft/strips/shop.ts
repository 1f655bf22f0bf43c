// What a length costs in steps of the shop, and how much longer or shorter it might be for the same.
import type { ShopStep } from './job.ts';
import type { StripsFound } from './search.ts';

/** Steps that hold a length. */
export const stepsFor = (length: number, { step, before }: ShopStep): number =>
  Math.ceil((length + before) / step - 1e-9);

/** The longest whole length that costs a step less than this one. */
export const lengthSoldBelow = (length: number, shop: ShopStep): number =>
  Math.floor((stepsFor(length, shop) - 1) * shop.step - shop.before + 1e-9);

/** Whether a layout might cost a step less than the one that was found. */
export const isPurchaseOpen = (
  { length, bound }: Pick<StripsFound, 'length' | 'bound'>,
  shop: ShopStep | null,
): boolean => shop !== null && stepsFor(bound, shop) < stepsFor(length, shop);
