// What a block is called: its own title, or the one that the plan gives it, as of the collection.
import { useCallback } from 'react';
import { useQuilt } from './room.tsx';

export const useBlockName = (): ((id: string) => string) => {
  const { document, answer } = useQuilt();
  const { blocks } = document;
  const entries = answer?.picture.entries;
  return useCallback(
    (id) => blocks.find((one) => one.id === id)?.title || entries?.find((one) => one.id === id)?.title || id,
    [blocks, entries],
  );
};
