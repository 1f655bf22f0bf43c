// The piece key: every kind of piece of every block drawn as it is cut, with its cloth, its mark on the cutting page and its
// size, so that a piece found on the floor finds its way back.
import type { BlockPlan, PlannedPiece, QuiltPlan } from '#craft';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { cutOutline, drawPiece } from '#paper/drawing';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { cutText } from './cut-text.ts';
import { marksOfPiece } from './marks.ts';

export interface KeyedBlock {
  readonly title: string;
  readonly pieces: readonly KeyedPiece[];
}

export interface KeyedPiece {
  readonly label: string;
  readonly picture: Picture;
  /** "B3 · Oat", one for each cloth that it is cut from. */
  readonly cloths: readonly string[];
  readonly cut: string;
  readonly count: string;
}

interface KeyOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

export const pieceKey = (of: KeyOf): readonly KeyedBlock[] =>
  of.plan.blocks.flatMap((block, i) =>
    block.pieces.length === 0
      ? []
      : [{ title: entryTitle(of.plan, entryOf(block)), pieces: piecesOf(of, block, i + 1) }],
  );

const entryOf = ({ id, colouring, mirror }: BlockPlan) => ({ block: id, colouring, mirror });

/** Room of one piece in the grid of the page: four abreast. */
const roomPt = { width: 96, height: 84 } as const;

const piecesOf = (of: KeyOf, block: BlockPlan, place: number): readonly KeyedPiece[] => {
  const boxes = block.pieces.map(({ cut }) => boxOf(cutOutline(cut)));
  const scale = Math.min(
    roomPt.width / Math.max(...boxes.map(({ width }) => width)),
    roomPt.height / Math.max(...boxes.map(({ height }) => height)),
  );
  return block.pieces.map((piece) => {
    const cut = cutText(piece, of.plan);
    const cloths = clothsOf(of, block, piece);
    return {
      label: piece.label,
      picture: shown(
        of.album,
        `key-${place}-${piece.label}`,
        drawPiece({
          cut: piece.cut,
          sign: signOf(of.signs, piece.fabric),
          label: piece.label,
          scale,
          alt: `Piece ${piece.label}: ${cut}, cloth ${cloths.join(' or ')}.`,
        }),
      ),
      cloths,
      cut,
      count: `${piece.perBlock * block.count} in all`,
    };
  });
};

/** The marks under which the piece lies on the cutting pages, cloth by cloth. */
const clothsOf = (of: KeyOf, block: BlockPlan, piece: PlannedPiece): readonly string[] =>
  piece.fabrics.map(({ fabric }) => {
    const { letter, name } = signOf(of.signs, fabric);
    const marks = marksOfPiece(of, { block, piece, fabric });
    return `${marks.length === 0 ? letter : marks.join(', ')} · ${name}`;
  });
