// What of a planned quilt belongs to one block: its entries, and the cloth that its pieces alone are cut from, laid out anew.

import { unitsAmong } from '#craft/blocks';
import { type ClothSearch, naturesOf, planCloths } from '#craft/cloths';
import type { Quilt } from '#craft/design';
import { length } from '#craft/measure';
import type { BlockPlan, QuiltPlan } from '#craft/plan';
import { setsOf, stageFor } from '#craft/ways';
import { toNumber } from '#ground/exact';
import { piecesTaken } from './pieces-taken.ts';

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
  return { ...plan, blocks: blocks.map((one) => madeAlone(one, quilt)), fabrics };
};

/** Units that are shared with other blocks are made for this one alone. */
const madeAlone = (block: BlockPlan, quilt: Quilt): BlockPlan => ({
  ...block,
  steps: block.steps.map((step) => {
    if (step.made === undefined) return step;
    const among = step.made.among.filter(({ id }) => id === block.id);
    const stage = stageFor({ ...step.made, seam: length(toNumber(quilt.seam)) });
    const sets = setsOf(stage, { way: step.made.way, units: unitsAmong({ among }) });
    return { ...step, made: { ...step.made, among, sets } };
  }),
});
