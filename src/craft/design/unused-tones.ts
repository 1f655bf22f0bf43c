// Which entries of a colouring colour nothing? Most often a tone that was renamed in the block alone.
import { under } from './pointer.ts';
import type { BlockDesign, Quilt } from './quilt.ts';
import { tonesOf } from './tone-uses.ts';

export interface UnusedTone {
  readonly path: string;
  readonly block: string;
  readonly colouring: string;
  readonly tone: string;
}

export const unusedTones = (quilt: Quilt): readonly UnusedTone[] => quilt.blocks.flatMap(unusedIn);

const unusedIn = ({ id, path, shape, colourings }: BlockDesign): readonly UnusedTone[] => {
  const uses = tonesOf(shape);
  const used = new Set([...uses.keys(), ...[...uses.values()].flatMap((letters) => [...letters])]);
  return Object.entries(colourings).flatMap(([colouring, tones]) =>
    Object.keys(tones)
      .filter((tone) => !used.has(tone))
      .map((tone) => ({ path: under(path, 'colourings', colouring, tone), block: id, colouring, tone })),
  );
};
