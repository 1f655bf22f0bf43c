// What follows from blocks by themselves, asked anew only when something that they depend on has changed.
import { useEffect, useMemo, useState } from 'react';
import type { BlockAnswer, Reply } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';

export interface BlockState {
  /** The last that could be drafted; null before the first. */
  readonly good: BlockAnswer | null;
  /** As it stands now. */
  readonly reply: Reply<BlockAnswer> | null;
}

/** What blocks by themselves rest on: it changes only when that does. */
export const useAsked = (): JsonObject => {
  const { blocks, fabrics, unit, seam, ruler } = useQuilt().document;
  return useMemo(
    () =>
      ({ format: 'seamstead-quilt', version: 1, unit, fabrics, blocks, ...rule(seam, ruler) }) as unknown as JsonObject,
    [blocks, fabrics, unit, seam, ruler],
  );
};

/** By id, for every block of the quilt. */
export const useBlocks = (asked: JsonObject): ReadonlyMap<string, BlockState> => {
  const { blocks } = useQuilt().document;
  const { planner } = useRoom();
  const [states, setStates] = useState<ReadonlyMap<string, BlockState>>(new Map());
  useEffect(() => {
    let isOvertaken = false;
    const ask = async () => {
      for (const { id } of blocks) {
        const reply = await planner.block(asked, id);
        if (isOvertaken) return;
        setStates((all) => new Map(all).set(id, { reply, good: reply.ok ? reply.value : (all.get(id)?.good ?? null) }));
      }
    };
    ask().catch(() => undefined); // the page is closing
    return () => {
      isOvertaken = true;
    };
  }, [asked, blocks, planner]);
  return states;
};

const rule = (seam: unknown, ruler: unknown): object => ({
  ...(seam === undefined ? {} : { seam }),
  ...(ruler === undefined ? {} : { ruler }),
});
