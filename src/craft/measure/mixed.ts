// Which fraction does a computed length show as? 3.875 is 3 and 7/8. Wording is paper's.

export interface Mixed {
  readonly negative: boolean;
  readonly whole: number;
  /** 0 where the length is whole; the fraction is in lowest terms. */
  readonly numerator: number;
  readonly denominator: number;
}

/** Nearer than this to a fraction is that fraction; our own figure, far below what cloth can show. */
const tolerance = 1e-6;

/** Halves down to 64ths are a ruler's; thirds, fifths, sevenths and their kin come from dividing a block. */
const denominators = [1, 2, 4, 8, 16, 32, 64, 3, 6, 12, 5, 7] as const;

/**
 * @param finest largest denominator to use
 * @returns null where no such fraction is near: show a decimal
 */
export const mixedFrom = (value: number, finest = 64): Mixed | null => {
  const size = Math.abs(value);
  for (const denominator of denominators) {
    if (denominator > finest) continue;
    const parts = Math.round(size * denominator);
    if (Math.abs(size - parts / denominator) > tolerance) continue;
    return {
      negative: value < 0 && parts > 0,
      whole: Math.floor(parts / denominator),
      numerator: parts % denominator,
      denominator,
    };
  }
  return null;
};
