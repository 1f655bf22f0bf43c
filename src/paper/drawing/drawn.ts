// Which cloth is each patch of a placed block cut from? Where tones are drawn from lists, every place has its own.
import type { BlockPlan, PlannedPatch, QuiltPlan } from '#craft';
import { entryKey } from './placed.ts';

/** @param place index into the placed blocks of the top */
export const patchesAt = (plan: QuiltPlan, place: number, entry: BlockPlan): readonly PlannedPatch[] => {
  const drawn = plan.top.drawn[place];
  return drawn ? entry.patches.map((patch, i) => ({ ...patch, fabric: drawn[i] ?? patch.fabric })) : entry.patches;
};

export const isScrappyAt = (plan: QuiltPlan, place: number): boolean => Boolean(plan.top.drawn[place]);

/** A block as its first place in the top has it: what stands for all of them in a picture. */
export const asFirstPlaced = (plan: QuiltPlan, block: BlockPlan): BlockPlan => {
  const key = entryKey({ block: block.id, colouring: block.colouring, mirror: block.mirror });
  const place = plan.top.set.placed.findIndex((placed) => entryKey(placed) === key);
  return place < 0 ? block : { ...block, patches: patchesAt(plan, place, block) };
};
