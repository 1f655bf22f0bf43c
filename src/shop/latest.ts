// What was made last, kept for when it is asked for again: a page, then the next one, then the file.

export interface Latest<V> {
  /** @param make what it is made by where it is not kept */
  readonly of: (key: string, make: () => V) => V;
}

/** @param most how many are kept: of more the one that was asked for longest ago goes */
export const latest = <V>(most: number): Latest<V> => {
  const kept = new Map<string, V>();
  return {
    of: (key, make) => {
      const value = kept.has(key) ? (kept.get(key) as V) : make();
      kept.delete(key);
      kept.set(key, value);
      for (const [oldest] of kept) {
        if (kept.size <= most) break;
        kept.delete(oldest);
      }
      return value;
    },
  };
};
