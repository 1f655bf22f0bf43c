// What can be done at a step of a block or the top, by keys as well.
import { useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { EntryLine } from '#workroom/compute';
import { go } from '#workroom/room';
import { type PlayingOf, playingCommands } from './playing-commands.ts';
import type { Sewing } from './use-sewing.ts';

export const useSewCommands = (of: {
  readonly sewing: Sewing;
  readonly entry: EntryLine;
  readonly playing: PlayingOf;
}): void => {
  const { sewing, entry, playing } = of;
  useCommands(
    useMemo((): readonly Command[] => {
      const sewable = sewing.entries.filter((one) => one.steps.length > 0);
      const at = sewable.findIndex(({ key }) => key === entry.key);
      const toEntry = (to: EntryLine | undefined): void => {
        if (to !== undefined) playing.goTo({ ...playing.place, entry: to.key, step: 1 });
      };
      return [
        ...playingCommands(playing),
        {
          id: 'wrong size',
          part: 'Sew',
          words: 'It came out the wrong size',
          keys: ['W'],
          isOff: !entry.isTold,
          run: () => go(sewing.wrongSizeOf(entry.key)),
        },
        {
          id: 'next to sew',
          part: 'Sew',
          words: 'To the next block, or the top',
          keys: ['N'],
          isOff: sewable[at + 1] === undefined,
          run: () => toEntry(sewable[at + 1]),
        },
        {
          id: 'sewn before',
          part: 'Sew',
          words: 'To the block before',
          keys: ['P'],
          isOff: sewable[at - 1] === undefined,
          run: () => toEntry(sewable[at - 1]),
        },
      ];
    }, [sewing, entry, playing]),
  );
};
