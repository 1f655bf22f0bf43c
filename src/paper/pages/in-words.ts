// A list as it is said.

/** "a", "a and b", "a, b and c". */
export const inWords = (all: readonly string[]): string =>
  all.length < 2 ? (all[0] ?? '') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
