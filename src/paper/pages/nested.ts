// Words and pictures for what nests: pieces side by side in a strip at an angle, two templates in one box.
import type { ClothPiece, FabricPlan, QuiltPlan } from '#craft';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import { cutMark, stripText } from '#paper/cutting';
import { type Drawing, drawNested } from '#paper/drawing';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import { counted } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { measurePt } from './measure.ts';

/** For the table of sizes; null where nothing nests. */
export const nestedShape = (piece: ClothPiece, unit: Unit): string | null => {
  const { way, count, gives, outlines } = piece;
  if (way) return `strip, ${stripText(way, unit)}: ${counted(count * gives, 'piece')}`;
  return outlines.length > 1 ? `box round two templates: ${count * gives} pieces` : null;
};

/** What to do with one once it is cut to size; null where nothing nests. */
export const nestedDirection = (mark: string, piece: ClothPiece, unit: Unit): string | null => {
  const { way, count, gives, outlines } = piece;
  const each = (noun: string): string => (count === 1 ? `the ${noun} ${mark}` : `each ${noun} ${mark}`);
  if (way === null) {
    return outlines.length > 1
      ? `Out of ${each('box')} cut two pieces to the template, the second turned by a half turn, as the picture shows.`
      : null;
  }
  const turning = way.cuts === 'parallel' ? '' : ', every second one turned by a half turn';
  if (way.cutBy === 'template')
    return `Lay the template along ${each('strip')} from end to end, edge on edge${turning}: ${counted(gives, 'piece')}.`;
  return way.cuts === 'parallel'
    ? `Trim the end of ${each('strip')} to its angle as the picture shows, then ${stripText(way, unit)}, measured square to the cut: ${counted(gives, 'piece')}.`
    : `Trim the end of ${each('strip')} to its angle as the picture shows, then ${stripText(way, unit)}${turning}: ${counted(gives, 'piece')}.`;
};

export const nestedPictures = ({ album, ...of }: Nested & { readonly album: Album }): readonly Picture[] =>
  nestedDrawings({ ...of, widthPt: measurePt }).map(({ mark, drawing }) => shown(album, `nested-${mark}`, drawing));

interface Nested {
  readonly plan: QuiltPlan;
  readonly fabric: FabricPlan;
  readonly sign: ClothSign;
}

/** One picture for each way to nest, of the fullest. */
export const nestedDrawings = (
  of: Nested & { readonly widthPt: number },
): readonly { readonly mark: string; readonly drawing: Drawing }[] => {
  const { unit } = of.plan.quilt;
  const fullest = new Map<string, number>();
  of.fabric.pieces.forEach((piece, index) => {
    if (piece.outlines.length === 0) return;
    const name = piece.way?.key ?? String(index);
    const known = of.fabric.pieces[fullest.get(name) ?? -1];
    if (known === undefined || piece.gives > known.gives) fullest.set(name, index);
  });
  return [...fullest.values()].flatMap((index) => {
    const piece = of.fabric.pieces[index];
    if (piece === undefined) return [];
    const mark = cutMark(of.sign.letter, index);
    const how = piece.way ? stripText(piece.way, unit) : 'two templates, the second turned by a half turn';
    const drawing = drawNested({
      piece,
      sign: of.sign,
      mark,
      note: `${mark}: ${piece.way ? `${counted(piece.gives, 'piece')}, ${how}` : how}`,
      unit,
      fitPt: [of.widthPt, 130],
      alt: altFor({ mark, piece, how, unit }),
    });
    return [{ mark, drawing }];
  });
};

const altFor = (of: {
  readonly mark: string;
  readonly piece: ClothPiece;
  readonly how: string;
  readonly unit: Unit;
}): string => {
  const { mark, piece, how, unit } = of;
  const size = sizeOnPaper(piece.cut, unit);
  if (!piece.way) return `Box ${mark}, ${size}: ${how}.`;
  const turning = piece.way.cuts === 'parallel' ? 'all the same way' : 'every second one turned by a half turn';
  return `Strip ${mark}, ${size}, ${lengthOnPaper(piece.way.size[0], unit)} wide: ${counted(piece.gives, 'piece')} side by side, ${turning}, ${how}.`;
};
