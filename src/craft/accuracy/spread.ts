// How far may a check size come out from what is drawn? By the formula: all at their limits one way, by the root of the sum
// of squares, and what a habit adds to both.
import { type Length, length } from '#craft/measure';
import type { Care, Habit } from './care.ts';
import { limitsOf } from './parts.ts';
import { type SewnIn, type SizeModel, sensitivity } from './size-model.ts';

export interface Spread {
  /** What the habit and the marks alone do: the middle of all that may come out, less the size as drawn. */
  readonly shift: Length;
  /** Every cut and every seam at its limit, all one way. */
  readonly worst: Length;
  /** The limits put together as the root of the sum of their squares. */
  readonly rootSumSquare: Length;
  /** One standard deviation, each cut and seam being equally likely anywhere within its limits. */
  readonly deviation: Length;
}

/** @source docs/formulas.md#accuracy: NIST Technical Note 1297, sections 4.6 and 5; Scholz, tolerance stacks */
export const spreadOf = (model: SizeModel, care: Care, habit: Habit): Spread => {
  const { sum, squares } = limitsOf(model, care);
  const rootSumSquare = Math.sqrt(squares);
  return {
    shift: length(model.expected - model.drawn + habitShift(model, habit)),
    worst: length(sum),
    rootSumSquare: length(rootSumSquare),
    deviation: length(rootSumSquare / Math.sqrt(3)),
  };
};

export const habitShift = (model: SewnIn, { allowance, fold }: Habit): number => {
  const takes = sensitivity(model);
  return -takes.allowance * allowance - takes.fold * fold;
};
