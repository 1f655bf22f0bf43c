// What a check size goes over, by name, and how far each alone may bring it off: sizes of one block share cuts and seams.
import type { Care } from './care.ts';
import type { SizeModel } from './size-model.ts';

export interface SizePart {
  /** The same in every size that goes over it: a seam between two pieces is one, whichever way it is crossed. */
  readonly name: string;
  /** What it brings into the size at its limit; with the sign of what it does. */
  readonly limit: number;
}

/** Both layers of a seam are sewn in one: its two allowances go together. */
export const partsOf = ({ cuts, seams }: Pick<SizeModel, 'cuts' | 'seams'>, care: Care): readonly SizePart[] => [
  ...cuts.map(({ patch, side, grows }) => ({ name: `cut ${patch} ${side}`, limit: grows * care.cut })),
  ...seams.map(({ between: [a, b], shrinks }) => ({
    name: `seam ${Math.min(a, b)} ${Math.max(a, b)}`,
    limit: -2 * shrinks * care.seam,
  })),
];
