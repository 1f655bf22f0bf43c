// An amount of cloth as it is asked for over the counter: yards as fractions, metres as decimals, sheets by what they are.
import type { BoughtPart, FabricPlan, QuiltPlan } from '#craft';
import { unitsIn } from '#craft/cutting';
import { toNumber } from '#ground/exact';
import { figureOnPaper, sizeOnPaper, withTrueFractions } from '#paper/lengths';
import { amountText, inWords } from '#paper/words';

export const boughtText = (plan: QuiltPlan, { id, buy, parts }: Pick<FabricPlan, 'id' | 'buy' | 'parts'>): string => {
  if (buy.amount === 0) return 'none';
  if (parts !== null && parts.length > 0) return inWords(parts.map((part) => partText(part, { plan, buy })));
  const bought = plan.quilt.fabrics.find((fabric) => fabric.id === id)?.bought;
  if (buy.unit !== 'sheets' || bought?.kind !== 'sheets') return withTrueFractions(amountText(buy.amount, buy.unit));
  return `${figureOnPaper(buy.amount, 'in')} ${sheetNouns[bought.name]}${buy.amount === 1 ? '' : 's'}`;
};

/** "2 × remnant (18 × 21 in)", "3 × 1 yd". */
const partText = (part: BoughtPart, of: { readonly plan: QuiltPlan; readonly buy: FabricPlan['buy'] }): string => {
  const { unit } = of.plan.quilt;
  const count = figureOnPaper(part.count, 'in');
  if (of.buy.unit === 'sheets') return `${count} × ${part.name ?? 'sheet'} (${sizeOnPaper(part.size, unit)})`;
  return `${count} × ${soldText(of.plan, part.size[1])}`;
};

/** A length as the shop sells it: "½ yd". */
export const soldText = ({ quilt: { unit, buying } }: QuiltPlan, long: number): string =>
  withTrueFractions(amountText(long / toNumber(unitsIn(buying.step.unit, unit)), buying.step.unit));

/** One sheet of a cloth, as the shop calls it. */
export const sheetNouns = { 'fat-quarter': 'fat quarter', 'fat-eighth': 'fat eighth', sheet: 'sheet' } as const;
