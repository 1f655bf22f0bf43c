// How would one cloth of a planned quilt be laid out, were it wider, sold otherwise, without an upright, or did no piece of it
// turn? Blocks, top and sizes stay; strips joined across the cloth, panels and binding follow.
import { type ClothNature, demandsOf, ledgerOf } from '#craft/cutting';
import type { Fabric, Quilt } from '#craft/design';
import { easingFor } from './cloth-ease.ts';
import { type ClothSearch, layDemands, naturesOf } from './cloth-plan.ts';
import { piecesTaken } from './pieces-taken.ts';
import type { FabricPlan, QuiltPlan } from './plan.ts';

export interface Recutting {
  readonly plan: QuiltPlan;
  /** Id of a cloth that the plan uses. */
  readonly fabric: string;
  /** What is otherwise about it. */
  readonly as?: Partial<Pick<Fabric, 'usableWidth' | 'bought' | 'print'>>;
  readonly turning: 'as-they-may' | 'none';
  readonly search: ClothSearch;
}

/** @returns null where a piece then has no room on the cloth */
export const recut = ({ plan, fabric, as = {}, turning, search }: Recutting): FabricPlan['laid'] | null => {
  const quilt: Quilt = {
    ...plan.quilt,
    fabrics: plan.quilt.fabrics.map((one) => (one.id === fabric ? { ...one, ...as } : one)),
  };
  const natures = naturesOf(quilt);
  const { set, drawn } = plan.top;
  const { pieces } = piecesTaken({ quilt, set, drawn, blocks: plan.blocks, natures });
  const { lines, problems } = ledgerOf(
    pieces.filter((piece) => piece.fabric === fabric),
    natures,
  );
  if (problems.length > 0) return null;
  const demands = demandsOf(lines.get(fabric) ?? []);
  const laid = layDemands({
    nature: natures.get(fabric) as ClothNature,
    demands: turning === 'none' ? demands.map((demand) => ({ ...demand, mayTurn: false })) : demands,
    search,
    // the least length is the same whatever less work would cost
    ...(quilt.layout === 'least' ? {} : { easing: easingFor(quilt) }),
  });
  return 'sheets' in laid && laid.left.length > 0 ? null : laid;
};
