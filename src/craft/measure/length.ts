// What a length is inside craft: a double in the document's own unit, which a bare number is not.
// Inches and centimetres never meet in one plan; conversion happens where a value enters.

declare const lengthOf: unique symbol;

/** A length in the document's unit. */
export type Length = number & { readonly [lengthOf]: 'length' };

export type Unit = 'in' | 'cm';

/** Says that a computed number is a length in the document's unit. */
export const length = (value: number): Length => value as Length;

/**
 * Takes the last bits of rounding off a computed length that is a plain decimal or binary fraction: 51.400000000000006
 * is 51.4. A value that is none stays as it is.
 */
export const tidy = (value: number): Length => {
  const near = Math.round(value * 1e9) / 1e9;
  return length(Math.abs(near - value) < 1e-12 * Math.max(1, Math.abs(value)) ? near : value);
};
