// What can be done at a step by keys, whether it is a block's own or a batch of all blocks.
import type { Command } from '#workroom/commands';
import type { SewPlace, SewSight } from './sew-address.ts';
import type { StepCounterOf } from './step-counter.tsx';
import { fillScreen } from './use-filled-screen.ts';

export interface PlayingOf {
  readonly place: SewPlace;
  readonly goTo: (place: SewPlace) => void;
  /** Null where there is none. */
  readonly before: SewPlace | null;
  readonly after: SewPlace | null;
  readonly counter: StepCounterOf;
  readonly showAgain: () => void;
}

export const playingCommands = ({ place, goTo, before, after, counter, showAgain }: PlayingOf): readonly Command[] => {
  const { done, total, count } = counter;
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
      run: () => (after === null ? undefined : goTo(after)),
    },
    {
      id: 'step before',
      part: 'Sew',
      words: 'Back to the step before',
      keys: ['ArrowLeft', 'Backspace'],
      isOff: before === null,
      run: () => (before === null ? undefined : goTo(before)),
    },
    {
      id: 'one more sewn',
      part: 'Sew',
      words: 'One more sewn',
      keys: ['+', '='],
      isOff: done >= total,
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
      isOff: done >= total,
      run: () => count(total),
    },
    seeing('board', 'See it on the board', 'B'),
    seeing('machine', 'See it at the machine', 'M'),
    seeing('both', 'See it on the board and at the machine', 'V'),
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
  ];
};
