// By which whole number can all of these be divided?

/** Greatest common divisor of whole numbers; 0 for none. */
export const gcdOf = (values: readonly number[]): number => {
  let g = 0;
  for (const v of values) {
    let a = g;
    let b = v;
    while (b !== 0) [a, b] = [b, a % b];
    g = a;
  }
  return g;
};
