// What can be done with the chosen places, as buttons, shortcuts and the list of commands do it alike.
import { useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { countWords, useQuilt, useRoom } from '#workroom/room';
import { usualPlain } from './cloths.ts';
import {
  changePlaces,
  columnWith,
  type Held,
  heldIn,
  mirrored,
  plain,
  rowWith,
  swapPlaces,
  turnedOn,
} from './place-edits.ts';
import { isBlock } from './top-edits.ts';
import type { Choice } from './use-choice.ts';

export interface PlacesDone {
  readonly held: readonly Held[];
  /** One change of all chosen places, one step. */
  readonly change: (what: string, how: (held: Held) => Held, said: string) => void;
  readonly turn: () => void;
  readonly mirror: () => void;
  readonly swap: () => void;
  readonly clear: () => void;
  readonly chooseRow: () => void;
  readonly chooseColumn: () => void;
  readonly chooseSame: () => void;
  readonly chooseAll: () => void;
}

/** @param all every place of the top */
export const usePlaces = (choice: Choice, all: readonly string[]): PlacesDone => {
  const { document, answer, edit } = useQuilt();
  const { say } = useRoom();
  const { places, choosePlaces, tapTo, taps } = choice;
  const { top } = document;
  const picture = answer?.picture ?? null;
  const heldAt = useMemo(() => heldIn(top, picture), [top, picture]);
  const held = useMemo(() => places.flatMap((path) => heldAt(path) ?? []), [places, heldAt]);
  const here = places.at(-1);
  const change = useCallback(
    (what: string, how: (held: Held) => Held, said: string) => {
      edit(what, (draft) => changePlaces(draft.top, { paths: places, picture, change: how }));
      say(said);
    },
    [edit, places, picture, say],
  );
  const blocks = held.filter(isBlock).length;
  const many = countWords(blocks, 'block', 'blocks');
  const first = held.find(isBlock);
  const turn = useCallback(
    () =>
      change(
        blocks === 1 ? 'Turn the block' : `Turn ${many}`,
        turnedOn,
        blocks === 1 ? turnedWords(((first?.turn ?? 0) + 90) % 360) : `${many} turned a quarter clockwise`,
      ),
    [change, blocks, many, first],
  );
  const mirror = useCallback(
    () =>
      change(
        blocks === 1 ? 'Mirror the block' : `Mirror ${many}`,
        mirrored,
        blocks === 1 ? (first?.mirror === true ? 'No longer mirrored' : 'Mirrored') : `${many} mirrored`,
      ),
    [change, blocks, many, first],
  );
  const swap = useCallback(() => {
    const [one, other] = places;
    if (one === undefined || other === undefined || places.length !== 2) return;
    edit('Swap two places', (draft) => swapPlaces(draft.top, { paths: [one, other], picture }));
    say('The two have changed places');
  }, [places, picture, edit, say]);
  const cloth = usualPlain(document);
  const clear = useCallback(
    () =>
      change(
        places.length === 1 ? 'Clear the place' : `Clear ${places.length} places`,
        plain(cloth),
        places.length === 1 ? 'A plain piece lies here now' : `${places.length} plain pieces lie here now`,
      ),
    [change, places.length, cloth],
  );
  const chooseThose = useCallback(
    (paths: readonly string[]) => {
      choosePlaces(paths);
      say(`${countWords(paths.length, 'place', 'places')} chosen`);
    },
    [choosePlaces, say],
  );
  const chooseRow = useCallback(() => here && chooseThose(rowWith(here, all)), [here, all, chooseThose]);
  const chooseColumn = useCallback(() => here && chooseThose(columnWith(here, all)), [here, all, chooseThose]);
  const chooseSame = useCallback(() => {
    const own = here === undefined ? undefined : heldAt(here);
    if (own === undefined) return;
    chooseThose(all.filter((path) => isAlike(own, heldAt(path))));
  }, [here, heldAt, all, chooseThose]);
  const chooseAll = useCallback(() => chooseThose(all), [all, chooseThose]);

  const [none, noBlock] = [places.length === 0, blocks === 0];
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'turn', part: 'Set', words: 'Turn what is chosen', keys: ['T'], isOff: noBlock, run: turn },
        { id: 'mirror', part: 'Set', words: 'Mirror what is chosen', keys: ['M'], isOff: noBlock, run: mirror },
        {
          id: 'swap',
          part: 'Set',
          words: 'Swap two chosen places',
          keys: ['X'],
          isOff: places.length !== 2,
          run: swap,
        },
        { id: 'clear', part: 'Set', words: 'Clear what is chosen', keys: ['Delete'], isOff: none, run: clear },
        {
          id: 'taps',
          part: 'Set',
          words: taps === 'choose' ? 'Choose several' : 'Choose one at a time',
          keys: ['S'],
          run: () => tapTo(taps === 'choose' ? 'add' : 'choose'),
        },
        { id: 'choose row', part: 'Set', words: 'Choose the row', keys: ['Shift+R'], isOff: none, run: chooseRow },
        {
          id: 'choose column',
          part: 'Set',
          words: 'Choose the column',
          keys: ['Shift+C'],
          isOff: none,
          run: chooseColumn,
        },
        {
          id: 'choose same',
          part: 'Set',
          words: 'Choose all of this block',
          keys: ['Shift+B'],
          isOff: none,
          run: chooseSame,
        },
        { id: 'choose all', part: 'Set', words: 'Choose every place', keys: ['Shift+A'], run: chooseAll },
      ],
      [
        noBlock,
        none,
        places.length,
        taps,
        tapTo,
        turn,
        mirror,
        swap,
        clear,
        chooseRow,
        chooseColumn,
        chooseSame,
        chooseAll,
      ],
    ),
  );
  return { held, change, turn, mirror, swap, clear, chooseRow, chooseColumn, chooseSame, chooseAll };
};

const turnedWords = (to: number): string => (to === 0 ? 'Turned back upright' : `Turned ${to}° clockwise`);

/** The same block, however it lies; or a plain piece of the same cloth. */
const isAlike = (own: Held, other: Held | undefined): boolean => {
  if (other === undefined) return false;
  if (isBlock(own)) return isBlock(other) && own.block === other.block;
  return !isBlock(other) && JSON.stringify(Object.values(own)[0]) === JSON.stringify(Object.values(other)[0]);
};
