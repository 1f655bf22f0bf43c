// Binding: strips across the cloth, joined at 45 degrees into one length that goes round the quilt.

import type { Unit } from '#craft/measure';
import { convert, type Length, length } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';

/** Beyond the perimeter, for the corners and the closing join: 12 in (docs/sources.md S38k; authors give 8 to 24). */
export const bindingTail = (unit: Unit): Length => length(toNumber(convert(rational(12), { from: 'in', to: unit })));

export interface BindingCount {
  /** Perimeter and tail. */
  readonly length: Length;
  readonly strips: number;
  readonly joins: number;
  /** What the joined strips give: n widths less one strip width a join. */
  readonly gives: Length;
}

/**
 * Least number of strips whose joined length reaches round the quilt.
 *
 * @param round perimeter of the quilt
 * @param width usable width of the cloth, larger than `cut`
 * @param cut   width of the strips: what a 45-degree join takes
 * @source docs/formulas.md#binding
 */
export const bindingFor = (quilt: {
  readonly round: Length;
  readonly width: Length;
  readonly cut: Length;
  readonly tail: Length;
}): BindingCount => {
  const needed = quilt.round + quilt.tail;
  const strips = Math.max(1, Math.ceil((needed - quilt.cut) / (quilt.width - quilt.cut) - 1e-9));
  return {
    length: length(needed),
    strips,
    joins: strips - 1,
    gives: length(strips * quilt.width - (strips - 1) * quilt.cut),
  };
};
