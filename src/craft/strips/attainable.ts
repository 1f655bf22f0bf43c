// Which lengths can a layout have at all? The length of a layout is a sum of piece heights, so a bound between two
// such sums may be raised to the upper one.
import { gcdOf } from './divisor.ts';

/** Smallest sum of the given whole heights (each as often as wanted, all above zero) that is at least `value`. */
export const attainableUp = (value: number, heights: readonly number[]): number => {
  const least = leastByRest(heights);
  if (least === null) return value;
  const { modulus, smallest } = least;
  for (let sum = value; ; sum++) {
    const reached = smallest[sum % modulus];
    if (reached !== undefined && reached <= sum) return sum;
  }
};

/**
 * The least length that a layout can have by what a linear program says, in fractions; a hair above a whole number is rounding in the
 * program, which stays far below this.
 */
export const attainableFrom = (bound: number, heights: readonly number[]): number =>
  attainableUp(Math.ceil(bound - 1e-6 * (1 + bound * 1e-3)), heights);

/**
 * For every remainder on division by the smallest height, the smallest sum with that remainder: sums are exactly
 * these plus multiples of the smallest height. Round-robin over each height's cycles, no queue needed.
 *
 * @returns null without heights, or when the table would be too large to be worth it
 * @source the residue table method for coin problems (Böcker and Lipták, "round robin"; from memory)
 */
const leastByRest = (heights: readonly number[]): { modulus: number; smallest: Float64Array } | null => {
  const modulus = Math.min(...heights);
  if (heights.length === 0 || modulus > mostRests) return null;
  const smallest = new Float64Array(modulus).fill(Number.POSITIVE_INFINITY);
  smallest[0] = 0;
  for (const height of heights) {
    const cycles = gcdOf([modulus, height]);
    for (let start = 0; start < cycles; start++) {
      let from = start;
      for (let r = start; r < modulus; r += cycles) if ((smallest[r] ?? 0) < (smallest[from] ?? 0)) from = r;
      let sum = smallest[from] as number;
      if (sum === Number.POSITIVE_INFINITY) continue;
      for (let n = modulus / cycles; n > 0; n--) {
        sum += height;
        const r = sum % modulus;
        if ((smallest[r] as number) > sum) smallest[r] = sum;
        else sum = smallest[r] as number;
      }
    }
  }
  return { modulus, smallest };
};

const mostRests = 4096;

/** Largest sum of whole sizes, each at most so often, within a capacity; the capacity itself when it is too large to search. */
export const attainableWithin = (
  capacity: number,
  sizes: readonly { readonly size: number; readonly most: number }[],
): number => {
  if (capacity > mostCells) return capacity;
  const reached = new Uint8Array(capacity + 1);
  reached[0] = 1;
  const used = new Int32Array(capacity + 1);
  for (const { size, most } of sizes) {
    used.fill(0);
    for (let c = size; c <= capacity; c++) {
      if (reached[c] === 1 || reached[c - size] === 0) continue;
      const times = (used[c - size] as number) + 1;
      if (times > most) continue;
      reached[c] = 1;
      used[c] = times;
    }
  }
  for (let c = capacity; c >= 0; c--) if (reached[c] === 1) return c;
  return capacity;
};

const mostCells = 20000;
