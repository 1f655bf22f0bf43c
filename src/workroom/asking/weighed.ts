// What choices would come to, weighed one after another: of one cloth what would move its purchase, and of the quilt any changed document.
import { planQuilt, type QuiltPlan, replan } from '#craft';
import { defaultBudget } from '#craft/cutting';
import { type PurchaseChange, purchaseChanges } from '#craft/shopping';
import type { IntegerSolver } from '#craft/strips';
import { toNumber } from '#ground/exact';
import { withTrueFractions } from '#paper/lengths';
import { type Difference, differenceText, moneyText } from '#paper/pages';
import { changeText } from '#paper/words';
import type { JsonObject } from '#workroom/editing';
import { refusedIn } from './refused.ts';

/** A changed document, and how its choice is known to who asks. */
export interface Variant {
  readonly id: string;
  readonly document: JsonObject;
}

export type Weighed =
  | {
      readonly kind: 'cloth';
      readonly change: PurchaseChange;
      /** "42 in usable saves ⅛ yd" */
      readonly words: string;
      /** "1.50 EUR less"; "" without a price, or where it is not known of what is sold otherwise. */
      readonly cost: string;
    }
  | { readonly kind: 'variant'; readonly id: string; readonly difference: Difference }
  /** It cannot be cut so. */
  | { readonly kind: 'refused'; readonly id: string; readonly why: string };

export interface Weighing {
  /** Weighed first: changes of the quilt that need no new layout. */
  readonly quick: readonly Variant[];
  /** Then what would move its purchase; null for none. */
  readonly cloth: string | null;
  /** Each laid out anew. */
  readonly variants: readonly Variant[];
}

export interface WeighTask extends Weighing {
  /** As it was searched for. */
  readonly plan: QuiltPlan;
  readonly solver: IntegerSolver;
}

/** One after another, as each is known. */
export function* weigh({ plan, quick, cloth, variants, solver }: WeighTask): Generator<Weighed, void, void> {
  const search = { steps: defaultBudget.steps, solver };
  for (const variant of quick) yield variantWeighed(variant, plan, search);
  if (cloth !== null) yield* clothWeighed(plan, cloth, search);
  for (const variant of variants) yield variantWeighed(variant, plan, search);
}

type Search = { readonly steps: number; readonly solver: IntegerSolver };

const variantWeighed = ({ id, document }: Variant, plan: QuiltPlan, search: Search): Weighed => {
  const changed = planQuilt(document, { budget: { steps: 0 } });
  if (!changed.ok) return { kind: 'refused', id, why: refusedIn(changed, document).problems[0]?.what ?? '' };
  return {
    kind: 'variant',
    id,
    difference: differenceText(plan, replan({ base: plan, changed: changed.value, search })),
  };
};

function* clothWeighed(plan: QuiltPlan, cloth: string, search: Search): Generator<Weighed, void, void> {
  const fabrics = plan.fabrics.filter(({ id }) => id === cloth);
  for (const change of purchaseChanges({ plan: { ...plan, fabrics }, search })) {
    if (otherwise.includes(change.code)) continue;
    const words = withTrueFractions(changeText(change, plan.quilt.unit));
    yield { kind: 'cloth', change, words, cost: costText(plan, change) };
  }
}

/** Weighed as changed documents: the first two for all cloths of the quilt. */
const otherwise: readonly PurchaseChange['code'][] = [
  'shopping/shrinkage',
  'shopping/straight-ends',
  'shopping/no-turning',
];

const costText = ({ quilt, cost }: QuiltPlan, { fabric, difference }: PurchaseChange): string => {
  const price = quilt.fabrics.find(({ id }) => id === fabric)?.price ?? null;
  if (price === null || difference === null) return '';
  const paid = toNumber(price) * difference;
  return `${moneyText(Math.abs(paid), cost.currency)} ${paid > 0 ? 'more' : 'less'}`;
};
