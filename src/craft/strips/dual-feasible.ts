// Functions that may replace sizes in a counting argument: whenever whole sizes add up to at most the capacity,
// their images add up to at most the capacity's image. The identity gives the plain area bound; these sharpen it.

/** A size's image, and the image of the whole capacity. */
export interface DualFeasible {
  readonly of: (size: number) => number;
  readonly whole: number;
}

export const identityWithin = (capacity: number): DualFeasible => ({ of: (x) => x, whole: capacity });

/**
 * Sizes above capacity − e count as the whole, sizes below e as nothing: what is left beside a large one is too
 * narrow for those between.
 *
 * @param e at most half the capacity
 * @source Fekete and Schepers, U(ε); from memory
 */
export const largeOrNothing = (capacity: number, e: number): DualFeasible => ({
  of: (x) => (x > capacity - e ? capacity : x < e ? 0 : x),
  whole: capacity,
});

/**
 * Counts how often a size holds 1/(k+1) of the capacity; exact multiples keep their share.
 *
 * @source Fekete and Schepers, u(k); from memory
 */
export const wholeShares = (capacity: number, k: number): DualFeasible => ({
  of: (x) => ((x * (k + 1)) % capacity === 0 ? k * x : Math.floor((x * (k + 1)) / capacity) * capacity),
  whole: k * capacity,
});

/**
 * Counts how many steps of k a size holds; a size above half counts what it leaves for the others. True because at
 * most one size is above half, and whole steps of several sizes are at most the whole steps of their sum.
 *
 * @param k 1 to half the capacity
 * @source Carlier, Clautiaux and Moukrim's first function; from memory, the argument above is ours
 */
export const stepsLeft = (capacity: number, k: number): DualFeasible => {
  const all = Math.floor(capacity / k);
  return {
    of: (x) => {
      if (2 * x > capacity) return 2 * (all - Math.floor((capacity - x) / k));
      if (2 * x === capacity) return all;
      return 2 * Math.floor(x / k);
    },
    whole: 2 * all,
  };
};

/** Functions worth trying for a capacity and the sizes that are to share it, the identity first. */
export const dualFeasibleFor = (capacity: number, sizes: readonly number[], most: number): readonly DualFeasible[] => {
  const half = Math.floor(capacity / 2);
  const steps = new Set<number>();
  for (const s of sizes) {
    for (const k of [s, capacity - s, capacity - s + 1]) if (k >= 1 && k <= half) steps.add(k);
  }
  const chosen = spread(
    [...steps].sort((a, b) => a - b),
    most,
  );
  return [
    identityWithin(capacity),
    ...[1, 2, 3, 4].map((k) => wholeShares(capacity, k)),
    ...chosen.flatMap((k) => [stepsLeft(capacity, k), largeOrNothing(capacity, k)]),
    ...(half >= 1 ? [largeOrNothing(capacity, half)] : []),
  ];
};

/** At most so many of a list, evenly spread over it. */
const spread = (list: readonly number[], most: number): readonly number[] =>
  list.length <= most
    ? list
    : Array.from({ length: most }, (_, i) => list[Math.floor((i * list.length) / most)] as number);
