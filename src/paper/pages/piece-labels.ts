// Labels for what has been cut, one for each mark: to cut apart and pin to its pile.
import type { ClothPiece, QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { cutMark, stripText, usesText } from '#paper/cutting';
import { sizeOnPaper } from '#paper/lengths';
import { briefName } from './brief-name.ts';
import { type SizedPlan, sizeOf, sizeTitle } from './sized.ts';

export interface PieceLabel {
  readonly mark: string;
  readonly cloth: string;
  /** "48 of 3½ × 3½ in" */
  readonly cut: string;
  readonly usedFor: string;
}

/** The labels of one size of the quilt. */
export interface LabelSheet {
  /** Null where the pattern has one size. */
  readonly title: string | null;
  readonly labels: readonly PieceLabel[];
}

export const labelSheets = (of: {
  readonly plan: QuiltPlan;
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
}): readonly LabelSheet[] => [
  { title: of.sizes.length === 0 ? null : sizeOf(of.plan), labels: pieceLabels(of.plan, of.signs) },
  ...of.sizes.map((size) => ({ title: sizeTitle(size), labels: pieceLabels(size.plan, of.signs) })),
];

const pieceLabels = (plan: QuiltPlan, signs: ClothSigns): readonly PieceLabel[] =>
  plan.fabrics.flatMap((fabric) => {
    const { letter, name } = signOf(signs, fabric.id);
    return fabric.pieces.map((piece, i) => ({
      mark: cutMark(letter, i),
      cloth: briefName(name),
      cut: `${piece.count} of ${sizeOnPaper(piece.cut, plan.quilt.unit)}${cutApart(piece, plan)}`,
      usedFor: usesText(plan, piece.for),
    }));
  });

const cutApart = ({ shape, way, outlines }: ClothPiece, { quilt }: QuiltPlan): string => {
  if (way) return `, ${stripText(way, quilt.unit)}`;
  if (outlines.length > 1) return ', each for two templates';
  return shape === 'half-square' ? ', each cut once' : shape === 'quarter-square' ? ', each cut twice' : '';
};
