// How would the cloths of a planned quilt be laid out, were it finished otherwise, or were pieces of some kind not cut from
// them? Blocks, top and sizes stay; only the cloths that this touches are laid out anew.

import { type ClothSearch, naturesOf, planCloths } from '#craft/cloths';
import type { FinishDesign, Quilt } from '#craft/design';
import type { FabricPlan, PieceUse, QuiltPlan } from '#craft/plan';
import { piecesTaken } from './pieces-taken.ts';

export interface Refinishing {
  readonly plan: QuiltPlan;
  readonly finish: FinishDesign;
  /** Pieces that are left out of the reckoning. */
  readonly without?: ReadonlySet<PieceUse['role']>;
  /** Laid out anew, where they are still used. */
  readonly fabrics: ReadonlySet<string>;
  readonly search: ClothSearch;
}

/** @returns those of the named cloths that are used; null where a piece has no room on its cloth, or not all of them on what there is of it */
export const refinish = (of: Refinishing): readonly FabricPlan[] | null => {
  const { plan, finish, without, fabrics, search } = of;
  const quilt: Quilt = { ...plan.quilt, finish };
  const natures = naturesOf(quilt);
  const { set, drawn, pressing } = plan.top;
  const { pieces } = piecesTaken({ quilt, set, drawn, pressing, blocks: plan.blocks, natures });
  const mine = pieces.filter(({ fabric, use }) => fabrics.has(fabric) && !without?.has(use.role));
  const laid = planCloths({ quilt, pieces: mine, natures, search });
  return laid.problems.length > 0 ? null : laid.fabrics;
};
