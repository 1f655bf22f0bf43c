// What cloth costs, in the currency that the document names.
import type { QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { inWords } from '#paper/words';

/** "41.50 EUR"; without a currency the figure alone. */
export const moneyText = (amount: number, currency: string): string =>
  currency === '' ? amount.toFixed(2) : `${amount.toFixed(2)}\u00a0${currency}`;

/** The total, and which cloths it leaves out; with the batting, where it has a price. Empty where nothing has one. */
export const totalLines = (plan: QuiltPlan, signs: ClothSigns): readonly string[] => {
  const { total, currency, unpriced } = plan.cost;
  const batting = plan.finish.batting?.cost;
  if (total === null) return batting === undefined ? [] : [`The batting: ${moneyText(batting, currency)}.`];
  const letters = unpriced.map((fabric) => signOf(signs, fabric).letter);
  const without =
    letters.length === 0
      ? ''
      : `, without ${letters.length === 1 ? 'cloth' : 'cloths'} ${inWords(letters)}, which ${letters.length === 1 ? 'has' : 'have'} no price here`;
  return [
    `All cloth as it is bought: ${moneyText(total, currency)}${without}.`,
    ...(batting === undefined ? [] : [`With the batting: ${moneyText(total + batting, currency)}.`]),
  ];
};
