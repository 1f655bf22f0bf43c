// Seeded trials: a sample in each test run, two thousand and more by `npm run fuzz`. A sample strays further from its share.

export const trials = Number(process.env.SEAMSTEAD_RUNS ?? 400);

export const inHundred = (count: number): number => (100 * count) / trials;

/**
 * Two and a half deviations of a share found in so many trials, less those of two thousand, which are in what is asked; in hundreds.
 *
 * @source general statistics: the deviation of a share p of n is √(p(1 − p)/n)
 */
export const straying = (share: number): number =>
  250 * Math.sqrt(share * (1 - share)) * Math.max(0, 1 / Math.sqrt(trials) - 1 / Math.sqrt(2_000));
