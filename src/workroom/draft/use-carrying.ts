// Blocks from quilt to quilt: copied here, put down in another tab or another quilt.
import { useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { go, quiltAddress, useQuilt, useRoom, useShelf } from '#workroom/room';
import type { Block } from './block-edits.ts';
import { carriedFrom, carriedIn, putCarried } from './carried.ts';

export interface Carrying {
  /** What the copied block is called; null where none is. */
  readonly copied: string | null;
  readonly copy: () => void;
  readonly paste: () => void;
}

export const useCarrying = (block: Block | undefined): Carrying => {
  const { id, document, edit } = useQuilt();
  const { shelf, say } = useRoom();
  const value = useShelf(shelf);
  const carried = useMemo(() => carriedIn(value), [value]);
  const first = carried?.blocks[0];
  const copy = useCallback(() => {
    const own = block === undefined ? null : carriedFrom(document, block.id);
    if (own === null) return;
    shelf.put(own);
    say(`${block?.title || block?.id} is copied, with its cloths.`);
  }, [block, document, shelf, say]);
  const paste = useCallback(() => {
    if (carried === null) return;
    const made = { id: '' };
    edit('Paste a block', (draft) => {
      made.id = putCarried(draft, carried);
    });
    go(quiltAddress(id, 'draft', made.id));
    say(`${first?.title || first?.id} is in this quilt.`);
  }, [carried, first, edit, id, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'carry block',
          part: 'Draft',
          words: 'Copy the block for another quilt',
          keys: ['Mod+C'],
          isOff: block === undefined,
          run: copy,
        },
        {
          id: 'paste block',
          part: 'Draft',
          words: 'Paste the copied block',
          keys: ['Mod+V'],
          isOff: carried === null,
          run: paste,
        },
      ],
      [block, carried, copy, paste],
    ),
  );
  return { copied: first === undefined ? null : first.title || first.id, copy, paste };
};
