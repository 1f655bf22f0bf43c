// The part of big-rational that our tests use as a second opinion; the package brings no types.

declare module 'big-rational' {
  interface BigRational {
    add(other: BigRational): BigRational;
    subtract(other: BigRational): BigRational;
    multiply(other: BigRational): BigRational;
    divide(other: BigRational): BigRational;
    /** This divided by an integer written as text. */
    over(divisor: string | number): BigRational;
    equals(other: BigRational): boolean;
    compare(other: BigRational): number;
    valueOf(): number;
    toString(): string;
  }
  function bigRational(numerator: number | string, denominator?: number | string): BigRational;
  export = bigRational;
}
