// An amount of cloth as it is asked for over the counter: yards as fractions, metres as decimals, sheets by what they are.
import type { FabricPlan, QuiltPlan } from '#craft';
import { figureOnPaper, withTrueFractions } from '#paper/lengths';
import { amountText } from '#paper/words';

export const boughtText = (plan: QuiltPlan, { id, buy }: Pick<FabricPlan, 'id' | 'buy'>): string => {
  const bought = plan.quilt.fabrics.find((fabric) => fabric.id === id)?.bought;
  if (buy.unit !== 'sheets' || bought?.kind !== 'sheets') return withTrueFractions(amountText(buy.amount, buy.unit));
  return `${figureOnPaper(buy.amount, 'in')} ${sheetNouns[bought.name]}${buy.amount === 1 ? '' : 's'}`;
};

/** One sheet of a cloth, as the shop calls it. */
export const sheetNouns = { 'fat-quarter': 'fat quarter', 'fat-eighth': 'fat eighth', sheet: 'sheet' } as const;
