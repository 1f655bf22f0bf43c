// Repeatable chance: the same seed gives the same numbers on every machine. Not for secrets.

/** Draws a number from 0 (included) to 1 (not included). */
export type Chance = () => number;

/**
 * A stream of numbers that depends on the seed alone.
 *
 * @param seed any whole number; only its lowest 32 bits count
 * @source a multiply-and-shift generator with 32 bits of state ("mulberry32", from memory)
 */
export const chanceFrom = (seed: number): Chance => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};
