// Which plain pieces of a top fall between two marks and cannot be trimmed, so that the maker must know?
import type { Note, TopPiece, TopPlan } from '#craft/plan';

/** Triangles are trimmed after sewing, and what goes round the quilt is cut to measure along its length. */
export const topMarkNotes = (top: TopPlan): readonly Note[] => top.pieces.flatMap((piece) => notesOf(piece, top));

const notesOf = (piece: TopPiece, { set }: TopPlan): readonly Note[] => {
  const { cut, role, label } = piece;
  if (cut.gives > 1) return [];
  const isMeasured = role === 'border' || role === 'spacer';
  const narrow = cut.exact[0] < cut.exact[1] ? 0 : 1;
  return ([0, 1] as const)
    .filter((side) => !(isMeasured && side !== narrow) && !(cut.shape === 'square' && side === 1))
    .filter((side) => Math.abs(cut.size[side] - cut.exact[side]) > 1e-9)
    .map((side) => ({
      code: 'cutting/top-off-marks',
      level: 'warning',
      path: set.strips[piece.strips[0] as number]?.path ?? '/top',
      label,
      role,
      exact: cut.exact[side],
      size: cut.size[side],
    }));
};
