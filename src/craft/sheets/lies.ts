// In which ways may pieces lie on a sheet?
import { heightOf, type Kind, widthOf } from '#craft/strips';
import type { Sheet, SheetJob } from './job.ts';

export interface Lie {
  readonly kind: number;
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
}

/** Those that fit the sheet: lowest first for strips of single pieces, narrowest first for strips of stacks. */
export const liesOn = (sheet: Sheet, { kinds, cutting }: SheetJob): readonly Lie[] => {
  const lies = kinds.flatMap((kind, i) => waysOf(kind, i));
  const fitting = lies.filter(({ width, height }) => width <= sheet.width && height <= sheet.height);
  return cutting.stages === 2
    ? fitting.sort((a, b) => a.height - b.height || a.width - b.width || a.kind - b.kind)
    : fitting.sort((a, b) => a.width - b.width || a.height - b.height || a.kind - b.kind);
};

const waysOf = (kind: Kind, i: number): readonly Lie[] => {
  const turns = kind.mayTurn && kind.width !== kind.height ? [false, true] : [false];
  return turns.map((turned) => ({ kind: i, turned, width: widthOf(kind, turned), height: heightOf(kind, turned) }));
};
