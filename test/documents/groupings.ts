// For slow twins of layouts: which pieces lie together.

/** Every way to put things into groups. */
export const groupings = <T>(things: readonly T[]): readonly (readonly (readonly T[])[])[] => {
  const [first, ...rest] = things;
  if (first === undefined) return [[]];
  return groupings(rest).flatMap((groups) => [
    [[first], ...groups],
    ...groups.map((_, i) => groups.map((group, j) => (i === j ? [first, ...group] : group))),
  ]);
};
