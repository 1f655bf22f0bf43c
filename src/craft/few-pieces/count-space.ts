// How are "so many of each kind" counted through without listing pieces one by one? A number stands for each way to take
// some of each kind, in a mixed radix: the number of a sum is the sum of the numbers.

/** All ways to take 0 to `counts[k]` of each kind k, numbered from 0 (nothing) to `size` - 1 (everything). */
export interface CountSpace {
  readonly counts: readonly number[];
  readonly size: number;
  /** What one of each kind adds to the number. */
  readonly strides: readonly number[];
}

/** @returns null when there are more ways than `most` */
export const countSpaceFor = (counts: readonly number[], most: number): CountSpace | null => {
  const strides: number[] = [];
  let size = 1;
  for (const count of counts) {
    strides.push(size);
    size *= count + 1;
    if (size > most) return null;
  }
  return { counts, size, strides };
};

/** Pairs of a way and a part of it: the work of one pass over all parts of all ways. */
export const pairsIn = ({ counts }: CountSpace): number =>
  counts.reduce((product, count) => (product * (count + 1) * (count + 2)) / 2, 1);

/** How many of a kind a way takes. */
export const takenOf = (space: CountSpace, way: number, kind: number): number =>
  Math.floor(way / (space.strides[kind] as number)) % ((space.counts[kind] as number) + 1);

/** The first kind that a way takes any of; -1 for nothing. */
export const firstKindOf = (space: CountSpace, way: number): number => {
  for (let k = 0; k < space.counts.length; k++) if (takenOf(space, way, k) > 0) return k;
  return -1;
};

/**
 * Writes the parts of a way into a list.
 *
 * @param into room for every way of the space
 * @param having 'first': only parts that take one or more of the way's first kind; 'any': all but nothing
 * @returns how many were written
 */
export const writeParts = (of: {
  readonly space: CountSpace;
  readonly way: number;
  readonly having: 'first' | 'any';
  readonly into: Int32Array;
}): number => {
  const { space, way, having, into } = of;
  const { strides } = space;
  let n = 1;
  let isFirst = true;
  into[0] = 0;
  for (let k = 0; k < strides.length; k++) {
    const taken = takenOf(space, way, k);
    if (taken === 0) continue;
    const stride = strides[k] as number;
    if (isFirst && having === 'first') {
      for (let j = 1; j <= taken; j++) into[j - 1] = j * stride;
      n = taken;
    } else {
      const before = n;
      for (let j = 1; j <= taken; j++) for (let i = 0; i < before; i++) into[n++] = (into[i] as number) + j * stride;
    }
    isFirst = false;
  }
  if (having === 'first' || n === 0) return n;
  into[0] = into[n - 1] as number;
  return n - 1;
};
