// Outlines as a worker sends them.

/** x, y, x, y … */
export const flat = (points: readonly { readonly x: number; readonly y: number }[]): readonly number[] =>
  points.flatMap(({ x, y }) => [x, y]);
