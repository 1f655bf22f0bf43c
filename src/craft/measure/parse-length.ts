// Is this a length that a quilt can have, and what is it exactly in the document's unit?

import { compare, isPositive, isZero, type Rational, rational } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import { exactText } from './exact-text.ts';
import type { Unit } from './length.ts';
import { longestMeasure, type MeasureProblem, parseMeasure } from './parse-measure.ts';
import { convert } from './units.ts';

export type Sign = 'positive' | 'zero-or-more' | 'any';

export interface LengthWish {
  /** The document's unit: what a number without a unit means, and what comes back. */
  readonly unit: Unit;
  readonly sign: Sign;
  /** Largest that is sensible here; 10 000 where none is given. */
  readonly most?: Rational;
}

export type LengthProblem =
  | MeasureProblem
  | { readonly fault: 'not-positive' | 'negative'; readonly found: string }
  | { readonly fault: 'too-large'; readonly found: string; readonly most: Rational };

/** Our own figures: far beyond any quilt, near enough that sums stay small. In the document's unit. */
const mostLength = rational(10_000);

/** @returns exact, in the wish's unit; the first thing that is wrong otherwise */
export const parseLength = (written: string | number, wish: LengthWish): Outcome<Rational, LengthProblem> => {
  const read = parseMeasure(written);
  if (!read.ok) return read;
  const found = `${written}`;
  const value = convert(read.value.amount, { from: read.value.unit ?? wish.unit, to: wish.unit });
  if (wish.sign === 'positive' && !isPositive(value)) return refused([{ fault: 'not-positive', found }]);
  if (wish.sign === 'zero-or-more' && !isPositive(value) && !isZero(value)) {
    return refused([{ fault: 'negative', found }]);
  }
  const most = wish.most ?? mostLength;
  if (compare(value.abs(), most) > 0) return refused([{ fault: 'too-large', found, most }]);
  if (exactText(value).length > longestMeasure) return refused([{ fault: 'too-fine', found, most: longestMeasure }]);
  return done(value);
};
