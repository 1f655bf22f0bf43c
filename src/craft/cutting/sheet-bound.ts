// Below what number of sheets can no layout exist? Area, plain or weighed, and pieces that cannot share a sheet.
import type { Length } from '#craft/measure';
import { dualFeasibleFor } from '#craft/strips';
import type { Demand } from './cloth.ts';
import { gridFor, unitsDown, unitsUp } from './grid.ts';

/** Functions tried for each side of the sheet. */
const mostFunctions = 24;

/**
 * The greatest of the counting arguments. With a function for the width and one for the length, whose images of what fits
 * side by side or one below another never exceed that of the sheet, the images of a sheet's pieces, width times length,
 * add up to at most the sheet's. The identities give the plain area; functions that count only what is above a half say
 * that such pieces cannot share a sheet. A piece that may turn counts the way in which it weighs less.
 *
 * @source docs/formulas.md#sheets
 */
export const leastSheets = (task: {
  readonly size: readonly [Length, Length];
  readonly demands: readonly Demand[];
}): number => {
  const demands = task.demands.filter(({ count }) => count > 0);
  if (demands.length === 0) return 0;
  const grid = gridFor([...task.size, ...demands.flatMap(({ across, along }) => [across, along])]);
  const [width, height] = [unitsUp(task.size[0], grid), unitsUp(task.size[1], grid)];
  const pieces = demands.map(({ across, along, count, mayTurn }) => ({
    across: unitsDown(across, grid),
    along: unitsDown(along, grid),
    count,
    mayTurn,
  }));
  const sizes = [...new Set(pieces.flatMap(({ across, along }) => [across, along]))];
  let least = 1;
  for (const f of dualFeasibleFor(width, sizes, mostFunctions)) {
    for (const g of dualFeasibleFor(height, sizes, mostFunctions)) {
      const whole = f.whole * g.whole;
      if (whole <= 0) continue;
      const weight = pieces.reduce((sum, { across, along, count, mayTurn }) => {
        const level = f.of(across) * g.of(along);
        return sum + count * (mayTurn ? Math.min(level, f.of(along) * g.of(across)) : level);
      }, 0);
      least = Math.max(least, Math.ceil(weight / whole - 1e-9));
    }
  }
  return least;
};
