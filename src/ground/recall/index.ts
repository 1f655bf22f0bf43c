// What was worked out once and may be asked for again: the same question has the same answer, so that it need not be worked out twice.
// Says nothing of what is asked.

export interface Recall {
  /** @param key all that the answer depends on, as a text */
  readonly recall: <T>(key: string, make: () => T) => T;
}

/** Works everything out anew. */
export const noRecall: Recall = { recall: (_, make) => make() };

/** @param most answers kept; those that were longest not asked for go first */
export const recalling = (most: number): Recall => {
  const known = new Map<string, unknown>();
  return {
    recall: <T>(key: string, make: () => T): T => {
      const answer = known.has(key) ? (known.get(key) as T) : make();
      known.delete(key);
      known.set(key, answer);
      for (const oldest of known.keys()) {
        if (known.size <= most) break;
        known.delete(oldest);
      }
      return answer;
    },
  };
};
