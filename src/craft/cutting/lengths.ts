// Long strips: how many widths of cloth are joined end to end to make one.
import { type Length, length, tidy } from '#craft/measure';
import type { ClothNature } from './cloth.ts';

/**
 * Pieces that, joined end to end, make one strip: whole widths of the cloth and a last piece of what is missing. A
 * last piece shorter than an eighth of the width would show as a scrap beside a seam: it and the piece before share their
 * length, the first of them in whole inches or centimetres (common practice, no source; the eighth is our own).
 *
 * @param long   cut length of the strip
 * @param width  usable width of the cloth
 * @param seam   allowance of the joins: every join takes two
 * @returns lengths of the pieces; their sum less two allowances a join is `long`
 * @source docs/formulas.md#joined-strips
 */
export const joinedStrip = (strip: {
  readonly long: Length;
  readonly width: Length;
  readonly seam: Length;
}): readonly Length[] => {
  const { long, width, seam } = strip;
  if (long <= width + 1e-9) return [long];
  const pieces: Length[] = [];
  let missing = long as number;
  while (missing > width + 1e-9) {
    pieces.push(width);
    missing += 2 * seam - width;
  }
  if (missing >= width / 8) return [...pieces, tidy(missing)];
  const shared = Math.round((width + missing) / 2);
  return [...pieces.slice(0, -1), length(shared), tidy(width + missing - shared)];
};

/**
 * A strip of a cloth whose print stands upright in the quilt, in pieces of cloth: along the cloth in one piece, across it
 * joined where the cloth is too narrow. The print leaves no choice of grain.
 *
 * @param size as it is cut and lies in the quilt, across and down
 * @returns pieces [across the cloth, along it]
 */
export const joinedOnCloth = (strip: {
  readonly size: readonly [Length, Length];
  readonly nature: Pick<ClothNature, 'width' | 'printRuns'>;
  readonly seam: Length;
}): readonly (readonly [Length, Length])[] => {
  const { size, nature, seam } = strip;
  const [across, along] = nature.printRuns === 'lengthwise' ? size : [size[1], size[0]];
  return joinedStrip({ long: across, width: nature.width, seam }).map((piece) => [piece, along]);
};
