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
import { briefName } from './brief-name.ts';
import { cutText } from './cut-text.ts';
import { marksOfPiece } from './marks.ts';
import { blocksOfAll, countIn, countsText, type SizedPlan, sameEntry } from './sized.ts';

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
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** Blocks of all sizes once: what is cut for them is alike, under marks that each size has for itself. */
export const pieceKey = (of: KeyOf): readonly KeyedBlock[] => {
  const plans = [of.plan, ...of.sizes.map(({ plan }) => plan)];
  return blocksOfAll(of.plan, of.sizes).flatMap(({ plan, block }, i) =>
    block.pieces.length === 0
      ? []
      : [{ title: entryTitle(plan, entryOf(block)), pieces: piecesOf({ ...of, plan, plans }, block, i + 1) }],
  );
};

const entryOf = ({ id, colouring, mirror }: BlockPlan) => ({ block: id, colouring, mirror });

interface KeyedIn extends KeyOf {
  /** Of all sizes, the quilt as drawn first. */
  readonly plans: readonly QuiltPlan[];
}

/** Room of one piece in the grid of the page: four abreast. */
const roomPt = { width: 96, height: 84 } as const;

const piecesOf = (of: KeyedIn, block: BlockPlan, place: number): readonly KeyedPiece[] => {
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
      count: `${countsText(of.plans.map((plan) => countIn(plan, block) * piece.perBlock))} in all`,
    };
  });
};

/** "B3 · Oat", the marks under which the piece lies on the cutting pages; of several sizes "Oat: 20 of B3 · 4 of B2". */
const clothsOf = (of: KeyedIn, block: BlockPlan, piece: PlannedPiece): readonly string[] =>
  piece.fabrics.map(({ fabric }) => {
    const { letter, name } = signOf(of.signs, fabric);
    if (of.plans.length > 1) {
      return `${name}: ${of.plans.map((plan) => markedIn({ plan, signs: of.signs }, { block, piece, fabric })).join(' · ')}`;
    }
    const marks = marksOfPiece(of, { block, piece, fabric });
    return `${marks.length === 0 ? letter : marks.join(', ')} · ${briefName(name)}`;
  });

/** "20 of B3": how many pieces of a cloth one size of the quilt takes, and from which pile. */
const markedIn = (
  of: { readonly plan: QuiltPlan; readonly signs: ClothSigns },
  { block, piece, fabric }: { readonly block: BlockPlan; readonly piece: PlannedPiece; readonly fabric: string },
): string => {
  const own = sameEntry(of.plan, block);
  const count = own?.pieces
    .find(({ label }) => label === piece.label)
    ?.fabrics.find((one) => one.fabric === fabric)?.count;
  if (own === undefined || count === undefined) return '–';
  const marks = marksOfPiece(of, { block: own, piece, fabric });
  return `${count}\u00a0of\u00a0${marks.join(', ')}`;
};
