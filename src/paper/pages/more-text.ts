// By how much one way takes more or less than another: cloth as it is bought, and money.
import type { FabricPlan } from '#craft';
import { withTrueFractions } from '#paper/lengths';
import { amountText } from '#paper/words';
import { moneyText } from './money.ts';

/** "⅛ yd more"; not for nothing. */
export const amountMoreText = (by: number, unit: FabricPlan['buy']['unit']): string =>
  `${withTrueFractions(amountText(Math.abs(by), unit))} ${sense(by)}`;

/** "1.50 EUR less"; empty where it is the same. */
export const moneyMoreText = (by: number, currency: string): string =>
  Math.abs(by) < 0.005 ? '' : `${moneyText(Math.abs(by), currency)} ${sense(by)}`;

const sense = (by: number): string => (by > 0 ? 'more' : 'less');
