// Which totals can sheets of these costs come to? A bound goes up to the next.
import { gcdOf } from '#craft/strips';

/** Totals looked at; beyond, only the common divisor counts. */
const mostTotals = 1_000_000;

/**
 * @param least proven lower bound, may lie between totals
 * @returns the smallest total of whole sheets that is at least that
 */
export const nextTotal = (costs: readonly number[], least: number): number => {
  const unit = gcdOf(costs);
  if (unit === 0) return 0;
  const from = Math.ceil(least / unit - 1e-6);
  if (from <= 0) return 0;
  const steps = costs.filter((c) => c > 0).map((c) => c / unit);
  const dearest = Math.max(...steps);
  const reach = from + dearest;
  if (reach > mostTotals) return from * unit;
  const can = new Uint8Array(reach + 1);
  can[0] = 1;
  for (let total = 1; total <= reach; total++)
    if (steps.some((step) => step <= total && can[total - step] === 1)) {
      can[total] = 1;
      if (total >= from) return total * unit;
    }
  return from * unit;
};
