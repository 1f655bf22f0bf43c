// Strips met on the way. What no single layout held together, a program over all of them may.
import { type Column, columnKey } from './column.ts';

export interface Pool {
  readonly add: (columns: readonly Column[]) => void;
  readonly size: () => number;
  /** The strips of least loss, none of more than `slack`. */
  readonly best: (of: { readonly most: number; readonly slack: number }) => readonly Column[];
}

/** @param lossOf what a strip costs beyond the worth of what it holds, at the prices of the whole job */
export const poolFor = (lossOf: (column: Column) => number): Pool => {
  const known = new Map<string, { readonly column: Column; readonly loss: number; readonly place: number }>();
  return {
    add: (columns) => {
      for (const column of columns) {
        const key = columnKey(column);
        if (!known.has(key)) known.set(key, { column, loss: lossOf(column), place: known.size });
      }
    },
    size: () => known.size,
    best: ({ most, slack }) =>
      [...known.values()]
        .filter((k) => k.loss <= slack)
        .sort((a, b) => a.loss - b.loss || a.place - b.place)
        .slice(0, most)
        .map((k) => k.column),
  };
};
