// Do given strips make a layout within a length? Every choice of them is tried, with what the prices of a linear program say
// is lost as the only reason to turn back. For the short lists at the end of a proof, where that is quicker than a solver.
import type { Column, ColumnUse } from './column.ts';
import { heightAt, lossAt } from './column.ts';
import type { Cover, CoverAnswer } from './cover.ts';

export interface Trial extends Pick<Cover, 'task' | 'columns' | 'left' | 'cutoff'> {
  /** Of one piece of each kind: duals of a program that every layout of interest solves. */
  readonly prices: Float64Array;
  /** Of a strip of each level, at those duals. */
  readonly costs: Float64Array;
  /** What a layout of interest may lose: the cutoff less the value of the duals. */
  readonly slack: number;
  /** Strips put down at most, those taken up again included. */
  readonly steps: number;
}

/**
 * A layout is as long as the duals' value, and what each strip costs beyond the worth of its pieces, and the worth of the pieces
 * it holds too many of, and more where rows on the number of strips have slack. No term is below zero, so a choice
 * whose first two add up to more than the slack leads to no layout within the cutoff.
 *
 * @param of.columns every strip, as full as can be, that loses no more than the slack
 * @returns 'found' with the first layout within the cutoff; 'none' when no layout of interest is; 'stopped' when the steps ran out
 * @source docs/formulas.md#whole-strips
 */
export const coverByTrial = (of: Trial): CoverAnswer => {
  const { task, columns, prices, costs, cutoff } = of;
  const losses = columns.map((column) => Math.max(0, lossAt(column, prices, costs)));
  const holding = holdersOf(columns, task.kinds);
  const left = of.left.slice();
  const chosen: number[] = [];
  const barred = new Uint8Array(columns.length);
  let steps = 0;
  const next = (): number => {
    let kind = -1;
    for (let i = 0; i < left.length; i++) {
      if ((left[i] as number) <= 0) continue;
      if (kind < 0 || (holding[i]?.length ?? 0) < (holding[kind]?.length ?? 0)) kind = i;
    }
    return kind;
  };
  const go = (lost: number, length: number): CoverAnswer['status'] => {
    const kind = next();
    if (kind < 0) return 'found';
    const tried: number[] = [];
    let answer: CoverAnswer['status'] = 'none';
    for (const c of holding[kind] ?? []) {
      if (barred[c] === 1) continue;
      const column = columns[c] as Column;
      const reached = length + heightAt(task, column);
      const sum = lost + (losses[c] as number) + worthOver(column, left, prices);
      if (reached > cutoff || sum > of.slack + rounding) continue;
      if (++steps > of.steps) {
        answer = 'stopped';
        break;
      }
      put(left, column, -1);
      chosen.push(c);
      answer = go(sum, reached);
      if (answer !== 'none') break;
      chosen.pop();
      put(left, column, 1);
      // whatever holds this strip has been tried
      barred[c] = 1;
      tried.push(c);
    }
    for (const c of tried) barred[c] = 0;
    return answer;
  };
  const status = go(0, 0);
  if (status !== 'found') return { status };
  const uses: readonly ColumnUse[] = chosen.map((c) => ({ column: columns[c] as Column, times: 1 }));
  return { status, uses, bound: uses.reduce((sum, { column }) => sum + heightAt(task, column), 0) };
};

/** The programs' numbers stay far below this, and lengths are whole. */
const rounding = 1e-5;

/** By kind: the places of the strips that hold it. */
const holdersOf = (columns: readonly Column[], kinds: number): readonly (readonly number[])[] => {
  const holders: number[][] = Array.from({ length: kinds }, () => []);
  columns.forEach((column, c) => {
    for (const kind of column.kinds) holders[kind]?.push(c);
  });
  return holders;
};

/** `left` falls below zero where a strip holds more than is needed. */
const put = (left: Int32Array, { kinds, counts }: Column, way: 1 | -1): void => {
  for (let e = 0; e < kinds.length; e++) {
    const kind = kinds[e] as number;
    left[kind] = (left[kind] as number) + way * (counts[e] as number);
  }
};

const worthOver = ({ kinds, counts }: Column, left: Int32Array, prices: Float64Array): number => {
  let worth = 0;
  for (let e = 0; e < kinds.length; e++) {
    const kind = kinds[e] as number;
    const over = (counts[e] as number) - Math.max(0, left[kind] as number);
    if (over > 0) worth += over * (prices[kind] as number);
  }
  return worth;
};
