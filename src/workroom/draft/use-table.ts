// The drafting table: a block's drawing under work, what is chosen on it, and the hand.
import type { JsonObject } from '#workroom/editing';
import type { Block } from './block-edits.ts';
import { type ChosenPatchesState, useChosenPatches } from './use-chosen-patches.ts';
import { type Hand, useHand } from './use-hand.ts';
import { type Redrawing, useRedrawing } from './use-redrawing.ts';

export interface TableState extends Redrawing, ChosenPatchesState, Hand {}

export const useTable = (block: Block | undefined, asked: JsonObject): TableState => {
  const redrawing = useRedrawing(block, asked);
  const chosen = useChosenPatches(redrawing);
  const hand = useHand(redrawing, chosen);
  return { ...redrawing, ...chosen, ...hand };
};
