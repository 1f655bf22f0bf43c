// How large is a piece cut that is trimmed when it is sewn? As its patch lies to its seam, with room on every side.
import type { SeamLine } from '#craft/chords';
import { type Length, length, upToMark } from '#craft/measure';
import type { Rational } from '#ground/exact';
import { distance, type Polygon } from '#ground/plane';

/** On every side, in seam allowances: one to sew, and as much again for laying it askew. Common practice, no source. */
const allowancesRound = 2;

/**
 * A rectangle that covers the patch and its room, one side along the seam.
 *
 * @param of.line the seam that it is sewn on by; null for the first piece, which lies square to the block
 * @returns along the seam, and across it, on marks of the ruler; in the document's unit
 */
export const roughCut = (of: {
  readonly patch: Polygon;
  readonly line: Pick<SeamLine, 'from' | 'to'> | null;
  readonly seam: Length;
  readonly ruler: Rational;
}): readonly [along: Length, across: Length] => {
  const { patch, line, seam, ruler } = of;
  const [ux, uy] = line === null ? [1, 0] : directionOf(line);
  const along = patch.map(({ x, y }) => x * ux + y * uy);
  const across = patch.map(({ x, y }) => y * ux - x * uy);
  const sized = (places: readonly number[]): Length =>
    upToMark(length(Math.max(...places) - Math.min(...places) + 2 * allowancesRound * seam), ruler).size;
  return [sized(along), sized(across)];
};

const directionOf = ({ from, to }: Pick<SeamLine, 'from' | 'to'>): readonly [number, number] => {
  const long = distance(from, to);
  return [(to.x - from.x) / long, (to.y - from.y) / long];
};
