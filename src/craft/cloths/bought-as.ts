// What a cloth comes in, where that is several kinds of sheet or given lengths, and what of it is bought.
import { type ClothPurchase, type ClothSheet, type LaidSheets, unitsIn } from '#craft/cutting';
import type { Buying, Fabric, LengthKind, SheetKind } from '#craft/design';
import { type Length, length, type Unit } from '#craft/measure';
import type { BoughtPart } from '#craft/plan';
import { add, div, fromDecimal, mul, one, type Rational, rational, sub, sum, toNumber, two } from '#ground/exact';

interface Shop {
  readonly buying: Buying;
  readonly unit: Unit;
}

/**
 * Usable sizes and what is kept least: the price where every kind has one; else of sheets their number, of lengths the cloth.
 * Of a length squaring and shrinkage are taken off once.
 *
 * @returns undefined for cloth by the length and for sheets of one kind
 * @source docs/formulas.md#stock
 */
export const stockOf = (fabric: Fabric, shop: Shop): readonly ClothSheet[] | undefined => {
  const { bought } = fabric;
  if (bought.kind === 'stock') {
    const prices = allPriced(bought.sheets.map(({ price }) => price));
    return bought.sheets.map(({ size, count }, i) => ({
      size: [asLength(size[0]), asLength(size[1])],
      stock: count,
      cost: prices === null ? 1 : toNumber(prices[i] as Rational),
    }));
  }
  if (bought.kind !== 'lengths') return undefined;
  const prices = allPriced(bought.lengths.map((kind) => priceOf(kind, fabric, shop)));
  return bought.lengths.map(({ length: sold, count }, i) => ({
    size: [asLength(fabric.usableWidth), asLength(usableOf(sold, shop.buying))],
    stock: count,
    cost: toNumber(prices === null ? sold : (prices[i] as Rational)),
  }));
};

const asLength = (value: Rational): Length => length(toNumber(value));

const allPriced = (prices: readonly (Rational | null)[]): readonly Rational[] | null =>
  prices.every((price) => price !== null) ? prices : null;

/** sold / (1 + shrinkage) − 2·squaring: the length that `amountToBuy` would ask so much for. */
const usableOf = (sold: Rational, { squaring, shrinkage }: Buying): Rational =>
  sub(div(sold, add(one, shrinkage)), mul(two, squaring));

/** Its own, or that of the cloth by the yard or metre. */
const priceOf = (kind: LengthKind, { price }: Fabric, { buying, unit }: Shop): Rational | null =>
  kind.price ?? (price === null ? null : mul(price, div(kind.length, unitsIn(buying.step.unit, unit))));

/** What of each kind is bought, in the document's order, and what it costs together; null where a kind that is used has no price. */
export const stockBought = (
  laid: LaidSheets,
  of: { readonly fabric: Fabric } & Shop,
): { readonly buy: ClothPurchase; readonly parts: readonly BoughtPart[]; readonly cost: number | null } => {
  const { fabric } = of;
  const { bought } = fabric;
  const kinds: readonly (SheetKind | LengthKind)[] =
    bought.kind === 'stock' ? bought.sheets : bought.kind === 'lengths' ? bought.lengths : [];
  const counts = kinds.map((_, i) => laid.sheets.filter(({ kind }) => kind === i).length);
  const used = kinds.flatMap((kind, i) => ((counts[i] ?? 0) > 0 ? [{ kind, count: counts[i] as number }] : []));
  const prices = used.map(({ kind, count }) => {
    const each = 'length' in kind ? priceOf(kind, fabric, of) : kind.price;
    return each === null ? null : mul(each, rational(count));
  });
  const priced = allPriced(prices);
  const parts = used.map(
    ({ kind, count }, i): BoughtPart => ({
      name: 'length' in kind ? null : kind.name,
      size: 'length' in kind ? [asLength(fabric.usableWidth), asLength(kind.length)] : sizeOf(kind),
      count,
      cost: prices[i] === null ? null : toNumber(prices[i] as Rational),
    }),
  );
  return { buy: amountOf({ laid, used, ...of }), parts, cost: priced === null ? null : toNumber(sum(priced)) };
};

const sizeOf = ({ size }: SheetKind): readonly [Length, Length] => [asLength(size[0]), asLength(size[1])];

const amountOf = (of: {
  readonly laid: LaidSheets;
  readonly used: readonly { readonly kind: SheetKind | LengthKind; readonly count: number }[];
  readonly fabric: Fabric;
  readonly buying: Buying;
  readonly unit: Unit;
}): ClothPurchase => {
  const proven = of.laid.costBound >= of.laid.cost - 1e-9;
  if (of.fabric.bought.kind !== 'lengths') return { amount: of.laid.sheets.length, unit: 'sheets', proven };
  const { unit } = of.buying.step;
  const all = sum(
    of.used.map(({ kind, count }) => ('length' in kind ? mul(kind.length, rational(count)) : fromDecimal(0))),
  );
  return { amount: toNumber(div(all, unitsIn(unit, of.unit))), unit, proven };
};
