// Which of these things, each at most so often, fill a capacity with the most value? Over a row of cells, whole
// numbers only; all fillings of smaller capacities come with the answer.

export interface Choice {
  /** Cells that one takes, at least 1. */
  readonly cells: number;
  readonly value: number;
  readonly most: number;
}

/** The filled table: how it was filled can be read back for any capacity and for the first so many choices. */
export interface Filled {
  /** How often each of the first `upTo` choices is taken to fill `cells` with the most value. */
  readonly taken: (upTo: number, cells: number) => ReadonlyMap<number, number>;
  /** Best value of the whole list in the whole capacity. */
  readonly value: number;
}

/**
 * Bounded knapsack by doubling: a choice of at most n becomes bundles of 1, 2, 4, … and the rest.
 * Time and memory: cells × Σ log2(most).
 *
 * @source textbook method, from memory
 */
export const filledFor = (choices: readonly Choice[], cells: number): Filled => {
  const of: number[] = [];
  const size: number[] = [];
  const bundles: number[] = [];
  const ends: number[] = [];
  choices.forEach((choice, index) => {
    let left = Math.min(choice.most, Math.floor(cells / choice.cells));
    for (let bundle = 1; left > 0; bundle *= 2) {
      const take = Math.min(bundle, left);
      of.push(index);
      size.push(take);
      bundles.push(take * choice.cells);
      left -= take;
    }
    ends.push(of.length);
  });
  const row = cells + 1;
  const best = new Float64Array(row);
  const took = new Uint8Array(row * of.length);
  for (let k = 0; k < of.length; k++) {
    const w = bundles[k] as number;
    const v = (choices[of[k] as number] as Choice).value * (size[k] as number);
    const base = k * row;
    for (let c = cells; c >= w; c--) {
      const with_ = (best[c - w] as number) + v;
      if (with_ > (best[c] as number) + 1e-9) {
        best[c] = with_;
        took[base + c] = 1;
      }
    }
  }
  const taken = (upTo: number, capacity: number): ReadonlyMap<number, number> => {
    const result = new Map<number, number>();
    let c = Math.min(cells, capacity);
    for (let k = (ends[upTo - 1] ?? 0) - 1; k >= 0 && c > 0; k--) {
      if (took[k * row + c] === 0) continue;
      const index = of[k] as number;
      result.set(index, (result.get(index) ?? 0) + (size[k] as number));
      c -= bundles[k] as number;
    }
    return result;
  };
  return { taken, value: best[cells] ?? 0 };
};
