// Which of these, each at most so often, fill a length with most value? The plain table over whole lengths; every shorter
// length and every first part of the list are answered with it.

export interface Choice {
  /** At least 1. */
  readonly size: number;
  readonly value: number;
  readonly most: number;
}

export interface Filled {
  /** Best value by length, of the whole list. */
  readonly best: Float64Array;
  /** How often each of the first `upTo` choices is taken within a length: tells choice and number. */
  readonly taken: (upTo: number, length: number, take: (choice: number, times: number) => void) => void;
  /** Cells looked at: a measure of work. */
  readonly work: number;
}

/**
 * Bounded knapsack; a choice of at most n goes in as bundles of 1, 2, 4, … and the rest.
 *
 * @param onChoice is told after each choice how good each length is with the list so far
 * @source textbook method, from memory
 */
export const filledFor = (
  choices: readonly Choice[],
  length: number,
  onChoice?: (choice: number, best: Float64Array) => void,
): Filled => {
  const of: number[] = [];
  const times: number[] = [];
  const ends = new Int32Array(choices.length + 1);
  const lowest: number[] = [];
  choices.forEach((choice, i) => {
    let left = Math.min(choice.most, Math.floor(length / choice.size));
    for (let bundle = 1; left > 0; bundle *= 2) {
      const take = Math.min(bundle, left);
      of.push(i);
      times.push(take);
      lowest.push(take * choice.size);
      left -= take;
    }
    ends[i + 1] = of.length;
  });
  const row = length + 1;
  const best = new Float64Array(row);
  const took = new Uint8Array(row * of.length);
  let k = 0;
  for (let i = 0; i < choices.length; i++) {
    const { value } = choices[i] as Choice;
    for (; k < (ends[i + 1] as number); k++) {
      const size = lowest[k] as number;
      const worth = value * (times[k] as number);
      const base = k * row;
      for (let c = length; c >= size; c--) {
        const reached = (best[c - size] as number) + worth;
        if (reached > (best[c] as number) + 1e-12) {
          best[c] = reached;
          took[base + c] = 1;
        }
      }
    }
    onChoice?.(i, best);
  }
  const taken: Filled['taken'] = (upTo, within, take) => {
    let c = within;
    let b = (ends[upTo] as number) - 1;
    while (b >= 0 && c > 0) {
      const i = of[b] as number;
      let n = 0;
      for (; b >= (ends[i] as number); b--) {
        if (took[b * row + c] === 0) continue;
        n += times[b] as number;
        c -= lowest[b] as number;
      }
      if (n > 0) take(i, n);
    }
  };
  return { best, taken, work: row * of.length };
};
