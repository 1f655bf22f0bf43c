// On which mark of the ruler, or step of the shop, does a computed length fall? Says which way it moved.
import type { Rational } from '#ground/exact';
import { type Length, length } from './length.ts';

export interface Marked {
  readonly size: Length;
  /** How the size came from the value. */
  readonly way: 'on' | 'up' | 'down';
}

/** A value this near to a mark is on it, in the document's unit: floating point never moves a size by a mark. */
const markTolerance = 1e-9;

/** For what is trimmed after sewing. @param ruler the finest mark, above zero, in the value's unit */
export const upToMark = (value: Length, ruler: Rational): Marked => {
  const near = nearestOn(value, ruler);
  if (near !== null) return near;
  return { size: length(times(Math.ceil(countOf(value, ruler)), ruler)), way: 'up' };
};

/** For what must match its neighbours untrimmed; exactly between two marks goes up. */
export const toNearestMark = (value: Length, ruler: Rational): Marked => {
  const near = nearestOn(value, ruler);
  if (near !== null) return near;
  const below = Math.floor(countOf(value, ruler));
  const overHalf = value - (times(below, ruler) + times(below + 1, ruler)) / 2 >= -markTolerance;
  return overHalf
    ? { size: length(times(below + 1, ruler)), way: 'up' }
    : { size: length(times(below, ruler)), way: 'down' };
};

/** The least whole number of steps that reaches an amount, as an amount: what the shop cuts. Same unit, step above zero. */
export const inSteps = (amount: number, step: Rational): number => upToMark(length(amount), step).size;

const nearestOn = (value: Length, ruler: Rational): Marked | null => {
  const mark = times(Math.round(countOf(value, ruler)), ruler);
  return Math.abs(value - mark) <= markTolerance ? { size: length(mark), way: 'on' } : null;
};

const countOf = (value: number, ruler: Rational): number => (value * Number(ruler.d)) / Number(ruler.n);

/** The double nearest to count·ruler: the product is a whole number, so only the division rounds. */
const times = (count: number, ruler: Rational): number => {
  const exact = (count * Number(ruler.n)) / Number(ruler.d);
  return exact === 0 ? 0 : exact;
};
