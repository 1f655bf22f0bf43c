// How a shop cuts cloth and what is lost on the way.

import { convert, type MeasureUnit, parseMeasure, type Unit } from '#craft/measure';
import { fromDecimal, isPositive, type Rational, rational } from '#ground/exact';
import type { QuiltDocument, WrittenLength } from './document.ts';
import { foundText } from './found.ts';
import type { Buying } from './quilt.ts';
import type { Reading, Spot } from './reading.ts';

/** Lost at each end of a bought length, and the shop's step, as docs/document.md sets them. */
const usual: Readonly<Record<Unit, { readonly squaring: Rational; readonly step: Buying['step'] }>> = {
  in: { squaring: rational(1), step: { amount: rational(1, 8), unit: 'yd' } },
  cm: { squaring: rational(5, 2), step: { amount: rational(1, 10), unit: 'm' } },
};

export const readBuying = (written: QuiltDocument['cutting'], reading: Reading): Buying | null => {
  const path = '/cutting';
  const squaring = reading.length({
    written: written?.squaring,
    path: `${path}/squaring`,
    sign: 'zero-or-more',
    missing: usual[reading.unit].squaring,
  });
  const shrinkage = fromDecimal(written?.shrinkage ?? 0);
  const step =
    written?.step === undefined ? usual[reading.unit].step : readStep(written.step, { path: `${path}/step`, reading });
  return squaring && step && { squaring, shrinkage, step };
};

const sold: Readonly<Record<MeasureUnit, 'yd' | 'm'>> = { in: 'yd', yd: 'yd', mm: 'm', cm: 'm', m: 'm' };

/** Cloth is sold by the yard or the metre: a step says which, for "1/8" alone could mean either or an inch. */
const readStep = (written: WrittenLength, { path, reading }: Spot): Buying['step'] | null => {
  // judges sign, size and fineness; the amount is then taken in the shop's own unit
  const inches = reading.length({ written, path });
  const read = parseMeasure(written);
  if (inches === null || !read.ok || !isPositive(inches)) return null;
  const { amount, unit } = read.value;
  if (unit !== null) return { amount: convert(amount, { from: unit, to: sold[unit] }), unit: sold[unit] };
  reading.report({ code: 'design/step-unit', path, found: foundText(written) });
  return null;
};
