// Pieces that finish so narrow that no mark of the ruler tells them from their seams.
import type { Cut, CuttingProblem } from '#craft/cutting';
import { type Length, length } from '#craft/measure';
import type { BlockPlan, TopPiece } from '#craft/plan';
import { type Rational, toNumber } from '#ground/exact';

/** @param ruler the finest mark: a side under half of it goes down to nothing */
export const thinPieces = (of: {
  readonly blocks: readonly BlockPlan[];
  readonly top: readonly TopPiece[];
  readonly ruler: Rational;
  readonly pathOf: (block: string) => string;
  readonly topPathOf: (piece: TopPiece) => string;
}): readonly CuttingProblem[] => {
  const ruler = length(toNumber(of.ruler));
  const narrow = ({ finished }: Cut): Length => length(Math.min(...finished));
  const thin = ({ cut }: { readonly cut: Cut }): boolean => narrow(cut) < ruler / 2 - 1e-9;
  const inBlocks = of.blocks.flatMap((block) =>
    block.pieces.filter(thin).map((piece) => ({ piece, block: block.id, path: of.pathOf(block.id) })),
  );
  const inTop = of.top.filter(thin).map((piece) => ({ piece, block: null, path: of.topPathOf(piece) }));
  return [...inBlocks, ...inTop].map(({ piece, block, path }) => ({
    code: 'cutting/nothing-left',
    path,
    block,
    label: piece.label,
    finished: narrow(piece.cut),
    ruler,
  }));
};
