// Units that a sewer makes by a way of their own stay whole: a seam runs round their patches, not through them.
import type { Drawing, Split } from '#craft/chords';

/** The seams of a unit that leave others whole; all of them where none does. */
export const sparing = (of: {
  readonly drawing: Drawing;
  readonly splits: readonly Split[];
  /** Patches that the seams divide. */
  readonly unit: readonly number[];
  /** Sets of patches; one that is the unit itself may be divided. Missing for none. */
  readonly whole?: readonly (readonly number[])[] | undefined;
}): readonly Split[] => {
  const { drawing, splits, unit, whole = [] } = of;
  if (whole.length === 0 || splits.length === 0) return splits;
  const here = new Set(unit);
  const inside = whole.filter((one) => one.length < unit.length && one.every((patch) => here.has(patch)));
  if (inside.length === 0) return splits;
  const spared = splits.filter(({ index }) => {
    const side = drawing.side[index] as Int8Array;
    return inside.every((one) => one.every((patch) => side[patch] === side[one[0] as number]));
  });
  return spared.length > 0 ? spared : splits;
};
