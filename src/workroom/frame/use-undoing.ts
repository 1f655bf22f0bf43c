// Undo and redo of a quilt, each telling what it undoes.
import { useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { canRedo, canUndo } from '#workroom/editing';
import { useRoom } from '#workroom/room';
import type { Desk, DeskState } from '#workroom/store';

export interface Undoing {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** What was done last, and what was undone last. */
  readonly last: string | undefined;
  readonly next: string | undefined;
}

export const useUndoing = (desk: Desk, editing: DeskState['editing']): Undoing => {
  const { say } = useRoom();
  const last = editing.steps[editing.done - 1]?.what;
  const next = editing.steps[editing.done]?.what;
  const [mayUndo, mayRedo] = [canUndo(editing), canRedo(editing)];
  const undo = useCallback(() => {
    if (last !== undefined) say(`Undone: ${last}`);
    desk.undo();
  }, [desk, last, say]);
  const redo = useCallback(() => {
    if (next !== undefined) say(`Done again: ${next}`);
    desk.redo();
  }, [desk, next, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'undo',
          part: 'Edit',
          words: last === undefined ? 'Undo' : `Undo: ${last}`,
          keys: ['Mod+Z'],
          isOff: !mayUndo,
          run: undo,
        },
        {
          id: 'redo',
          part: 'Edit',
          words: next === undefined ? 'Redo' : `Redo: ${next}`,
          keys: ['Mod+Shift+Z', 'Mod+Y'],
          isOff: !mayRedo,
          run: redo,
        },
      ],
      [last, next, mayUndo, mayRedo, undo, redo],
    ),
  );
  return { undo, redo, canUndo: mayUndo, canRedo: mayRedo, last, next };
};
