// How far a layout is from the least there is, in plain words: what no layout could go below, and how much more this one takes.
import type { FabricPlan, QuiltPlan } from '#craft';
import { amountToBuy, asTaken } from '#craft/cutting';
import { lengthOnPaper, withTrueFractions } from '#paper/lengths';
import { amountText, counted } from '#paper/words';
import { moneyText } from './money.ts';
import { sheetNamesOf } from './sheet-names.ts';

/** Two sentences at most; "" where nothing is bought of the cloth. */
export const boundText = (plan: QuiltPlan, fabric: FabricPlan): string =>
  'sheets' in fabric.laid ? sheetsText(plan, fabric, fabric.laid) : clothText(plan, fabric, fabric.laid);

const clothText = (
  { quilt: { unit, buying } }: QuiltPlan,
  { buy }: FabricPlan,
  laid: Exclude<FabricPlan['laid'], { readonly sheets: unknown }>,
): string => {
  const { layout, bound } = laid;
  if (layout.length <= 0) return '';
  const length = (value: number): string => lengthOnPaper(value, unit);
  const isShortest = layout.length - bound < 1e-9;
  if (isShortest) return `No layout of these pieces is shorter than ${length(layout.length)}: that is proven.`;
  const least = amountToBuy({ length: asTaken(bound, laid), buying, unit });
  const amount = withTrueFractions(amountText(least.amount, least.unit));
  const share = Math.round((1000 * (layout.length - bound)) / bound) / 10;
  const over = `This one is ${length(layout.length)} long, at most ${share < 0.1 ? 'a thousandth' : `${share} %`} over the shortest.`;
  return `No layout can need less than ${amount}${buy.proven ? ', and that is what is bought' : ''}. ${over}`;
};

const sheetsText = (
  plan: QuiltPlan,
  fabric: FabricPlan,
  { sheets, bound, kept, cost, costBound }: Extract<FabricPlan['laid'], { readonly sheets: unknown }>,
): string => {
  if (sheets.length === 0) return '';
  const { noun } = sheetNamesOf(plan, fabric)(sheets[0]?.kind ?? 0);
  if (kept === 'cost') {
    if (costBound >= cost - 1e-9) return 'No layout on what there is costs less: that is proven.';
    return `No layout on what there is can cost less than ${moneyText(costBound, plan.cost.currency)}.`;
  }
  return bound >= sheets.length
    ? `No layout takes fewer than ${counted(bound, noun)}: that is proven.`
    : `No layout can take fewer than ${counted(bound, noun)}; this one takes ${counted(sheets.length, noun)}.`;
};
