// What of a plan in fractions of sheets can be kept in whole ones? Whole parts, then by chance one more of some; what is
// still to be cut is left to others.
import type { Chance } from '#ground/chance';
import type { SheetPattern } from './fill.ts';
import type { Relaxation } from './linear.ts';
import { demandOf, type PatternUse, stockOf } from './restart.ts';

export interface Rounded {
  readonly uses: readonly PatternUse[];
  readonly rest: Int32Array;
  readonly stock: Float64Array;
}

/** Never more of a kind than is wanted. Call after a `relaxed` that solved. */
export const roundedDown = (of: Relaxation, chance: Chance): Rounded => {
  const rest = demandOf(of.task);
  const stock = stockOf(of.task);
  const uses: PatternUse[] = [];
  const take = (pattern: SheetPattern, wanted: number): void => {
    let times = Math.min(wanted, stock[pattern.sheet] as number);
    pattern.counts.forEach((n, i) => {
      if (n > 0) times = Math.min(times, Math.floor((rest[i] as number) / n));
    });
    if (times === 0) return;
    uses.push({ pattern, times });
    stock[pattern.sheet] = (stock[pattern.sheet] as number) - times;
    for (let i = 0; i < rest.length; i++) rest[i] = (rest[i] as number) - times * (pattern.counts[i] as number);
  };
  const parts = of.program
    .support()
    .filter(([column]) => column >= of.offset)
    .map(([column, value]) => ({ pattern: of.columns[column - of.offset] as SheetPattern, value }));
  for (const { pattern, value } of parts) take(pattern, Math.floor(value + 1e-9));
  const more = parts
    .map(({ pattern, value }, i) => ({ pattern, i, part: value - Math.floor(value + 1e-9) + 0.6 * (chance() - 0.5) }))
    .sort((a, b) => b.part - a.part || a.i - b.i);
  const least = 0.2 + 0.7 * chance();
  for (const { pattern, part } of more) if (part > least) take(pattern, 1);
  return { uses, rest, stock };
};
