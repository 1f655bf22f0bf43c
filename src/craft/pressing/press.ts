// How a seam is pressed, and what that means at its two ends.

/** Toward the first or the second of its parts, or open: one allowance to each side. */
export type Press = 0 | 1 | 'open';

/** 1: toward the second part at that end, -1: toward the first, 0: to both. */
export const wayAt = (press: Press): 1 | 0 | -1 => (press === 'open' ? 0 : press === 1 ? 1 : -1);

/** Allowances that lie in opposite directions along the seam that runs over both lock; open ones never do. */
export const doNest = (nests: 'alike' | 'unlike', a: Press, b: Press): boolean => {
  const product = wayAt(a) * wayAt(b);
  return nests === 'alike' ? product > 0 : product < 0;
};
