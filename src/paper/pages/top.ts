// The top: its picture, how its rows or sections are sewn and joined, its plain pieces, its borders.
import type { QuiltPlan, TopPiece } from '#craft';
import { signOf } from '#paper/cloth';
import { type Drawing, drawRows, drawSections, isSlanted, isTurned } from '#paper/drawing';
import { sizeOnPaper } from '#paper/lengths';
import { capital, roleNouns } from '#paper/words';
import type { Picture } from './album.ts';
import { shown } from './album.ts';
import { cutText } from './cut-text.ts';
import { measurePt } from './measure.ts';
import { topNestingLines } from './pressing.ts';
import { borderParts } from './top-borders.ts';
import { madeText } from './top-names.ts';
import type { TopChapter, TopPart } from './top-part.ts';
import { topPart } from './top-part.ts';
import { rowParts, rowsAlt } from './top-rows.ts';
import { sectionParts, sectionsAlt } from './top-sections.ts';

export interface TopPages {
  readonly intro: readonly string[];
  readonly picture: Picture;
  readonly parts: readonly TopPart[];
}

export const topPages = (of: TopChapter): TopPages => {
  const { plan } = of;
  const isSections = plan.quilt.top.set === 'sections';
  return {
    intro: topIntro(plan),
    picture: shown(of.album, isSections ? 'sections' : 'rows', topPicture(of)),
    parts: [...(isSections ? sectionParts(plan) : rowParts(plan)), ...plainPieces(of), ...borderParts(of)],
  };
};

/** Before the first seam. */
export const topIntro = (plan: QuiltPlan): readonly string[] => [
  'Lay the whole top out before you sew, and look at it from across the room.',
  ...(isTurned(plan) ? [pointerText] : []),
  ...topNestingLines(plan),
  ...elsewhere(plan),
];

export const pointerText =
  'The small pointer in a block marks the edge that is at the top of its board: turn the block so that it points as drawn.';

/** Its middle in rows or sections, as they are joined. */
export const topPicture = (of: Pick<TopChapter, 'plan' | 'signs'>): Drawing =>
  of.plan.quilt.top.set === 'sections' ? sectionsPicture(of) : rowsPicture(of);

const rowsPicture = ({ plan, signs }: Pick<TopChapter, 'plan' | 'signs'>): Drawing => {
  const rows = plan.top.set.rows.length;
  const numbered = isSlanted(plan)
    ? `The middle of the top in ${rows} slanted rows, pulled apart and numbered from the upper left corner, with its four corners.`
    : `The middle of the top in ${rows} rows, pulled apart and numbered from the top.`;
  return drawRows({
    plan,
    signs,
    fitPt: [measurePt, isSlanted(plan) ? 400 : 320],
    alt: `${numbered} ${rowsAlt(plan)}`,
  });
};

const sectionsPicture = ({ plan, signs }: Pick<TopChapter, 'plan' | 'signs'>): Drawing =>
  drawSections({
    plan,
    signs,
    fitPt: [measurePt, 380],
    alt: `The middle of the top, pulled apart into its numbered sections. ${sectionsAlt(plan)}`,
  });

/** Places that stay open until their block comes. */
const elsewhere = (plan: QuiltPlan): readonly string[] =>
  plan.blocks
    .filter(({ patches }) => patches.length === 0)
    .map(
      ({ id, title, unfinished }) =>
        `The crossed place is kept for ${title || id}, which is made elsewhere: it must measure ${sizeOnPaper(unfinished, plan.quilt.unit)} when it comes.`,
    );

const plainPieces = (of: TopChapter): readonly TopPart[] => {
  const inBorders = new Set(['border', 'spacer', 'border-corner']);
  const pieces = of.plan.top.pieces.filter(({ role }) => !inBorders.has(role));
  if (pieces.length === 0) return [];
  return [
    topPart({
      heading: 'Plain pieces of the top',
      table: {
        head: ['Piece', 'What', 'Count', 'Cut'],
        shares: [0, 1, 0, 0],
        rows: pieces.map((piece) => topPieceLine(of, piece)),
      },
    }),
  ];
};

/** Label, what it is, how many, how it is cut and under which mark it lies. */
export const topPieceLine = (
  of: Omit<TopChapter, 'album'>,
  piece: TopPiece,
): readonly [string, string, string, string] => {
  const { plan, signs } = of;
  const isSquare = piece.cut.shape === 'rectangle' || piece.cut.shape === 'square';
  return [
    piece.label,
    `${capital(roleNouns[piece.role])}, cloth ${signOf(signs, piece.fabric).letter}`,
    String(piece.count),
    madeText(of, piece, isSquare ? sizeOnPaper(piece.cut.size, plan.quilt.unit) : cutText(piece, plan)),
  ];
};
