// Which mark stands on which piece of a strip? One on every piece; where pieces are too small for it, one with
// their number over equal neighbours; what still has none is named for the note beside the strip.
import type { LaidPiece, Strip, StripPart } from '#craft/cutting';
import type { Box } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSign } from '#paper/cloth';
import { cutMark } from '#paper/cutting';
import { inkOn } from './ink.ts';
import { drawLabels, fitsInside } from './label.ts';
import { rectOutline } from './placed.ts';

interface Placed {
  readonly part: StripPart;
  readonly piece: LaidPiece;
}

interface StripPlace {
  readonly kind: { readonly strip: Strip };
  /** Points a unit. */
  readonly scale: number;
  /** Top of the strip in the picture. */
  readonly y: number;
  readonly sign: ClothSign;
}

/** Where a piece lies in the picture; a point is left at the edge for strokes. */
export const pieceRect = (of: Placed & { readonly scale: number; readonly y: number }): Box => ({
  x: 1 + of.part.at * of.scale,
  y: of.y + of.piece.at * of.scale,
  width: of.piece.cut[0] * of.scale,
  height: of.piece.cut[1] * of.scale,
});

export const marksIn = (of: StripPlace): { readonly labels: readonly string[]; readonly unmarked: string } => {
  const all = of.kind.strip.parts.flatMap((part) => part.pieces.map((piece) => ({ part, piece })));
  const alone = all.map((one) => labelled(of, [one]));
  const tooSmall = all.filter((_, i) => !alone.some((label, j) => i === j && fitsInside(label)));
  const runs = neighbours(tooSmall).map((run) => ({ run, label: labelled(of, run) }));
  const labels = [...alone.filter(fitsInside), ...runs.map(({ label }) => label).filter(fitsInside)];
  const left = runs.filter(({ label }) => !fitsInside(label)).flatMap(({ run }) => run);
  return {
    labels: drawLabels({ labels, bounds: { x: 0, y: 0, width: 0, height: 0 }, tooSmall: 'leave-out' }),
    unmarked: namesOf(left, of.sign),
  };
};

const labelled = (of: StripPlace, run: readonly Placed[]) => {
  const mark = cutMark(of.sign.letter, run[0]?.piece.of ?? 0);
  return {
    text: run.length === 1 ? mark : `${run.length}×${mark}`,
    outline: rectOutline(boxOf(run.flatMap((one) => rectOutline(pieceRect({ ...one, scale: of.scale, y: of.y }))))),
    fill: inkOn(of.sign.colour),
    ...(run.length === 1 ? {} : { ground: of.sign.colour }),
  };
};

/** Runs of one size as it lies: down one part, or along parts that hold one such piece each. */
const neighbours = (all: readonly Placed[]): readonly (readonly Placed[])[] => {
  const runs: Placed[][] = [];
  for (const one of all) {
    const before = runs.at(-1)?.at(-1);
    const isSame = before !== undefined && before.piece.of === one.piece.of && before.piece.turned === one.piece.turned;
    const isNext =
      before !== undefined &&
      (before.part === one.part ||
        (before.part.pieces.length === 1 && one.part.pieces.length === 1 && before.piece.at === one.piece.at));
    if (isSame && isNext) runs.at(-1)?.push(one);
    else runs.push([one]);
  }
  return runs;
};

const mostNames = 3;

/** "36×C3, 12×C4": what one strip holds without a mark of its own. */
const namesOf = (all: readonly Placed[], sign: ClothSign): string => {
  const counts = new Map<number, number>();
  for (const { piece } of all) counts.set(piece.of, (counts.get(piece.of) ?? 0) + 1);
  const names = [...counts].map(([piece, count]) => `${count}×${cutMark(sign.letter, piece)}`);
  return names.length <= mostNames ? names.join(', ') : `${names.slice(0, mostNames).join(', ')}, …`;
};
