// Units that a sewer makes by a way of their own stay whole: a seam runs round their patches, not through them.
import type { Chord } from '#craft/chords';

/**
 * The seams of a unit that leave others whole; all of them where none does.
 *
 * @param unit  patches that the seams divide
 * @param whole sets of patches; one that is the unit itself may be divided
 */
export const sparing = (
  chords: readonly Chord[],
  unit: readonly number[],
  whole: readonly (readonly number[])[] = [],
): readonly Chord[] => {
  if (whole.length === 0 || chords.length === 0) return chords;
  const here = new Set(unit);
  const inside = whole.filter((one) => one.length < unit.length && one.every((patch) => here.has(patch)));
  if (inside.length === 0) return chords;
  const spared = chords.filter(({ first }) => {
    const side = new Set(first);
    return inside.every((one) => one.every((patch) => side.has(patch) === side.has(one[0] as number)));
  });
  return spared.length > 0 ? spared : chords;
};
