// What is sewn, block by block and then the top, as addresses call it.
import type { BlockPlan, QuiltPlan } from '#craft';
import { asFirstPlaced } from '#paper/drawing';

/** How the top is called in addresses: no id of a block holds its sign. */
export const topEntry = '~top';

export const keyOfEntry = ({ id, colouring, mirror }: Pick<BlockPlan, 'id' | 'colouring' | 'mirror'>): string =>
  [id, ...(colouring === 'default' && !mirror ? [] : [colouring]), ...(mirror ? ['mirrored'] : [])].join('~');

/** As its first place in the top has it; null where the quilt has no such block. */
export const blockOfEntry = (plan: QuiltPlan, entry: string): BlockPlan | null => {
  const block = plan.blocks.find((one) => keyOfEntry(one) === entry);
  return block === undefined ? null : asFirstPlaced(plan, block);
};
