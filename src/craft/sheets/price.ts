// At given prices of the pieces, what is the most that a sheet can hold? No demand is kept but that of one strip or one
// stack, so the answer is never less than the truth: bounds rest on it.
import { patternOf, type Run, type Stack, type StackUse, type StripPattern, stackOf } from '#craft/strips';
import { type SheetPattern, type SheetTask, stripOn } from './fill.ts';
import type { Sheet } from './job.ts';
import type { Lie } from './lies.ts';
import { type Choice, filledFor } from './table.ts';

export interface PricedSheet {
  readonly value: number;
  readonly pattern: SheetPattern;
  readonly work: number;
}

export interface PriceTask {
  readonly task: SheetTask;
  readonly sheet: number;
  /** Of one piece of each kind, not below 0. */
  readonly prices: ArrayLike<number>;
}

/** What a strip of each height is worth at most, dominated heights left out; and how it is cut. */
interface StripPrices {
  readonly heights: readonly number[];
  readonly values: readonly number[];
  readonly strip: (index: number) => StripPattern;
  readonly work: number;
}

export const pricedSheet = (of: PriceTask): PricedSheet => {
  const { task, sheet } = of;
  const { height } = task.job.sheets[sheet] as Sheet;
  const strips = task.job.cutting.stages === 2 ? singlesPrices(of) : stacksPrices(of);
  const choices = strips.heights.map(
    (size, i): Choice => ({ size, value: strips.values[i] as number, most: Number.POSITIVE_INFINITY }),
  );
  const table = filledFor(choices, height);
  const patterns: StripPattern[] = [];
  const counts = new Int32Array(task.job.kinds.length);
  table.taken(choices.length, height, (i, times) => {
    const strip = strips.strip(i);
    for (let n = 0; n < times; n++) patterns.push(strip);
    for (const part of strip.parts)
      for (const run of part.stack.runs)
        counts[run.kind] = (counts[run.kind] as number) + times * part.times * run.times;
  });
  return {
    value: table.best[height] as number,
    pattern: { sheet, strips: patterns.reverse(), counts },
    work: strips.work + table.work,
  };
};

const priced = ({ task, sheet, prices }: PriceTask): readonly Lie[] =>
  (task.lies[sheet] as readonly Lie[]).filter(({ kind }) => (prices[kind] as number) > 1e-12);

const countOf = ({ task }: PriceTask, kind: number): number => task.job.kinds[kind]?.count ?? 0;

const singlesPrices = (of: PriceTask): StripPrices => {
  const { task, sheet, prices } = of;
  const { width } = task.job.sheets[sheet] as Sheet;
  const lies = priced(of);
  const choices = lies.map(
    ({ kind, width: size }): Choice => ({ size, value: prices[kind] as number, most: countOf(of, kind) }),
  );
  const heights: number[] = [];
  const values: number[] = [];
  const ends: number[] = [];
  const table = filledFor(choices, width, (i, best) => {
    const { height } = lies[i] as Lie;
    if (lies[i + 1]?.height === height) return;
    const value = best[width] as number;
    if (value <= (values.at(-1) ?? 0) + 1e-12) return;
    heights.push(height);
    values.push(value);
    ends.push(i + 1);
  });
  const strip = (index: number): StripPattern => {
    const parts: StackUse[] = [];
    table.taken(ends[index] as number, width, (i, times) => {
      const { kind, turned } = lies[i] as Lie;
      parts.push({ stack: stackOf({ width, kinds: task.job.kinds }, [{ kind, turned, times: 1 }]), times });
    });
    return patternOf(parts);
  };
  return { heights, values, strip, work: table.work };
};

const stacksPrices = (of: PriceTask): StripPrices => {
  const { task, sheet, prices } = of;
  const { width, height } = task.job.sheets[sheet] as Sheet;
  const lies = priced(of);
  const choices = lies.map(
    ({ kind, height: size }): Choice => ({ size, value: prices[kind] as number, most: countOf(of, kind) }),
  );
  const widths: number[] = [];
  const ends: number[] = [];
  const rows: Float64Array[] = [];
  const table = filledFor(choices, height, (i, best) => {
    const own = (lies[i] as Lie).width;
    if (lies[i + 1]?.width === own) return;
    widths.push(own);
    ends.push(i + 1);
    rows.push(best.slice());
  });
  const { heights: allowed } = task;
  const heights: number[] = [];
  const values: number[] = [];
  let work = table.work;
  for (let h = 1; h <= height; h++) {
    const isUseful =
      allowed === null ? rows.some((row) => (row[h] as number) > (row[h - 1] as number) + 1e-12) : allowed.includes(h);
    if (!isUseful) continue;
    const row = rowOf({ widths, rows, height: h, width });
    work += row.work;
    if (row.value <= (values.at(-1) ?? 0) + 1e-12) continue;
    heights.push(h);
    values.push(row.value);
  }
  const strip = (index: number): StripPattern => {
    const h = heights[index] as number;
    const stackWithin = (group: number): Stack => {
      const runs: Run[] = [];
      table.taken(ends[group] as number, h, (i, times) => {
        const { kind, turned } = lies[i] as Lie;
        runs.push({ kind, turned, times });
      });
      return stackOf({ width, kinds: task.job.kinds }, runs);
    };
    const parts = rowOf({ widths, rows, height: h, width }).groups();
    return stripOn(
      task,
      parts.map((group) => ({ stack: stackWithin(group), times: 1 })),
    );
  };
  return { heights, values, strip, work };
};

/** The best row of stacks side by side, each width as often as it fits. */
const rowOf = (of: {
  readonly widths: readonly number[];
  readonly rows: readonly Float64Array[];
  readonly height: number;
  readonly width: number;
}): { readonly value: number; readonly groups: () => readonly number[]; readonly work: number } => {
  const { widths, rows, height, width } = of;
  const best = new Float64Array(width + 1);
  const last = new Int32Array(width + 1).fill(-1);
  let before = 0;
  let work = 0;
  for (let g = 0; g < widths.length; g++) {
    const value = (rows[g] as Float64Array)[height] as number;
    if (value <= before + 1e-12) continue;
    before = value;
    const size = widths[g] as number;
    work += width + 1 - size;
    for (let c = size; c <= width; c++) {
      const reached = (best[c - size] as number) + value;
      if (reached > (best[c] as number) + 1e-12) {
        best[c] = reached;
        last[c] = g;
      }
    }
  }
  const groups = (): readonly number[] => {
    const out: number[] = [];
    for (let c = width; c > 0 && last[c] !== -1; c -= widths[last[c] as number] as number) out.push(last[c] as number);
    return out;
  };
  return { value: best[width] as number, groups, work };
};
