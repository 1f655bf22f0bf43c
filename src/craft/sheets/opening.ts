// A few sheets of a plan are taken apart, the emptiest more likely among them, so that what they held may be cut anew.
import type { Chance } from '#ground/chance';
import type { SheetTask } from './fill.ts';
import type { Sheet } from './job.ts';
import { areasOf, type PatternUse, type Plan, stockOf } from './restart.ts';
import type { Rounded } from './rounding.ts';

/** Sheets taken apart at most. */
const mostOpened = 6;

export const opened = (of: { readonly task: SheetTask; readonly plan: Plan; readonly chance: Chance }): Rounded => {
  const { task, plan, chance } = of;
  const shares = sharesOf(task, plan);
  const order = plan.uses
    .flatMap(({ times }, i) => Array.from({ length: Math.min(times, mostOpened) }, () => i))
    .map((i) => ({ i, key: (shares[i] as number) * (0.3 + chance()) }))
    .sort((a, b) => a.key - b.key || a.i - b.i)
    .slice(0, 2 + Math.floor(chance() * (mostOpened - 1)));
  const rest = plan.left.slice();
  const stock = stockOf(task);
  const times = plan.uses.map((use) => use.times);
  for (const { i } of order) {
    times[i] = (times[i] as number) - 1;
    plan.uses[i]?.pattern.counts.forEach((n, k) => {
      rest[k] = (rest[k] as number) + n;
    });
  }
  const uses = plan.uses.flatMap(({ pattern }, i): readonly PatternUse[] => {
    const kept = times[i] as number;
    stock[pattern.sheet] = (stock[pattern.sheet] as number) - kept;
    return kept > 0 ? [{ pattern, times: kept }] : [];
  });
  return { uses, rest, stock };
};

/** How much of each sheet is filled. */
const sharesOf = (task: SheetTask, { uses }: Plan): readonly number[] => {
  const areas = areasOf(task);
  return uses.map(({ pattern }) => {
    const { width, height } = task.job.sheets[pattern.sheet] as Sheet;
    return pattern.counts.reduce((sum, n, i) => sum + n * (areas[i] as number), 0) / (width * height);
  });
};

/** Greater where sheets are filled more unevenly: then the emptiest may soon be empty. */
export const unevenness = (task: SheetTask, plan: Plan): number =>
  sharesOf(task, plan).reduce((sum, share, i) => sum + (plan.uses[i]?.times ?? 0) * share * share, 0);
