// A log cabin or a block of the collection becomes a drawing of patches: one gesture, which undo takes back.
import { useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { JsonObject } from '#workroom/editing';
import { useRoom } from '#workroom/room';
import type { Block } from './block-edits.ts';
import { makeDrawing } from './drawing-edits.ts';
import { useBlockEdit } from './use-block-edit.ts';

export const MakeDrawing = ({ block, asked }: { readonly block: Block; readonly asked: JsonObject }) => {
  const edit = useBlockEdit(block.id);
  const { planner, say } = useRoom();
  const make = useCallback(async () => {
    const reply = await planner.drawn(asked, block.id);
    if (!reply.ok) {
      say(reply.problems[0]?.what ?? 'It cannot be drawn as it stands.');
      return;
    }
    edit('Make a drawing of it', (own) => {
      if (own.patches === undefined) makeDrawing(own, reply.value);
    });
    say('It is a drawing of patches now.');
  }, [planner, asked, block, edit, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'make drawing', part: 'Draft', words: 'Make a drawing of this block', run: () => void make() },
      ],
      [make],
    ),
  );
  return (
    <>
      <button type="button" onClick={() => void make()}>
        Make a drawing of it
      </button>
      <p className="quiet">Then seams can be ruled on it and patches moved. Undo takes it back.</p>
    </>
  );
};
