// What the parts of the finish share: their form, and how they name a cloth and what has been cut from it.
import type { PieceUse, QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { marksFor } from './marks.ts';

export interface FinishPart {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly picture?: Picture;
}

export interface FinishOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** "cloth D, Cream" */
export const clothText = (signs: ClothSigns, fabric: string): string => {
  const sign = signOf(signs, fabric);
  return `cloth ${sign.letter}, ${sign.name}`;
};

/** "C1", "C1 and C2": what was cut for a part of the finish. */
export const takenMarks = (
  of: Omit<FinishOf, 'album'>,
  at: { readonly role: PieceUse['role']; readonly fabric: string; readonly cut?: readonly [number, number] },
): string =>
  inWords(
    marksFor(of, {
      fabric: at.fabric,
      isFor: ({ role }) => role === at.role,
      ...(at.cut === undefined ? {} : { cut: at.cut }),
    }),
  );
