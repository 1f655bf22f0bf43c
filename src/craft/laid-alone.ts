// What cloth do some more pieces of a block take, cut by themselves? The first layout that is found: good enough for a few pieces.

import { laidFor, naturesOf, type WantedPiece } from '#craft/cloths';
import { type ClothNature, ledgerOf } from '#craft/cutting';
import type { BlockPlan, FabricPlan, QuiltPlan } from '#craft/plan';
import { pathsOf } from './pieces-taken.ts';

export interface LaidAlone {
  readonly fabric: string;
  /** Patches of each kind that are wanted, by its label. */
  readonly pieces: readonly { readonly label: string; readonly count: number }[];
  /** Before squaring and shrinkage. */
  readonly laid: FabricPlan['laid'];
}

/**
 * Cloth by cloth, in the order of the document. A scrappy piece is laid on the first cloth of its list; pieces that the quilt has on a
 * motif lie anywhere; a print that stands upright stands so in a block that is not turned.
 *
 * @param counts how many patches of each kind of piece, by its label; kinds without a count take none
 */
export const layAlone = (
  { quilt }: Pick<QuiltPlan, 'quilt'>,
  block: BlockPlan,
  counts: ReadonlyMap<string, number>,
): readonly LaidAlone[] => {
  const natures = naturesOf(quilt);
  const { lines, problems } = ledgerOf(
    block.pieces.flatMap((piece): readonly WantedPiece[] => {
      const count = counts.get(piece.label) ?? 0;
      if (count === 0) return [];
      const turn = natures.get(piece.fabric)?.print === 'none' ? null : 0;
      const { id, colouring, mirror } = block;
      return [
        {
          fabric: piece.fabric,
          cut: piece.cut.alone ?? piece.cut,
          lie: 'free',
          turn,
          count,
          path: pathsOf(quilt)(id),
          use: { role: 'block', block: id, colouring, mirror, turn, label: piece.label },
        },
      ];
    }),
    natures,
  );
  // each of them has its place in the quilt's own layout
  if (problems.length > 0) throw new Error(`pieces of a planned block do not fit their cloth: ${problems[0]?.code}`);
  return quilt.fabrics.flatMap(({ id }): readonly LaidAlone[] => {
    const own = lines.get(id);
    if (own === undefined) return [];
    const nature = natures.get(id) as ClothNature;
    return [
      {
        fabric: id,
        pieces: block.pieces.flatMap(({ label, fabric }) => {
          const count = counts.get(label) ?? 0;
          return fabric === id && count > 0 ? [{ label, count }] : [];
        }),
        laid: laidFor({ nature, lines: own, search: { steps: 0, solver: null } }),
      },
    ];
  });
};
