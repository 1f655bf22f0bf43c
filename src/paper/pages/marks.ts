// Under which marks of the cutting pages does a piece lie? So that it is taken from its pile and not cut again.
import type { BlockPlan, PieceUse, PlannedPiece, QuiltPlan, TopPiece } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { cutMark } from '#paper/cutting';

interface MarkedOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
}

/**
 * Marks of a cloth's sizes that hold pieces for a use, in the order of the cutting pages.
 *
 * @param of.cut one size alone, in the document's unit, whichever way it lies
 */
export const marksFor = (
  { plan, signs }: MarkedOf,
  of: {
    readonly fabric: string;
    readonly isFor: (use: PieceUse) => boolean;
    readonly cut?: readonly [number, number];
  },
): readonly string[] => {
  const lines = plan.fabrics.find(({ id }) => id === of.fabric)?.pieces ?? [];
  const { letter } = signOf(signs, of.fabric);
  return lines.flatMap((line, i) =>
    line.for.some(of.isFor) && (of.cut === undefined || isSize(line.cut, of.cut)) ? [cutMark(letter, i)] : [],
  );
};

/** Marks for a piece of a block, in one of its cloths; only those for blocks turned so, where that is asked. */
export const marksOfPiece = (
  of: MarkedOf,
  at: {
    readonly block: BlockPlan;
    readonly piece: PlannedPiece;
    readonly fabric: string;
    readonly turn?: PieceUse['turn'];
  },
): readonly string[] =>
  marksFor(of, {
    fabric: at.fabric,
    isFor: (use) =>
      use.block === at.block.id &&
      use.colouring === at.block.colouring &&
      use.mirror === at.block.mirror &&
      use.label === at.piece.label &&
      (at.turn === undefined || use.turn === at.turn),
  });

/** Marks for a strip or a plain piece of the top. */
export const marksOfTopPiece = (of: MarkedOf, piece: TopPiece, cut?: readonly [number, number]): readonly string[] =>
  marksFor(of, {
    fabric: piece.fabric,
    isFor: ({ block, role, label }) => block === null && role === piece.role && label === piece.label,
    ...(cut === undefined ? {} : { cut }),
  });

const isSize = (one: readonly [number, number], other: readonly [number, number]): boolean =>
  (isNear(one[0], other[0]) && isNear(one[1], other[1])) || (isNear(one[0], other[1]) && isNear(one[1], other[0]));

const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
