// What is the most worth that pieces lying one below the other can have, within a width and a height? One pass over the
// ways of lying, narrowest first, answers for every width and every height at once.
import type { Lies } from './lies.ts';

/**
 * Stacks told apart by the last way of lying that they use, in the order of `Lies`: that one is the widest, so it makes
 * the stack's width, and no more such stacks can be cut than there are pieces that lie so.
 */
export interface Stacks {
  /**
   * Works out all stacks up to a height.
   *
   * @param worth  of one piece of each kind; kinds worth nothing or less stay out
   * @param left   pieces of each kind that there are
   * @param height of the highest stack
   * @param widest ways of lying wider than this stay out
   */
  readonly build: (of: {
    readonly worth: ArrayLike<number>;
    readonly left: ArrayLike<number>;
    readonly height: number;
    readonly widest: number;
  }) => void;
  /** Ways of lying that came in, in order; a `place` below is a place in this list. */
  readonly places: () => number;
  readonly lieAt: (place: number) => number;
  /** Most worth of a stack at most so high with this way of lying as its last; below zero where there is none. */
  readonly worthAt: (place: number, height: number) => number;
  /** Most worth of any stack at most so high. */
  readonly best: (height: number) => number;
  /** Adds what the stack holds to a list: a way of lying and how often, one after the other, widest first. */
  readonly read: (place: number, height: number, into: number[]) => void;
  /** The place of the last way of lying in the best stack so high; -1 for none. */
  readonly bestPlace: (height: number) => number;
  /** Cells worked out so far. */
  readonly work: () => number;
}

export const stacksFor = (lies: Lies): Stacks => {
  let stride = 0;
  let star = new Float64Array(0);
  let take = new Int16Array(0);
  let best = new Float64Array(0);
  let cells = 0;
  let n = 0;
  const at = new Int32Array(lies.size);
  const { kind, wide, tall } = lies;

  const row = (place: number, b: number, worth: number): void => {
    const t = tall[at[place] as number] as number;
    const from = place * stride;
    star.fill(-1, from, from + Math.min(t, stride));
    for (let x = t; x < stride; x++) {
      star[from + x] = worth + (best[x - t] as number);
      take[from + x] = 1;
    }
    if (b > 1) {
      if (b * t >= stride - 1) {
        for (let x = 2 * t; x < stride; x++) {
          const more = worth + (star[from + x - t] as number);
          if (more > (star[from + x] as number)) {
            star[from + x] = more;
            take[from + x] = 1 + (take[from + x - t] as number);
          }
        }
      } else
        for (let k = 2; k <= b; k++)
          for (let x = k * t; x < stride; x++) {
            const more = k * worth + (best[x - k * t] as number);
            if (more > (star[from + x] as number)) {
              star[from + x] = more;
              take[from + x] = k;
            }
          }
    }
    for (let x = t; x < stride; x++) {
      if ((star[from + x] as number) > (best[x] as number)) best[x] = star[from + x] as number;
      else take[from + x] = -(take[from + x] as number);
    }
    cells += stride * 2;
  };

  const bestBelow = (place: number, x: number): number => {
    for (let p = place - 1; p >= 0; p--)
      if (x >= (tall[at[p] as number] as number) && (take[p * stride + x] as number) > 0) return p;
    return -1;
  };

  return {
    build: ({ worth, left, height, widest }) => {
      stride = height + 1;
      if (star.length < lies.size * stride) {
        star = new Float64Array(lies.size * stride);
        take = new Int16Array(lies.size * stride);
      }
      if (best.length < stride) best = new Float64Array(stride);
      best.fill(0, 0, stride);
      n = 0;
      for (let i = 0; i < lies.size; i++) {
        const k = kind[i] as number;
        const b = left[k] as number;
        const v = worth[k] as number;
        const t = tall[i] as number;
        if (b <= 0 || v <= 0 || t > height || (wide[i] as number) > widest) continue;
        at[n] = i;
        row(n++, Math.min(b, Math.floor(height / t)), v);
      }
    },
    places: () => n,
    lieAt: (place) => at[place] as number,
    worthAt: (place, height) => star[place * stride + height] as number,
    best: (height) => best[height] as number,
    bestPlace: (height) => bestBelow(n, height),
    read: (place, height, into) => {
      let x = height;
      let p = place;
      while (p >= 0) {
        const times = Math.abs(take[p * stride + x] as number);
        const lie = at[p] as number;
        into.push(lie, times);
        x -= times * (tall[lie] as number);
        p = bestBelow(p, x);
      }
    },
    work: () => cells,
  };
};
