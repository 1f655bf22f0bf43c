// What can be done at a step, by keys as well.
import { useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { EntryLine, StepLine } from '#workroom/compute';
import { go } from '#workroom/room';
import type { SewPlace, SewSight } from './sew-address.ts';
import { fillScreen } from './use-filled-screen.ts';
import type { Sewing, StepPlace } from './use-sewing.ts';

export interface SewCommandsOf {
  readonly sewing: Sewing;
  readonly place: SewPlace;
  readonly entry: EntryLine;
  readonly step: StepLine;
  readonly before: StepPlace | null;
  readonly after: StepPlace | null;
  readonly showAgain: () => void;
}

export const useSewCommands = ({ sewing, place, entry, step, before, after, showAgain }: SewCommandsOf): void => {
  useCommands(
    useMemo((): readonly Command[] => {
      const { entries, goTo } = sewing;
      const done = sewing.countOf(step);
      const count = (to: number): void => sewing.count(step, to);
      const toStep = (to: StepPlace | null): void => {
        if (to !== null) goTo({ ...place, entry: to.entry.key, step: to.step.number });
      };
      const sewable = entries.filter((one) => one.steps.length > 0);
      const at = sewable.findIndex(({ key }) => key === entry.key);
      const toEntry = (to: EntryLine | undefined): void => {
        if (to !== undefined) goTo({ ...place, entry: to.key, step: 1 });
      };
      const seeing = (sight: SewSight, words: string, key: string): Command => ({
        id: `see ${sight}`,
        part: 'Sew',
        words,
        keys: [key],
        isOff: place.sight === sight,
        run: () => goTo({ ...place, sight }),
      });
      return [
        {
          id: 'next step',
          part: 'Sew',
          words: 'To the next step',
          keys: ['ArrowRight', ' '],
          isOff: after === null,
          run: () => toStep(after),
        },
        {
          id: 'step before',
          part: 'Sew',
          words: 'Back to the step before',
          keys: ['ArrowLeft', 'Backspace'],
          isOff: before === null,
          run: () => toStep(before),
        },
        {
          id: 'one more sewn',
          part: 'Sew',
          words: 'One more sewn',
          keys: ['+', '='],
          isOff: done >= step.total,
          run: () => count(done + 1),
        },
        {
          id: 'one less sewn',
          part: 'Sew',
          words: 'One less sewn',
          keys: ['-'],
          isOff: done === 0,
          run: () => count(done - 1),
        },
        {
          id: 'all sewn',
          part: 'Sew',
          words: 'All of this step are sewn',
          keys: ['A'],
          isOff: done >= step.total,
          run: () => count(step.total),
        },
        seeing('board', 'See it on the board', 'B'),
        seeing('machine', 'See it at the machine', 'M'),
        seeing('both', 'See it on the board and at the machine', 'V'),
        {
          id: 'wrong size',
          part: 'Sew',
          words: 'It came out the wrong size',
          keys: ['W'],
          isOff: !entry.isTold,
          run: () => go(sewing.wrongSizeOf(entry.key)),
        },
        { id: 'show again', part: 'Sew', words: 'Show the turn again', keys: ['R'], run: showAgain },
        {
          id: 'large type',
          part: 'Sew',
          words: place.type === 'large' ? 'Out of large type' : 'Large type, beside the machine',
          keys: place.type === 'large' ? ['Escape', 'F'] : ['F'],
          run: () => {
            if (place.type === 'usual') fillScreen();
            goTo({ ...place, type: place.type === 'large' ? 'usual' : 'large' });
          },
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
    }, [sewing, place, entry, step, before, after, showAgain]),
  );
};
