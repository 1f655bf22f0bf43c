// What every cut size depends on.
import type { Length } from '#craft/measure';
import type { Rational } from '#ground/exact';

export interface CutRule {
  readonly seam: Length;
  /** The finest mark. */
  readonly ruler: Rational;
}
