// A plan while its layouts are still searched for: one cloth of it laid out better than it was. Knows nothing of the search.

import type { FabricPlan, QuiltPlan } from '#craft/plan';
import { planCost } from './cloth-plan.ts';

/**
 * @param cloth as a watched search tells it, of the same document
 * @returns the very plan where the cloth is laid out no better; notes are those of the plan
 */
export const withBetterCloth = (plan: QuiltPlan, cloth: FabricPlan): QuiltPlan => {
  const now = plan.fabrics.find(({ id }) => id === cloth.id);
  if (now === undefined || !isBetter(now, cloth)) return plan;
  // what the search tells on its way knows nothing of the fold
  const taken = cloth.fold === null && now.fold !== null && !now.fold.chosen ? { ...cloth, fold: now.fold } : cloth;
  const fabrics = plan.fabrics.map((one) => (one.id === cloth.id ? taken : one));
  return { ...plan, fabrics, cost: planCost(plan.quilt, fabrics) };
};

/** Less to buy, or as much and shorter, or as short and nearer to proven; of two that are alike the one with its ladder. */
const isBetter = (now: FabricPlan, then: FabricPlan): boolean => {
  const [a, b] = [figuresOf(now), figuresOf(then)];
  const at = a.findIndex((figure, i) => Math.abs(figure - (b[i] as number)) > 1e-9);
  return at >= 0 && (b[at] as number) < (a[at] as number);
};

const figuresOf = ({ buy, laid, ladder }: FabricPlan): readonly number[] =>
  'sheets' in laid
    ? [laid.kept === 'cost' ? laid.cost : 0, laid.sheets.length, -laid.costBound, -laid.bound]
    : [buy.amount, laid.layout.length, -laid.bound, -ladder.length];
