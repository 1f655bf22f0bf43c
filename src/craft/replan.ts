// What would another way of buying, laying or cutting the same quilt come to? Of a plan that was searched for, only the cloths that the change
// touches are laid out anew.

import { clothBought, planCost } from '#craft/cloths';
import { toDocument } from '#craft/design';
import type { FabricPlan, QuiltPlan } from '#craft/plan';
import { type Recutting, recut } from './recut.ts';

export interface Replanning {
  /** Searched for. */
  readonly base: QuiltPlan;
  /** Of the changed document, its layouts not searched for. */
  readonly changed: QuiltPlan;
  readonly search: Recutting['search'];
}

/** The changed plan: what is bought and how it is laid out as a search would have it; notes are those of the changed plan. */
export const replan = ({ base, changed, search }: Replanning): QuiltPlan => {
  const [before, after] = [layingOf(base), layingOf(changed)];
  const fabrics = changed.fabrics.map((cloth): FabricPlan => {
    const own = base.fabrics.find(({ id }) => id === cloth.id);
    const isAsBefore = own !== undefined && before(own) === after(cloth);
    if (isAsBefore) return clothBought(changed.quilt, own);
    return recut({ plan: changed, fabric: cloth.id, turning: 'as-they-may', search }) ?? cloth;
  });
  return { ...changed, fabrics, cost: planCost(changed.quilt, fabrics) };
};

/** All that decides how a cloth is laid out, as a text; what only decides how much is then bought is left out where it can be. */
const layingOf = ({ quilt }: QuiltPlan): ((cloth: FabricPlan) => string) => {
  const { cutting, fabrics } = toDocument(quilt);
  const known = new Map(fabrics.map((fabric) => [fabric.id, fabric]));
  const { layout, fold, ...buying } = cutting ?? {};
  return ({ id, pieces, laid, ends }) => {
    const { name: _, colour: __, photo: ___, price: ____, ...nature } = known.get(id) ?? { name: '', colour: '' };
    // ends at hand are used where they save a step of the shop, and given lengths lose their own ends
    const asBought = 'sheets' in laid || ends !== null ? buying : null;
    return JSON.stringify([layout ?? 'least', fold ?? false, nature, pieces, asBought], exactly);
  };
};

/** Marks of a ruler are exact numbers. */
const exactly = (_: string, value: unknown): unknown => (typeof value === 'bigint' ? `${value}` : value);
