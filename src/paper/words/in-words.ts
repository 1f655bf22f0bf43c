// A list as it is said.

/** "a", "a and b", "a, b and c"; "a or b". A comma stands before the last word too where an item has one of its own. */
export const inWords = (all: readonly string[], last: 'and' | 'or' = 'and'): string => {
  if (all.length < 2) return all[0] ?? '';
  const before = all.slice(0, -1);
  return `${before.join(', ')}${before.some((item) => item.includes(',')) ? ',' : ''} ${last} ${all.at(-1)}`;
};
