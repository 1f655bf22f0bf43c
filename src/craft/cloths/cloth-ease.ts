// How much work may a layout on cloth by the length save, and what does each such layout cost in the shop?
import { amountToBuy, type Easing, lengthHeld } from '#craft/cutting';
import type { Fabric, Quilt } from '#craft/design';
import type { FabricPlan } from '#craft/plan';
import { fromDecimal, mul, toNumber } from '#ground/exact';

/** Less work is looked for at the purchase of the shortest layout, and at one and two steps of the shop more. */
export const easingFor = ({ layout, buying, unit }: Quilt): Easing => ({
  choice: layout,
  within: (least) => {
    const bought = amountToBuy({ length: least, buying, unit });
    const held = (steps: number) => lengthHeld({ bought, steps, buying, unit });
    return [held(0), held(1), held(2)];
  },
});

export const ladderOf = (quilt: Quilt, fabric: Fabric, laid: FabricPlan['laid']): FabricPlan['ladder'] =>
  'sheets' in laid
    ? []
    : (laid.ladder ?? []).map((rung) => {
        const buy = amountToBuy({ length: rung.length, buying: quilt.buying, unit: quilt.unit });
        return { ...rung, buy, cost: costOfCloth(fabric, buy.amount) };
      });

/** Exact up to the double that it becomes; prices are not rounded to coins. */
export const costOfCloth = ({ price }: Fabric, amount: number): number | null =>
  price === null ? null : toNumber(mul(price, fromDecimal(amount)));
