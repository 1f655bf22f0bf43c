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

/** How strips of one width that are joined end to end are cut: how long one may be, and which way of the cloth it runs. */
export interface JoiningRun {
  readonly long: Length;
  readonly runs: 'across' | 'along';
}

/**
 * From selvage to selvage, or along the longer side of a sheet that is wide enough: fewest joins. A print that stands upright has
 * its own way (`joinedOnCloth`), and of a strip that is no part of the quilt's face it does not matter.
 *
 * @param short width of the strip
 */
export const joiningRun = ({ width, joining }: Pick<ClothNature, 'width' | 'joining'>, short: Length): JoiningRun =>
  joining !== undefined && joining[1] > joining[0] && short <= joining[0] + 1e-9
    ? { long: joining[1], runs: 'along' }
    : { long: width, runs: 'across' };

/**
 * A strip of a cloth without an upright in pieces of cloth: across it where that is wide enough, else as its joins are fewest.
 *
 * @param size as it is cut, the long side first
 * @returns pieces [across the cloth, along it]
 */
export const joinedAnyWay = (strip: {
  readonly size: readonly [Length, Length];
  readonly nature: Pick<ClothNature, 'width' | 'joining'>;
  readonly seam: Length;
}): readonly (readonly [Length, Length])[] => {
  const [long, short] = strip.size;
  if (long <= strip.nature.width + 1e-9) return [[long, short]];
  const { long: most, runs } = joiningRun(strip.nature, short);
  return joinedStrip({ long, width: most, seam: strip.seam }).map((piece) =>
    runs === 'across' ? [piece, short] : [short, piece],
  );
};

/**
 * A strip of a cloth whose print stands upright in the quilt, in pieces of cloth: along the cloth in one piece, across it
 * joined where the cloth is too narrow, along a sheet where that is too short. The print leaves no choice of grain.
 *
 * @param size as it is cut and lies in the quilt, across and down
 * @returns pieces [across the cloth, along it]
 */
export const joinedOnCloth = (strip: {
  readonly size: readonly [Length, Length];
  readonly nature: Pick<ClothNature, 'width' | 'joining' | 'printRuns'>;
  readonly seam: Length;
}): readonly (readonly [Length, Length])[] => {
  const { size, nature, seam } = strip;
  const [across, along] = nature.printRuns === 'lengthwise' ? size : [size[1], size[0]];
  const most = nature.joining?.[1];
  if (most !== undefined && across <= nature.width + 1e-9)
    return joinedStrip({ long: along, width: most, seam }).map((piece) => [across, piece]);
  return joinedStrip({ long: across, width: nature.width, seam }).map((piece) => [piece, along]);
};
