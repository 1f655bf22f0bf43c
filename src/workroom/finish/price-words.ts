// What a way of finishing takes, in words: cloth as it is bought, and money where there are prices.
import { withTrueFractions } from '#paper/lengths';
import { amountMoreText, moneyMoreText, moneyText } from '#paper/pages';
import { amountText, inWords } from '#paper/words';
import type { ClothMore, WayPrice } from '#workroom/compute';

export interface PriceWords {
  readonly nameOf: (cloth: string) => string;
  /** "" where the document names none. */
  readonly currency: string;
}

/** Against how the quilt stands: "½ yd more of Oat, 6.25 EUR more". */
export const moreWords = ({ cloths, cost }: Pick<WayPrice, 'cloths' | 'cost'>, of: PriceWords): string => {
  if (cloths === null) return 'there is no room for it on its cloth';
  if (cloths.length === 0) return 'no more and no less cloth';
  const told = cloths.map((one) => `${amountMoreText(one.amount, one.unit)} of ${of.nameOf(one.id)}`);
  return [inWords(told), ...(cost === null ? [] : [costMore(cost, of)])].join(', ');
};

const costMore = (cost: number, { currency }: PriceWords): string =>
  moneyMoreText(cost, currency) || 'at the same cost';

/** Of what stands, told by what would be bought without it: "4⅝ yd of Oat, 57.80 EUR". */
export const takenWords = ({ cloths, cost }: Pick<WayPrice, 'cloths' | 'cost'>, of: PriceWords): string => {
  if (cloths === null) return '';
  if (cloths.length === 0)
    return cost === 0 || cost === null ? 'cut from cloth that is bought anyway' : moneyText(-cost, of.currency);
  // what is bought without it may be more as well: a remnant is then cut otherwise
  const told = cloths.map((one) =>
    one.amount < 0 ? `${amountOf(one)} of ${of.nameOf(one.id)}` : `${amountOf(one)} less of ${of.nameOf(one.id)}`,
  );
  return [inWords(told), ...(cost === null ? [] : [moneyText(-cost, of.currency)])].join(', ');
};

const amountOf = ({ amount, unit }: ClothMore): string => withTrueFractions(amountText(Math.abs(amount), unit));
