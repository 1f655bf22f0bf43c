// On which grid of whole numbers do these lengths fall? Layouts are searched in whole numbers, so that no sum of
// lengths can be off by a rounding.

/** Whole units: `per` units make one of the document's unit. Sizes round up, the width rounds down, so all that is found fits. */
export interface Grid {
  readonly per: number;
  /** Whether every length lies on the grid; if not, sizes were rounded by less than one unit. */
  readonly exact: boolean;
}

/** How near to a mark a double counts as on it (docs/formulas.md#marks: 1e-9). */
const near = 1e-9;

/**
 * Units a document's lengths are commonly made of: binary fractions of an inch to 1/64, tenths and hundredths of
 * a centimetre, and thirds mixed with both. Any other denominator up to 1,000 is tried after them.
 */
const common = [
  1, 2, 4, 8, 16, 32, 64, 10, 20, 40, 80, 100, 200, 3, 6, 12, 24, 48, 96, 192, 30, 60, 120, 240, 300, 1000,
];

/** Where no common denominator is found: a power of two, fine enough for any pair of scissors. */
const fine = 65536;

const onGrid = (values: readonly number[], per: number): boolean =>
  values.every((v) => Math.abs(v * per - Math.round(v * per)) <= near * per);

/** The coarsest grid found that carries all lengths, else a fine one that carries them rounded. */
export const gridFor = (values: readonly number[]): Grid => {
  for (const per of common) if (onGrid(values, per)) return { per, exact: true };
  for (let per = 5; per <= 1000; per++) if (onGrid(values, per)) return { per, exact: true };
  return { per: fine, exact: false };
};

/** Smallest whole number of units that holds the length. */
export const unitsUp = (value: number, grid: Grid): number =>
  grid.exact ? Math.round(value * grid.per) : Math.ceil(value * grid.per);

/** Largest whole number of units within the length. */
export const unitsDown = (value: number, grid: Grid): number =>
  grid.exact ? Math.round(value * grid.per) : Math.floor(value * grid.per);
