// What is the most worth that fits into a room, when only items up to a rank may be taken? One pass in rising rank answers
// for every rank and every room at once. Sizes and counts are whole; worths are any numbers.

/** Takes `size` of the room. Items of one rank become allowed together. */
export interface RankedItem {
  readonly size: number;
  readonly rank: number;
}

/** The tables of the last `fill`; a fill writes over them. */
export interface RankedKnapsack {
  /** The distinct ranks, rising. A `level` below is a place in this list. */
  readonly ranks: readonly number[];
  /**
   * Works out every level and room. Items worth nothing or less, or with no copies, are passed over.
   *
   * @param worths  of one copy of each item
   * @param most    copies of each item at most, whole
   */
  readonly fill: (worths: ArrayLike<number>, most: ArrayLike<number>) => void;
  /** The most worth of items of level 0 to `level` whose sizes add up to at most `room`. */
  readonly worth: (level: number, room: number) => number;
  /** Worths at this level by room, 0 to the whole room: a view of the table. */
  readonly worths: (level: number) => Float64Array;
  /**
   * Copies taken of each item, in the order that the items were given, for that most worth.
   *
   * @param into as long as there are items; written whole
   */
  readonly trace: (level: number, room: number, into: Int32Array) => void;
  /** Cells that the last fill looked at. */
  readonly work: () => number;
}

/**
 * A knapsack of bounded copies, each count split into 1, 2, 4, … and a rest, so that n copies cost log n passes over the room.
 *
 * @param room the largest room that will be asked for, whole
 */
export const rankedKnapsackFor = (items: readonly RankedItem[], room: number): RankedKnapsack => {
  const order = items.map((_, i) => i).sort((a, b) => rankAt(items, a) - rankAt(items, b) || a - b);
  const ranks = [...new Set(order.map((i) => rankAt(items, i)))];
  const wide = room + 1;
  const rows = ranks.map(() => new Float64Array(wide));
  /** Splits end here at each level. */
  const ends = new Int32Array(ranks.length);
  const splits = splitsOf(items.length);
  return {
    ranks,
    fill: (worths, most) => {
      splits.count = 0;
      let level = 0;
      let row = rows[0] as Float64Array;
      row?.fill(0);
      for (const i of order) {
        const { size, rank } = items[i] as RankedItem;
        while (rank !== ranks[level]) {
          ends[level++] = splits.count;
          (rows[level] as Float64Array).set(row);
          row = rows[level] as Float64Array;
        }
        const worth = worths[i] as number;
        if (!(worth > 0) || size > room) continue;
        let left = Math.min(most[i] as number, Math.floor(room / size));
        for (let times = 1; left > 0; times *= 2) {
          const now = Math.min(times, left);
          left -= now;
          addSplit({ splits, wide, row, item: i, times: now, size: now * size, worth: now * worth });
        }
      }
      while (level < ranks.length) {
        ends[level++] = splits.count;
        if (level < ranks.length) (rows[level] as Float64Array).set(row);
      }
    },
    worth: (level, at) => (rows[level] as Float64Array)[at] as number,
    worths: (level) => rows[level] as Float64Array,
    trace: (level, at, into) => {
      into.fill(0);
      let left = at;
      for (let s = (ends[level] as number) - 1; s >= 0; s--) {
        if (splits.taken[s * wide + left] === 0) continue;
        const item = splits.item[s] as number;
        into[item] = (into[item] as number) + (splits.times[s] as number);
        left -= splits.size[s] as number;
      }
    },
    work: () => splits.count * wide,
  };
};

const rankAt = (items: readonly RankedItem[], i: number): number => (items[i] as RankedItem).rank;

/** Some copies of an item, taken together or not at all; `taken` holds the choice at every room. */
interface Splits {
  count: number;
  item: Int32Array;
  times: Int32Array;
  size: Int32Array;
  taken: Uint8Array;
}

const splitsOf = (items: number): Splits => ({
  count: 0,
  item: new Int32Array(4 * items + 4),
  times: new Int32Array(4 * items + 4),
  size: new Int32Array(4 * items + 4),
  taken: new Uint8Array(0),
});

const addSplit = (of: {
  readonly splits: Splits;
  readonly wide: number;
  readonly row: Float64Array;
  readonly item: number;
  readonly times: number;
  readonly size: number;
  readonly worth: number;
}): void => {
  const { splits, wide, row, size, worth } = of;
  const s = splits.count++;
  if (s === splits.item.length) {
    splits.item = widened(splits.item, 2 * s);
    splits.times = widened(splits.times, 2 * s);
    splits.size = widened(splits.size, 2 * s);
  }
  if ((s + 1) * wide > splits.taken.length) {
    const old = splits.taken;
    splits.taken = new Uint8Array(wide * splits.item.length);
    splits.taken.set(old);
  }
  splits.item[s] = of.item;
  splits.times[s] = of.times;
  splits.size[s] = size;
  const { taken } = splits;
  const from = s * wide;
  taken.fill(0, from, from + size);
  for (let at = wide - 1; at >= size; at--) {
    const sum = (row[at - size] as number) + worth;
    if (sum > (row[at] as number) + 1e-12) {
      row[at] = sum;
      taken[from + at] = 1;
    } else taken[from + at] = 0;
  }
};

const widened = (old: Int32Array, size: number): Int32Array => {
  const wide = new Int32Array(size);
  wide.set(old);
  return wide;
};
