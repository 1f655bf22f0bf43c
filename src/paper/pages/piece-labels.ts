// Labels for what has been cut, one for each mark: to cut apart and pin to its pile.
import type { ClothPiece, QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { cutMark, stripText, usesText } from '#paper/cutting';
import { sizeOnPaper } from '#paper/lengths';

export interface PieceLabel {
  readonly mark: string;
  readonly cloth: string;
  /** "48 of 3½ × 3½ in" */
  readonly cut: string;
  readonly usedFor: string;
}

export const pieceLabels = (plan: QuiltPlan, signs: ClothSigns): readonly PieceLabel[] =>
  plan.fabrics.flatMap((fabric) => {
    const { letter, name } = signOf(signs, fabric.id);
    return fabric.pieces.map((piece, i) => ({
      mark: cutMark(letter, i),
      cloth: name,
      cut: `${piece.count} of ${sizeOnPaper(piece.cut, plan.quilt.unit)}${cutApart(piece, plan)}`,
      usedFor: usesText(plan, piece.for),
    }));
  });

const cutApart = ({ shape, way, outlines }: ClothPiece, { quilt }: QuiltPlan): string => {
  if (way) return `, ${stripText(way, quilt.unit)}`;
  if (outlines.length > 1) return ', each for two templates';
  return shape === 'half-square' ? ', each cut once' : shape === 'quarter-square' ? ', each cut twice' : '';
};
