// Which of these, each at most so often, fill a length with most value? Those of each rank come in together, and every shorter
// length and every rank is answered with it.
import { rankedKnapsackFor } from '#ground/search';

export interface Choice {
  /** At least 1. */
  readonly size: number;
  readonly rank: number;
  readonly value: number;
  readonly most: number;
}

export interface Filled {
  /** The distinct ranks, rising; a `level` is a place among them. */
  readonly ranks: readonly number[];
  /** Most value by length, of the choices up to a level. */
  readonly values: (level: number) => Float64Array;
  /** The choices that come to that value, the last first: tells each and how often. */
  readonly taken: (level: number, length: number, take: (choice: number, times: number) => void) => void;
  /** Cells looked at: a measure of work. */
  readonly work: number;
}

export const filledFor = (choices: readonly Choice[], length: number): Filled => {
  const sack = rankedKnapsackFor(choices, length);
  sack.fill(
    choices.map(({ value }) => value),
    choices.map(({ most }) => most),
  );
  const times = new Int32Array(choices.length);
  return {
    ranks: sack.ranks,
    values: sack.worths,
    taken: (level, within, take) => {
      sack.trace(level, within, times);
      for (let i = times.length - 1; i >= 0; i--) if ((times[i] as number) > 0) take(i, times[i] as number);
    },
    work: sack.work(),
  };
};
