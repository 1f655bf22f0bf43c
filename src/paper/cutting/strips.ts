// Which strips of a layout are the same? They are drawn and described once, with their number, in the
// order in which they are cut.
import type { Layout, Strip } from '#craft/cutting';

export interface StripKind {
  readonly strip: Strip;
  readonly count: number;
}

export const stripKindsOf = (layout: Layout): readonly StripKind[] => {
  const kinds = new Map<string, { strip: Strip; count: number }>();
  for (const strip of layout.strips) {
    const key = JSON.stringify([strip.height, strip.parts]);
    const kind = kinds.get(key);
    if (kind === undefined) kinds.set(key, { strip, count: 1 });
    else kind.count++;
  }
  return [...kinds.values()];
};

/** How many pieces of each size (index into the cloth's pieces) one strip gives, in order of first place. */
export const yieldOf = (strip: Strip): ReadonlyMap<number, number> => {
  const gives = new Map<number, number>();
  for (const part of strip.parts) {
    for (const piece of part.pieces) gives.set(piece.of, (gives.get(piece.of) ?? 0) + 1);
  }
  return gives;
};

/** "C3": the third size cut from cloth C; on the drawing, in the table and on the bag. */
export const cutMark = (letter: string, index: number): string => `${letter}${index + 1}`;
