// Straight-line models fitted to values that are uncertain, and uncertain together: generalised least squares with a known
// covariance. Small and dense; nothing about cloth.

export { type ErrorShape, limitsOfMixture, type Part, shapeOf, shareBelow } from './errors.ts';

/** By rows; symmetric. */
export type Matrix = readonly (readonly number[])[];

export interface Fit {
  readonly coefficients: readonly number[];
  /** By coefficient: what it takes of each value. */
  readonly weights: Matrix;
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

/** @throws RangeError where it is not positive definite */
export const logDeterminant = (covariance: Matrix): number =>
  cholesky(covariance).reduce((all, row, i) => all + 2 * Math.log(row[i] as number), 0);

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
  const weights = covariance.map((row) =>
    values.map((_, i) => row.reduce((all, by, j) => all + by * (columns[j]?.[i] as number), 0)),
  );
  const coefficients = weights.map((row) => product(row, values));
  const residuals = values.map((value, i) =>
    columns.reduce((rest, column, j) => rest - (coefficients[j] as number) * (column[i] as number), value),
  );
  return { coefficients, weights, covariance, chiSquare: product(residuals, residuals) };
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

/**
 * Rows and columns swept out one after another, for matrices of a few rows, symmetric and positive.
 *
 * @returns null where a row is, but for a billionth, made of the others
 */
const inverse = (matrix: Matrix): Matrix | null => {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < n; i++) {
    const row = rows[i] as number[];
    const pivot = row[i] as number;
    if (pivot <= 1e-9 * (matrix[i]?.[i] as number)) return null;
    for (let j = 0; j < 2 * n; j++) row[j] = (row[j] as number) / pivot;
    rows.forEach((other, k) => {
      const by = other[i] as number;
      if (k === i || by === 0) return;
      for (let j = 0; j < 2 * n; j++) other[j] = (other[j] as number) - by * (row[j] as number);
    });
  }
  return rows.map((row) => row.slice(n));
};
