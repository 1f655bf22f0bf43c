// How likely is an error of a certain size that is the sum of many? Where a few of them, each as likely anywhere within its limits, make up
// most of it, the sum keeps within narrower limits than the normal distribution has; this one lies between the two.

/** Of a sum of errors. */
export interface ErrorShape {
  readonly deviation: number;
  /** The part of the variance, from none to all, that a single error as likely anywhere within its limits would bring. */
  readonly even: number;
}

/**
 * The distribution of an even error plus a normal one that has the variance and the fourth cumulant of the sum.
 *
 * @param of.deviations of the even errors in the sum; what is left of the variance is normal
 * @source derived: the fourth cumulant of an even error of variance v is −6/5·v², and cumulants of independent errors add up
 */
export const shapeOf = (of: { readonly deviation: number; readonly deviations: readonly number[] }): ErrorShape => ({
  deviation: of.deviation,
  even: Math.sqrt(of.deviations.reduce((all, one) => all + one ** 4, 0)),
});

/** Of errors of a shape the share that lies below one. */
export const shareBelow = (error: number, { deviation, even }: ErrorShape): number => {
  const half = Math.sqrt(3 * even);
  // of an even error alone a sliver of the normal one keeps the edges finite
  const normal = Math.sqrt(Math.max(deviation ** 2 - even, 1e-6 * deviation ** 2));
  if (half < 1e-3 * deviation) return normalBelow(error / deviation);
  return (normal / (2 * half)) * (summed((error + half) / normal) - summed((error - half) / normal));
};

/** The integral of the share below. */
const summed = (z: number): number => z * normalBelow(z) + Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** @source Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 7.1.26: the error function within 1.5e-7 */
const normalBelow = (z: number): number => {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const above = (series * Math.exp(-x * x)) / 2;
  return z > 0 ? 1 - above : above;
};

/** A value that may be this one, with its error, by its share of all. */
export interface Part {
  readonly share: number;
  readonly value: number;
  readonly shape: ErrorShape;
}

/** Between which values 95 of 100 lie that come of all parts together, 2.5 beyond either. @param parts at least one, of shares above zero */
export const limitsOfMixture = (parts: readonly Part[]): readonly [low: number, high: number] => {
  const all = parts.reduce((sum, { share }) => sum + share, 0);
  const below = (limit: number): number =>
    parts.reduce((sum, { share, value, shape }) => sum + share * shareBelow(limit - value, shape), 0) / all;
  const ends = [
    Math.min(...parts.map(({ value, shape }) => value - 6 * shape.deviation)),
    Math.max(...parts.map(({ value, shape }) => value + 6 * shape.deviation)),
  ] as const;
  return [valueAt(below, 0.025, ends), valueAt(below, 0.975, ends)];
};

/** Halved until it is told to a ten-millionth of where it was looked for. */
const halvings = 24;

const valueAt = (below: (limit: number) => number, share: number, ends: readonly [number, number]): number => {
  let [low, high] = ends;
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2;
    if (below(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
