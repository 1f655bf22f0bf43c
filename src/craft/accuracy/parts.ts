// What a check size goes over, by name, and how far each alone may bring it off: sizes of one block, or of one top, share cuts and seams.
import type { Care } from './care.ts';
import type { SewnIn } from './size-model.ts';

export interface SizePart {
  /** The same in every size that goes over it: a seam between two pieces is one, whichever way it is crossed. */
  readonly name: string;
  /** What it brings into the size at its limit; with the sign of what it does. */
  readonly limit: number;
}

/** Both layers of a seam are sewn in one: its two allowances go together. What a block of a top is made of is named by its place there. */
export const partsOf = ({ cuts, seams }: SewnIn, care: Care): readonly SizePart[] => [
  ...cuts.flatMap(({ patch, side, grows, sewn }) =>
    sewn === undefined
      ? [{ name: `cut ${patch} ${side}`, limit: grows * care.cut }]
      : partsOf(sewn, care).map(({ name, limit }) => ({ name: `${patch}: ${name}`, limit })),
  ),
  ...seams.map(({ between: [a, b], shrinks }) => ({
    name: `seam ${Math.min(a, b)} ${Math.max(a, b)}`,
    limit: -2 * shrinks * care.seam,
  })),
];

/** All limits added up, and their squares. Blocks that count alike are looked through once. */
export const limitsOf = ({ cuts, seams }: SewnIn, care: Care): { readonly sum: number; readonly squares: number } => {
  const alike = new Map<SewnIn, ReturnType<typeof limitsOf>>();
  const blocks = cuts.flatMap(({ sewn }) => {
    if (sewn === undefined) return [];
    const known = alike.get(sewn) ?? limitsOf(sewn, care);
    alike.set(sewn, known);
    return [known];
  });
  const own = partsOf({ cuts: cuts.filter(({ sewn }) => sewn === undefined), seams }, care);
  return {
    sum: own.reduce((all, { limit }) => all + Math.abs(limit), 0) + blocks.reduce((all, { sum }) => all + sum, 0),
    squares: own.reduce((all, { limit }) => all + limit * limit, 0) + blocks.reduce((all, of) => all + of.squares, 0),
  };
};
