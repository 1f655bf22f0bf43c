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

/** Some ways of a space, to be found again inside others. */
export interface Among {
  readonly space: CountSpace;
  readonly isWanted: Uint8Array;
  /** By the first kind that they take any of. */
  readonly lists: readonly Int32Array[];
}

export const amongFor = (space: CountSpace, isWanted: (way: number) => boolean): Among => {
  const lists: number[][] = space.counts.map(() => []);
  const wanted = new Uint8Array(space.size);
  for (let way = 1; way < space.size; way++) {
    if (!isWanted(way)) continue;
    wanted[way] = 1;
    lists[firstKindOf(space, way)]?.push(way);
  }
  return { space, isWanted: wanted, lists: lists.map((list) => Int32Array.from(list)) };
};

/**
 * Writes those of some ways into a list that are parts of a way and take one or more of its first kind.
 *
 * @param into room for every way of the space
 * @returns how many were written
 */
export const writePartsAmong = (among: Among, way: number, into: Int32Array): number => {
  const { space, lists, isWanted } = among;
  const first = firstKindOf(space, way);
  const list = lists[first] as Int32Array;
  if (list.length * perLook < partsHavingFirst(space, way, first)) return writeHeld(among, { way, list, into });
  const all = writeParts({ space, way, having: 'first', into });
  let count = 0;
  for (let p = 0; p < all; p++) if (isWanted[into[p] as number] === 1) into[count++] = into[p] as number;
  return count;
};

/** To see whether a way holds another takes so many times as long as to write one down; measured. */
const perLook = 4;

const partsHavingFirst = (space: CountSpace, way: number, first: number): number => {
  let parts = takenOf(space, way, first);
  for (let k = first + 1; k < space.counts.length; k++) parts *= takenOf(space, way, k) + 1;
  return parts;
};

const writeHeld = (
  { space }: Among,
  { way, list, into }: { readonly way: number; readonly list: Int32Array; readonly into: Int32Array },
): number => {
  let count = 0;
  for (const part of list) {
    // a part's number is never above the whole's
    if (part > way) break;
    if (isPart(space, way, part)) into[count++] = part;
  }
  return count;
};

/** Counting down from the kind of the greatest stride, one remainder after the other. */
const isPart = ({ strides }: CountSpace, way: number, part: number): boolean => {
  let [left, mine] = [way, part];
  for (let k = strides.length - 1; k > 0; k--) {
    const stride = strides[k] as number;
    const has = (left / stride) | 0;
    const takes = (mine / stride) | 0;
    if (takes > has) return false;
    left -= has * stride;
    mine -= takes * stride;
  }
  return mine <= left;
};
