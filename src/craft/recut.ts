// How would one cloth of a planned quilt be laid out, were it wider, sold otherwise, without an upright, or did no piece of it
// turn? Blocks, top and sizes stay; strips joined across the cloth, panels and binding follow.

import { type ClothSearch, naturesOf, planCloths } from '#craft/cloths';
import type { Fabric, Quilt } from '#craft/design';
import type { FabricPlan, QuiltPlan } from '#craft/plan';
import { piecesTaken } from './pieces-taken.ts';

export interface Recutting {
  readonly plan: QuiltPlan;
  /** Id of a cloth that the plan uses. */
  readonly fabric: string;
  /** What is otherwise about it. */
  readonly as?: Partial<Pick<Fabric, 'usableWidth' | 'bought' | 'print'>>;
  readonly turning: 'as-they-may' | 'none';
  readonly search: ClothSearch;
}

/** @returns null where a piece then has no room on the cloth, or not all of them on what there is of it */
export const recut = ({ plan, fabric, as = {}, turning, search }: Recutting): FabricPlan | null => {
  const quilt: Quilt = {
    ...plan.quilt,
    fabrics: plan.quilt.fabrics.map((one) => (one.id === fabric ? { ...one, ...as } : one)),
  };
  const natures = naturesOf(quilt);
  const { set, drawn, pressing } = plan.top;
  const { pieces } = piecesTaken({ quilt, set, drawn, pressing, blocks: plan.blocks, natures, asked: fabric });
  const mine = pieces.filter((piece) => piece.fabric === fabric);
  return planCloths({ quilt, pieces: mine, natures, search, turning }).fabrics[0] ?? null;
};
