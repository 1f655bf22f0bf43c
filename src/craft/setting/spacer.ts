// How wide are the strips that make a pieced border fit?
import { tidy } from '#craft/measure';

/**
 * Width of the spacer on each end of a side that makes whole units fit: the least that is nothing, or at least as wide
 * as an allowance, for a narrower strip could not be sewn.
 *
 * @source docs/formulas.md#pieced-border
 */
export const spacerFor = (of: { readonly side: number; readonly unit: number; readonly least: number }): number => {
  const { side, unit, least } = of;
  let units = Math.max(1, Math.ceil(side / unit - 1e-9));
  const spacer = (): number => (units * unit - side) / 2;
  while (spacer() > 1e-9 && spacer() < least - 1e-9) units += 1;
  return spacer() <= 1e-9 ? 0 : tidy(spacer());
};
