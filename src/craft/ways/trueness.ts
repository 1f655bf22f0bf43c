// How far is a unit's side likely to come out from its size? One standard deviation of what cuts and seams do to it, to the
// first order, by the way in which it is made.
import type { Care } from '#craft/accuracy';
import type { Unit } from './unit.ts';
import type { Way } from './ways.ts';

/**
 * Cuts and allowances are equally likely anywhere within their limits, so each deviates by its limit over √3. A trimmed unit has the
 * error of the ruler alone, whatever went before.
 *
 * @returns in the document's unit
 * @source docs/formulas.md#trueness-of-ways
 */
export const deviationOf = (
  unit: Pick<Unit, 'kind' | 'strips'>,
  { name, trimmed }: Pick<Way, 'name' | 'trimmed'>,
  care: Care,
): number => {
  const [cut, seam] = [care.cut / Math.sqrt(3), care.seam / Math.sqrt(3)];
  const { cuts, seams } = trimmed ? { cuts: 1, seams: 0 } : sensitivityOf(unit, name);
  return Math.sqrt(cuts * cut * cut + seams * seam * seam);
};

/** Squares of what one cut and one allowance do to the side, summed over those that it crosses. */
const sensitivityOf = (
  { kind, strips }: Pick<Unit, 'kind' | 'strips'>,
  name: Way['name'],
): { readonly cuts: number; readonly seams: number } => {
  // across strips every cut comes in, and both allowances of every seam
  if (strips !== undefined) return { cuts: strips.widths.length, seams: 4 * (strips.widths.length - 1) };
  // the base has its size, whatever lies on its corners
  if (name === 'sew-and-flip') return { cuts: 1, seams: 0 };
  // both layers lose √2 of the allowance at the slanted seam: once for half-squares, twice for the others
  if (kind !== 'half-square') return { cuts: 1, seams: 4 };
  // a quarter of the large square's cut, and the cut through its middle
  return name === 'eight-at-a-time' ? { cuts: 1.25, seams: 2 } : { cuts: 1, seams: 2 };
};
