// What a length is inside craft: a double in the document's own unit, which a bare number is not.
// Inches and centimetres never meet in one plan; conversion happens where a value enters.

declare const lengthOf: unique symbol;

/** A length in the document's unit. */
export type Length = number & { readonly [lengthOf]: 'length' };

export type Unit = 'in' | 'cm';

/** Says that a computed number is a length in the document's unit. */
export const length = (value: number): Length => value as Length;
