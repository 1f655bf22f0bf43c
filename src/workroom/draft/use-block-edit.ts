// An edit of one block, made on it as it stands then.
import { useCallback } from 'react';
import { useQuilt } from '#workroom/room';
import type { Block } from './block-edits.ts';

/** A block that is gone meanwhile is left alone. */
export const useBlockEdit = (
  id: string | undefined,
): ((what: string, change: (own: Block) => void, gesture?: string) => void) => {
  const { edit } = useQuilt();
  return useCallback(
    (what, change, gesture) =>
      edit(
        what,
        (draft) => {
          const own = draft.blocks.find((block) => block.id === id);
          if (own !== undefined) change(own);
        },
        gesture,
      ),
    [edit, id],
  );
};
