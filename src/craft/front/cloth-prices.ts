// What is each piece worth in length of its cloth, at least? Its area over the width: no layout is shorter than that together. Functions
// of widths other than the plain one, as layouts are bounded by, were tried and say no more of the examples.
import type { QuiltPlan } from '#craft';
import type { ClothNature } from '#craft/cutting';
import { toNumber } from '#ground/exact';
import { clothBound } from './cloth-bound.ts';
import type { LinePrice } from './least.ts';
import type { CutLine } from './lines.ts';

export interface ClothPrices {
  readonly priceOf: (line: CutLine) => LinePrice;
  /** What is added to the prices of all pieces: of cloths that no choice touches all, and less what ends at hand may give. */
  readonly fixed: number;
}

/**
 * @param of.cloths  those that pieces are cut from
 * @param of.touched those of which a choice may take more or less
 * @source docs/formulas.md#trade-offs
 */
export const clothPrices = (of: {
  readonly plan: Pick<QuiltPlan, 'quilt' | 'fabrics'>;
  readonly natures: ReadonlyMap<string, ClothNature>;
  readonly cloths: readonly string[];
  readonly touched: ReadonlySet<string>;
}): ClothPrices => {
  const { plan, natures, cloths, touched } = of;
  const known = new Map(cloths.map((id) => [id, touched.has(id) ? null : boundOf(plan, id, natures)]));
  return {
    priceOf: ({ fabric, area }) => ({
      piece: known.get(fabric) === null ? area / widestOf(natures.get(fabric)) : 0,
      strip: 0,
      perStrip: 1,
    }),
    fixed: cloths.reduce(
      (all, id) => all + (known.get(id) ?? -endsArea(plan.quilt, id) / widestOf(natures.get(id))),
      0,
    ),
  };
};

/** Of a cloth that no choice touches, what its own layout is bounded by; null where ends at hand take part of it. */
const boundOf = (
  { quilt, fabrics }: Pick<QuiltPlan, 'quilt' | 'fabrics'>,
  id: string,
  natures: ReadonlyMap<string, ClothNature>,
): number | null => {
  const cloth = fabrics.find((fabric) => fabric.id === id);
  return cloth === undefined || endsArea(quilt, id) > 0 ? null : clothBound(cloth, natures);
};

/** Of pieces of it at hand: what lies on them is not bought. */
export const endsArea = ({ fabrics }: QuiltPlan['quilt'], id: string): number =>
  (fabrics.find((fabric) => fabric.id === id)?.ends ?? []).reduce(
    (all, { size, count }) => all + toNumber(size[0]) * toNumber(size[1]) * count,
    0,
  );

export const widestOf = (nature: ClothNature | undefined): number =>
  Math.max(nature?.width ?? 0, ...(nature?.stock ?? []).map(({ size }) => size[0]));
