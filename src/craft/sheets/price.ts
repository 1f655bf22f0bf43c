// At given prices of the pieces, what is the most that a sheet can hold? No demand is kept but that of one strip or one
// stack, so the answer is never less than the truth: bounds rest on it.
import { patternOf, type Run, type StackUse, type StripPattern, stackOf } from '#craft/strips';
import { type RankedKnapsack, rankedKnapsackFor } from '#ground/search';
import { type SheetPattern, type SheetTask, stripOn } from './fill.ts';
import { type Choice, filledFor } from './filled.ts';
import type { Sheet } from './job.ts';
import type { Lie } from './lies.ts';

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
  const lies = priced(of);
  const counts = new Int32Array(task.job.kinds.length);
  if (lies.length === 0) return { value: 0, pattern: { sheet, strips: [], counts }, work: 0 };
  const strips = task.job.cutting.stages === 2 ? singlesPrices(of, lies) : stacksPrices(of, lies);
  const patterns: StripPattern[] = [];
  const table = filledFor(
    strips.heights.map(
      (size, i): Choice => ({ size, rank: 0, value: strips.values[i] as number, most: Number.POSITIVE_INFINITY }),
    ),
    height,
  );
  table.taken(0, height, (i, times) => {
    const strip = strips.strip(i);
    for (let n = 0; n < times; n++) patterns.push(strip);
    for (const part of strip.parts)
      for (const run of part.stack.runs)
        counts[run.kind] = (counts[run.kind] as number) + times * part.times * run.times;
  });
  return {
    value: table.values(0)[height] as number,
    pattern: { sheet, strips: patterns.reverse(), counts },
    work: strips.work + table.work,
  };
};

const priced = ({ task, sheet, prices }: PriceTask): readonly Lie[] =>
  (task.lies[sheet] as readonly Lie[]).filter(({ kind }) => (prices[kind] as number) > 1e-12);

const countOf = ({ task }: PriceTask, kind: number): number => task.job.kinds[kind]?.count ?? 0;

const choiceOf = (of: PriceTask, { kind }: Lie, { size, rank }: Pick<Choice, 'size' | 'rank'>): Choice => ({
  size,
  rank,
  value: of.prices[kind] as number,
  most: countOf(of, kind),
});

const singlesPrices = (of: PriceTask, lies: readonly Lie[]): StripPrices => {
  const { task, sheet } = of;
  const { width } = task.job.sheets[sheet] as Sheet;
  const choices = lies.map((lie) => choiceOf(of, lie, { size: lie.width, rank: lie.height }));
  const table = filledFor(choices, width);
  const levels: number[] = [];
  const values: number[] = [];
  table.ranks.forEach((_, level) => {
    const value = table.values(level)[width] as number;
    if (value <= (values.at(-1) ?? 0) + 1e-12) return;
    levels.push(level);
    values.push(value);
  });
  const strip = (index: number): StripPattern => {
    const parts: StackUse[] = [];
    table.taken(levels[index] as number, width, (i, times) => {
      const { kind, turned } = lies[i] as Lie;
      parts.push({ stack: stackOf({ width, kinds: task.job.kinds }, [{ kind, turned, times: 1 }]), times });
    });
    return patternOf(parts);
  };
  return { heights: levels.map((level) => table.ranks[level] as number), values, strip, work: table.work };
};

/**
 * Stacks are told apart by the width of their widest pieces: a strip holds no more of a class than there are such pieces, and
 * each stack of it holds one.
 */
const stacksPrices = (of: PriceTask, lies: readonly Lie[]): StripPrices => {
  const { task, sheet, prices } = of;
  const { width, height } = task.job.sheets[sheet] as Sheet;
  const choices = lies.map((lie) => choiceOf(of, lie, { size: lie.height, rank: lie.width }));
  const table = filledFor(choices, height);
  const classes = table.ranks.map((wide, level): StackClass => {
    const widest = lies.filter((lie) => lie.width === wide);
    const kinds = new Set(widest.map(({ kind }) => kind));
    return {
      size: wide,
      rank: 0,
      most: [...kinds].reduce((sum, kind) => sum + countOf(of, kind), 0),
      values: withOneOf(widest, prices, table.values(level)),
    };
  });
  const row = rankedKnapsackFor(classes, width);
  const { heights: allowed } = task;
  const heights: number[] = [];
  const values: number[] = [];
  let work = table.work;
  for (let h = 1; h <= height; h++) {
    const isUseful =
      allowed === null
        ? classes.some(({ values: own }) => (own[h] as number) > (own[h - 1] as number) + 1e-12)
        : allowed.includes(h);
    if (!isUseful) continue;
    fillRow(row, classes, h);
    work += row.work();
    const value = row.worth(0, width);
    if (value <= (values.at(-1) ?? 0) + 1e-12) continue;
    heights.push(h);
    values.push(value);
  }
  const strip = (index: number): StripPattern => {
    const h = heights[index] as number;
    fillRow(row, classes, h);
    const times = new Int32Array(classes.length);
    row.trace(0, width, times);
    const parts: StackUse[] = [];
    times.forEach((n, level) => {
      if (n === 0) return;
      const runs: Run[] = [];
      table.taken(level, h, (i, each) => {
        const { kind, turned } = lies[i] as Lie;
        runs.push({ kind, turned, times: each });
      });
      parts.push({ stack: stackOf({ width, kinds: task.job.kinds }, runs), times: n });
    });
    return stripOn(task, parts);
  };
  return { heights, values, strip, work };
};

/** Stacks of one width. */
interface StackClass {
  readonly size: number;
  readonly rank: number;
  /** Pieces that make a stack so wide. */
  readonly most: number;
  /** Most worth, by height; below 0 where none is so low. */
  readonly values: Float64Array;
}

/** Worth of stacks that hold one of these at least; `best` that of any. */
const withOneOf = (lies: readonly Lie[], prices: PriceTask['prices'], best: Float64Array): Float64Array =>
  best.map((any, h) => {
    let most = -1;
    for (const { kind, height } of lies)
      if (height <= h) most = Math.max(most, (prices[kind] as number) + (best[h - height] as number));
    return Math.min(any, most);
  });

/** The best row of stacks side by side, within a height. */
const fillRow = (row: RankedKnapsack, classes: readonly StackClass[], height: number): void =>
  row.fill(
    classes.map(({ values }) => values[height] as number),
    classes.map(({ most }) => most),
  );
