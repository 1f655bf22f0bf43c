// How large an instance may be. Our own figures: several times any reference problem, and small enough for a search to begin
// within a second.
export const limits = {
  characters: 2 * 1024 * 1024,
  depth: 20,
  /** Of widths and heights, in the instance's units. */
  size: 100_000,
  items: 1_000,
  /** Of one kind, and of all kinds together. */
  pieces: 1_000_000,
  sheets: 50,
  problems: 200,
  cost: 1e12,
  /** Problems told one by one; the rest are counted. */
  told: 50,
} as const;
