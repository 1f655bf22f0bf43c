// One whole plan, sheet after sheet, each filled with what is worth most on it; and what the pieces should be worth the
// next time. Run again with other worths and chances it gives other plans.
import type { Kind } from '#craft/strips';
import type { Chance } from '#ground/chance';
import { type FilledSheet, filledSheet, type SheetPattern, type SheetTask } from './fill.ts';
import type { Sheet } from './job.ts';

export interface PatternUse {
  readonly pattern: SheetPattern;
  readonly times: number;
}

export interface Plan {
  readonly uses: readonly PatternUse[];
  readonly left: Int32Array;
}

export interface Restart {
  readonly task: SheetTask;
  /** What is to be cut. */
  readonly demand: Int32Array;
  /** Sheets of each kind that may still be taken. */
  readonly stock: Float64Array;
  readonly worth: Float64Array;
  readonly chance: Chance | null;
  /** Fillings tried of each kind of sheet before one is cut. */
  readonly tries: number;
}

export const areasOf = ({ job }: SheetTask): Float64Array =>
  Float64Array.from(job.kinds, ({ width, height }) => width * height);

export const demandOf = ({ job }: SheetTask): Int32Array => Int32Array.from(job.kinds, ({ count }) => count);

export const stockOf = ({ job }: SheetTask): Float64Array =>
  Float64Array.from(job.sheets, ({ stock }) => stock ?? Number.POSITIVE_INFINITY);

/** Yields the work of each sheet. */
export function* plannedSheets(restart: Restart): Generator<number, Plan, void> {
  const { task } = restart;
  const rest = restart.demand.slice();
  const stock = restart.stock.slice();
  const uses: PatternUse[] = [];
  while (rest.some((n) => n > 0)) {
    const next = nextSheet(restart, rest, stock);
    yield next.work;
    if (next.pattern === null) break;
    const { pattern } = next;
    const times = timesOf(pattern, rest, stock[pattern.sheet] as number);
    for (let i = 0; i < rest.length; i++) rest[i] = (rest[i] as number) - times * (pattern.counts[i] as number);
    stock[pattern.sheet] = (stock[pattern.sheet] as number) - times;
    uses.push({ pattern, times });
  }
  return { uses: thriftier(task, uses, stock), left: rest };
}

const timesOf = (pattern: SheetPattern, rest: Int32Array, most: number): number => {
  let times = most;
  pattern.counts.forEach((n, i) => {
    if (n > 0) times = Math.min(times, Math.floor((rest[i] as number) / n));
  });
  return times;
};

/** The filling that gives most for its cost; the cheapest of those that take all that is left. */
const nextSheet = (
  of: Restart,
  rest: Int32Array,
  stock: Float64Array,
): { readonly pattern: SheetPattern | null; readonly work: number } => {
  const { task, worth, chance, tries } = of;
  const wanted = rest.reduce((sum, n, i) => sum + n * (worth[i] as number), 0);
  let work = 0;
  let best: { readonly filled: FilledSheet; readonly score: number } | null = null;
  const dearest = task.job.sheets.reduce((most, { cost }) => Math.max(most, cost), 1);
  task.job.sheets.forEach((sheet, s) => {
    if ((stock[s] as number) < 1) return;
    const like = chance === null ? 1 : 1 + 0.06 * (chance() - 0.5);
    for (let n = 0; n < (chance === null ? 1 : tries); n++) {
      const filled = filledSheet({ task, sheet: s, rest, worth, chance });
      work += filled.work;
      if (filled.value <= 0) return;
      const score = (filled.value / (sheet.cost + dearest / 1000)) * like;
      const takesAll = filled.value > wanted - 1e-9;
      const ranked = takesAll ? 1e12 / (1 + sheet.cost / dearest) : score;
      if (best === null || ranked > best.score) best = { filled, score: ranked };
      if (takesAll) return;
    }
  });
  const chosen = best as { readonly filled: FilledSheet } | null;
  return { pattern: chosen?.filled.pattern ?? null, work: work + 1 };
};

/** Sheets whose pieces fit one that costs less are cut from that. */
const thriftier = (task: SheetTask, uses: readonly PatternUse[], stock: Float64Array): readonly PatternUse[] => {
  const { sheets } = task.job;
  if (sheets.length < 2) return uses;
  const areas = areasOf(task);
  const cheapFirst = sheets
    .map((_, s) => s)
    .sort((a, b) => (sheets[a] as Sheet).cost - (sheets[b] as Sheet).cost || a - b);
  return uses.map((use) => {
    const { pattern, times } = use;
    const cost = (sheets[pattern.sheet] as Sheet).cost;
    const area = pattern.counts.reduce((sum, n, i) => sum + n * (areas[i] as number), 0);
    for (const s of cheapFirst) {
      const other = sheets[s] as Sheet;
      if (other.cost >= cost) return use;
      if ((stock[s] as number) < times || other.width * other.height < area) continue;
      const filled = filledSheet({ task, sheet: s, rest: pattern.counts, worth: areas, chance: null });
      if (filled.pattern.counts.every((n, i) => n === pattern.counts[i])) {
        stock[s] = (stock[s] as number) - times;
        stock[pattern.sheet] = (stock[pattern.sheet] as number) + times;
        return { pattern: filled.pattern, times };
      }
    }
    return use;
  });
};

/**
 * Pieces that lay on badly filled sheets are worth more from now on.
 *
 * @source sequential value correction, from memory
 */
export const correctedWorth = (of: {
  readonly task: SheetTask;
  readonly plan: Plan;
  readonly worth: Float64Array;
  readonly chance: Chance;
}): Float64Array => {
  const { task, plan, worth, chance } = of;
  const next = worth.slice();
  const areas = areasOf(task);
  for (const { pattern } of plan.uses) {
    const sheet = task.job.sheets[pattern.sheet] as Sheet;
    const used = pattern.counts.reduce((sum, n, i) => sum + n * (areas[i] as number), 0);
    const waste = (sheet.width * sheet.height) / used;
    pattern.counts.forEach((n, i) => {
      if (n === 0) return;
      const share = (0.3 + 0.4 * chance()) * (n / (task.job.kinds[i] as Kind).count);
      next[i] = (1 - share) * (next[i] as number) + share * slightlyMore(areas[i] as number) * waste;
    });
  }
  return next;
};

/** To the power of 1 1/64: large pieces are worth a little more than their share. Of square roots alone, which are the same on every engine. */
const slightlyMore = (area: number): number => {
  let root = area;
  for (let i = 0; i < 6; i++) root = Math.sqrt(root);
  return area * root;
};
