// Straight-line models fitted to values that are uncertain, and uncertain together: generalised least squares with a known
// covariance. Small and dense; nothing about cloth.

/** By rows; symmetric. */
export type Matrix = readonly (readonly number[])[];

export interface Fit {
  readonly coefficients: readonly number[];
  /** Of the coefficients. */
  readonly covariance: Matrix;
  /** Sum of the squared residuals, each against its own uncertainty. */
  readonly chiSquare: number;
}

/** Values made independent and of deviation one: for many models of the same values. */
export type Whitener = (values: readonly number[]) => readonly number[];

/**
 * @param covariance positive definite
 * @throws RangeError where it is not
 * @source general statistics: with V = L·Lᵀ (Cholesky), values times L⁻¹ are independent and of deviation one
 */
export const whitenerFor = (covariance: Matrix): Whitener => {
  const lower = cholesky(covariance);
  return (values) => forward(lower, values);
};

/**
 * @param values whitened
 * @param columns by coefficient, whitened
 * @returns null where the columns do not tell their coefficients apart
 * @source general statistics: b = (XᵀX)⁻¹Xᵀy, covariance (XᵀX)⁻¹ (Gauss, Markov and Aitken)
 */
export const fitOf = (values: readonly number[], columns: readonly (readonly number[])[]): Fit | null => {
  const normal = columns.map((a) => columns.map((b) => product(a, b)));
  const covariance = inverse(normal);
  if (covariance === null) return null;
  const right = columns.map((column) => product(column, values));
  const coefficients = covariance.map((row) => product(row, right));
  const residuals = values.map((value, i) =>
    columns.reduce((rest, column, j) => rest - (coefficients[j] as number) * (column[i] as number), value),
  );
  return { coefficients, covariance, chiSquare: product(residuals, residuals) };
};

export const product = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((all, value, i) => all + value * (b[i] as number), 0);

/** How many deviations each way hold 95 of 100 values of a normal distribution. */
export const inNinetyFive = 1.959963984540054;

/**
 * The value that a chi-square of so many degrees exceeds in one case of a thousand.
 *
 * @source Wilson and Hilferty's cube root, 1931 (from memory)
 */
export const rareChiSquare = (degrees: number): number => {
  const spread = 2 / (9 * degrees);
  return degrees * (1 - spread + rareNormal * Math.sqrt(spread)) ** 3;
};

/** A normal value exceeds so many deviations in one case of a thousand. */
const rareNormal = 3.090232306167813;

const cholesky = (matrix: Matrix): Matrix => {
  const lower: number[][] = matrix.map((row) => row.map(() => 0));
  matrix.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      const mine = lower[i] as number[];
      const other = lower[j] as number[];
      let rest = row[j] as number;
      for (let k = 0; k < j; k++) rest -= (mine[k] as number) * (other[k] as number);
      if (i === j && rest <= 0) throw new RangeError('the covariance is not positive definite');
      mine[j] = i === j ? Math.sqrt(rest) : rest / (other[j] as number);
    }
  });
  return lower;
};

const forward = (lower: Matrix, values: readonly number[]): readonly number[] => {
  const solved: number[] = [];
  values.forEach((value, i) => {
    const row = lower[i] as readonly number[];
    let rest = value;
    for (let k = 0; k < i; k++) rest -= (row[k] as number) * (solved[k] as number);
    solved.push(rest / (row[i] as number));
  });
  return solved;
};

/** Of one or two rows: models here have no more coefficients. */
const inverse = (matrix: Matrix): Matrix | null => {
  const [[a = 0, b = 0] = [], [, d = 0] = []] = matrix;
  if (matrix.length === 1) return a > 0 ? [[1 / a]] : null;
  const determinant = a * d - b * b;
  if (determinant <= 1e-12 * a * d || determinant === 0) return null;
  return [
    [d / determinant, -b / determinant],
    [-b / determinant, a / determinant],
  ];
};
