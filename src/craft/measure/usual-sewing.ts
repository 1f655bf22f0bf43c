// Seam allowance and ruler where a document names none, as docs/document.md sets them.
import { type Rational, rational } from '#ground/exact';
import type { Unit } from './length.ts';

export const usualSewing: Readonly<Record<Unit, { readonly seam: Rational; readonly ruler: Rational }>> = {
  in: { seam: rational(1, 4), ruler: rational(1, 8) },
  cm: { seam: rational(3, 4), ruler: rational(1, 10) },
};
