// What is the least cost of sheets when they may be cut in fractions? Sheet patterns come in as they are wanted; from the
// prices follow a bound on every plan in whole sheets, and what each piece is worth.
import { type LinearProgram, linearProgramFor } from '#ground/search';
import type { SheetPattern, SheetTask } from './fill.ts';
import type { Sheet } from './job.ts';
import { pricedSheet } from './price.ts';

export interface Relaxed {
  /** Whether another round may still raise the bound. */
  readonly state: 'growing' | 'solved';
  /** Proven lower bound on the cost of any plan that holds all pieces. */
  readonly bound: number;
  /** Proven: some piece must be left out. */
  readonly cannotHold: boolean;
  readonly prices: Float64Array;
  readonly work: number;
}

export interface Relaxation {
  readonly task: SheetTask;
  readonly program: LinearProgram;
  readonly columns: SheetPattern[];
  /** Costs are divided by this. */
  readonly scale: number;
  /** Row of each limited stock, or -1. */
  readonly stockRow: Int32Array;
  readonly keys: Set<string>;
  /** Columns before the first pattern: one for each kind, leaving pieces out at a high price. */
  readonly offset: number;
}

export const relaxationFor = (task: SheetTask): Relaxation => {
  const { kinds, sheets } = task.job;
  const scale = sheets.reduce((most, { cost }) => Math.max(most, cost), 0) || 1;
  const stockRow = new Int32Array(sheets.length).fill(-1);
  const needs: number[] = kinds.map(({ count }) => count);
  sheets.forEach(({ stock }, s) => {
    if (stock === null) return;
    stockRow[s] = needs.length;
    needs.push(-stock);
  });
  const program = linearProgramFor(needs);
  // a sheet of its own for each piece never costs more than twice the dearest
  for (let i = 0; i < kinds.length; i++) program.addColumn(2, [i], [1]);
  return { task, program, columns: [], scale, stockRow, keys: new Set(), offset: kinds.length };
};

export const keyOf = ({ sheet, counts }: SheetPattern): string => `${sheet}:${counts.join()}`;

/** Takes a pattern in, unless one with the same pieces is there. */
export const offered = (of: Relaxation, pattern: SheetPattern): boolean => {
  const key = keyOf(pattern);
  if (of.keys.has(key)) return false;
  of.keys.add(key);
  const rows: number[] = [];
  const factors: number[] = [];
  pattern.counts.forEach((n, i) => {
    if (n === 0) return;
    rows.push(i);
    factors.push(n);
  });
  const row = of.stockRow[pattern.sheet] as number;
  if (row >= 0) {
    rows.push(row);
    factors.push(-1);
  }
  of.program.addColumn((of.task.job.sheets[pattern.sheet] as Sheet).cost / of.scale, rows, factors);
  of.columns.push(pattern);
  return true;
};

/** One round: solve, price every kind of sheet, take in what is worth more than it costs. */
export const relaxed = (of: Relaxation): Relaxed => {
  const { task, program, scale, stockRow } = of;
  const { kinds, sheets } = task.job;
  const before = program.pivots();
  program.solve();
  const duals = program.duals();
  const prices = Float64Array.from(kinds, (_, i) => Math.max(0, duals[i] as number));
  // a pivot walks through the inverse and the columns
  let work = (program.pivots() - before + 1) * (program.rows() ** 2 + 10 * program.columns());
  let grew = false;
  const values = sheets.map((sheet, s) => {
    const priced = pricedSheet({ task, sheet: s, prices });
    work += priced.work;
    const row = stockRow[s] as number;
    const cost = sheet.cost / scale + (row < 0 ? 0 : Math.max(0, duals[row] as number));
    if (priced.value > cost + 1e-7 && offered(of, priced.pattern)) grew = true;
    return priced.value;
  });
  return { state: grew ? 'growing' : 'solved', ...boundFrom({ of, prices, values }), prices, work };
};

/**
 * Prices at which no sheet holds more than it costs bound every plan; others are scaled down until that is so. Sheets of
 * a limited stock may hold more: what they can save at most is taken off.
 *
 * @source weak duality; the scaling after Farley, from memory
 */
const boundFrom = (at: {
  readonly of: Relaxation;
  readonly prices: Float64Array;
  readonly values: readonly number[];
}): { readonly bound: number; readonly cannotHold: boolean } => {
  const { of, prices, values } = at;
  const { kinds, sheets } = of.task.job;
  const wanted = kinds.reduce((sum, { count }, i) => sum + count * (prices[i] as number), 0);
  let share = 1;
  let room = 0;
  sheets.forEach(({ cost, stock }, s) => {
    const value = values[s] as number;
    if (stock !== null) room += stock * value;
    else if (value > 1e-12) {
      share = Math.min(share, cost / of.scale / value);
      room = Number.POSITIVE_INFINITY;
    }
  });
  let bound = share * wanted;
  sheets.forEach(({ cost, stock }, s) => {
    if (stock !== null) bound -= stock * Math.max(0, share * (values[s] as number) - cost / of.scale);
  });
  return { bound: Math.max(0, bound * of.scale), cannotHold: wanted > room * (1 + 1e-9) + 1e-6 };
};
