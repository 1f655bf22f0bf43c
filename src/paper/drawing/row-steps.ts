// Which steps make a row of the top? Rows that begin alike share the steps of their beginning, so a row's
// own steps are found from its finished unit backward.
import type { QuiltPlan, TopStep } from '#craft';

/** From left to right; empty for a row of one part. */
export const rowStepsOf = (plan: QuiltPlan, row: number): readonly TopStep[] => {
  const { steps } = plan.top;
  const made = new Map(steps.map((step) => [step.makes, step]));
  const chain: TopStep[] = [];
  let step = made.get(rowUnit(plan, row) ?? '');
  while (step !== undefined && step.stage === 'row') {
    chain.unshift(step);
    step = made.get(step.join[0]);
  }
  return chain;
};

/** The rows, 0-based, that a step helps to make: several where they begin alike. */
export const rowsWith = (plan: QuiltPlan, step: TopStep): readonly number[] => {
  const { steps, set } = plan.top;
  const known = rowsOfSteps.get(steps) ?? new Map<TopStep, number[]>();
  if (!rowsOfSteps.has(steps)) {
    for (const row of set.rows.keys()) {
      for (const one of rowStepsOf(plan, row)) known.set(one, [...(known.get(one) ?? []), row]);
    }
    rowsOfSteps.set(steps, known);
  }
  return known.get(step) ?? [];
};

/** Asked for step by step; of one plan always the same. */
const rowsOfSteps = new WeakMap<readonly TopStep[], Map<TopStep, number[]>>();

/** The name of the unit that is the whole row. */
const rowUnit = (plan: QuiltPlan, row: number): string | undefined => {
  const joins = plan.top.steps.filter(({ stage }) => stage === 'rows');
  if (joins.length === 0) return plan.top.steps.findLast(({ stage }) => stage === 'row')?.makes;
  return row === 0 ? joins[0]?.join[0] : joins[row - 1]?.join[1];
};

/** The first row that is made just like this one, when there is an earlier one; else null. */
export const sameRowBefore = (plan: QuiltPlan, row: number): number | null => {
  const unit = rowUnit(plan, row);
  if (unit === undefined || !unit.startsWith('#')) return null;
  for (let before = 0; before < row; before++) if (rowUnit(plan, before) === unit) return before;
  return null;
};

/** Rows from lower left to upper right: a set on point. */
export const isSlanted = ({ top }: QuiltPlan): boolean => 'core' in top.set.assembly;
