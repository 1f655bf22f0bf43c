// What can be done to the finish, in the book of commands.
import { useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { go, quiltAddress, useQuilt, useRoom } from '#workroom/room';
import { addPart, type FinishKey, lackingParts, takeOutPart } from './finish-edits.ts';
import { partNames, topicNames } from './part-names.ts';

const parts: readonly FinishKey[] = ['backing', 'batting', 'binding', 'sleeve', 'label', 'bed'];

export const useFinishCommands = (): void => {
  const { id, document, edit } = useQuilt();
  const { say } = useRoom();
  const has = parts.filter((part) => document.finish?.[part] !== undefined).join(' ');
  const lacks = lackingParts(document).join(' ');
  useCommands(
    useMemo((): readonly Command[] => {
      const there = has.split(' ');
      return [
        {
          id: 'add all finish',
          part: 'Finish',
          words: 'Add what the finish lacks',
          keys: ['A'],
          isOff: lacks === '',
          run: () => {
            edit('Add what the finish lacks', (draft) => lackingParts(draft).map((part) => addPart(draft, part)));
            say(`Added: ${lacks.replaceAll(' ', ', ')}.`);
          },
        },
        ...parts.map((part): Command => {
          const isThere = there.includes(part);
          return {
            id: `finish ${part}`,
            part: 'Finish',
            words: isThere ? `Take out the ${partNames[part]}` : `Add a ${partNames[part]}`,
            run: () =>
              edit(isThere ? `Take out the ${partNames[part]}` : `Add a ${partNames[part]}`, (draft) =>
                isThere ? takeOutPart(draft, part) : addPart(draft, part),
              ),
          };
        }),
        ...Object.entries({ ...topicNames, prices: 'Prices' }).map(
          ([topic, words]): Command => ({
            id: `go finish ${topic}`,
            part: 'Go',
            words: `To the finish: ${words}`,
            run: () => go(quiltAddress(id, 'finish', topic)),
          }),
        ),
      ];
    }, [id, has, lacks, edit, say]),
  );
};
