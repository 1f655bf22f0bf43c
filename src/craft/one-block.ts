// What of a planned quilt belongs to one block: its entries, and the cloth that its pieces alone are cut from, laid out anew.
import { type ClothSearch, planCloths } from './cloth-plan.ts';
import { naturesOf } from './natures.ts';
import { piecesTaken } from './pieces-taken.ts';
import type { QuiltPlan } from './plan.ts';

/**
 * The plan with nothing but this block in it: all its colourings and mirror images, their pieces' cloths with layouts and
 * purchases for them alone. Top and finish stay as they are, for pictures.
 *
 * @returns null where the top has no block of that id, or one that is made elsewhere
 */
export const planOfBlock = (plan: QuiltPlan, block: string, search: ClothSearch): QuiltPlan | null => {
  const blocks = plan.blocks.filter(({ id, patches }) => id === block && patches.length > 0);
  if (blocks.length === 0) return null;
  const { quilt } = plan;
  const { set, drawn, pressing } = plan.top;
  const natures = naturesOf(quilt);
  const pieces = piecesTaken({ quilt, set, drawn, pressing, blocks: plan.blocks, natures }).pieces.filter(
    ({ use }) => use.block === block,
  );
  const { fabrics } = planCloths({ quilt, pieces, natures, search });
  return { ...plan, blocks, fabrics };
};
