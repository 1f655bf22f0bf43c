// An amount of cloth as it is asked for over the counter: yards as fractions, metres as decimals.
import { withTrueFractions } from '#paper/lengths';
import { amountText } from '#paper/words';

export const boughtText = (buy: { readonly amount: number; readonly unit: 'yd' | 'm' | 'sheets' }): string =>
  withTrueFractions(amountText(buy.amount, buy.unit));
