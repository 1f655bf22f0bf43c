// A list as it is said.

/** "a", "a and b", "a, b and c"; "a or b". */
export const inWords = (all: readonly string[], last: 'and' | 'or' = 'and'): string =>
  all.length < 2 ? (all[0] ?? '') : `${all.slice(0, -1).join(', ')} ${last} ${all.at(-1)}`;
