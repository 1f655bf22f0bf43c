// What is looked at in Colour, and how: the look, the colourway, the cloth that is chosen, and what can be done from anywhere in the view.
import { useCallback, useMemo, useState } from 'react';
import type { Sight } from '#craft/fabric';
import { type Command, useCommands } from '#workroom/commands';
import { useQuilt, useRoom } from '#workroom/room';
import { freeCloth } from './cloth-edits.ts';
import { addColourway, freeColourway } from './colourway-edits.ts';
import { type Look, looks, sightOf } from './looks.ts';
import { type SeenCloth, seenCloths } from './seen-cloths.ts';
import { drawAgain, isScrappy } from './tone-edits.ts';

export interface Colouring {
  readonly look: Look;
  readonly sight: Sight | null;
  /** Told as well, where no key shows it. */
  readonly lookAs: (look: Look) => void;
  readonly setLook: (look: Look) => void;
  /** Null: the quilt in its own cloths. */
  readonly colourway: string | null;
  readonly chooseWay: (id: string | null) => void;
  readonly isCompared: boolean;
  readonly compare: (isCompared: boolean) => void;
  readonly makeWay: () => void;
  /** All cloths as the colourway has them. */
  readonly cloths: readonly SeenCloth[];
  /** Id of the one that is chosen; the first where none is. */
  readonly chosen: string | undefined;
  readonly chooseCloth: (id: string | null) => void;
  readonly addCloth: () => void;
  readonly isScrappy: boolean;
  readonly drawAgain: () => void;
}

export const useColouring = (): Colouring => {
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const [look, setLook] = useState<Look>('colour');
  const [isCompared, compare] = useState(false);
  const [wantedWay, chooseWay] = useState<string | null>(null);
  const [wanted, chooseCloth] = useState<string | null>(null);
  const colourway = document.colourways?.some(({ id }) => id === wantedWay) ? wantedWay : null;
  const cloths = useMemo(() => seenCloths(document, colourway), [document, colourway]);
  const addCloth = useCallback(() => {
    const made = freeCloth(document.fabrics);
    edit('Add a cloth', (draft) => void draft.fabrics.push(made));
    chooseCloth(made.id);
    say(`${made.name} is added`);
  }, [document.fabrics, edit, say]);
  const makeWay = useCallback(() => {
    const made = freeColourway(document, null);
    if (made === null) return;
    edit('Make a colourway', (draft) => addColourway(draft, made));
    chooseWay(made.id);
    compare(true);
    say(`${made.title} is made: its cloths are those of the quilt until you change them`);
  }, [document, edit, say]);
  const again = useCallback(() => {
    edit('Draw the scrappy cloths again', drawAgain);
    say('The scrappy cloths are drawn again');
  }, [edit, say]);
  const lookAs = useCallback(
    (to: Look) => {
      setLook(to);
      say(looks.find(({ value }) => value === to)?.spoken ?? '');
    },
    [say],
  );
  const colouring = {
    look,
    sight: sightOf(look),
    lookAs,
    setLook,
    colourway,
    chooseWay,
    isCompared,
    compare,
    makeWay,
    cloths,
    chosen: (document.fabrics.find(({ id }) => id === wanted) ?? document.fabrics[0])?.id,
    chooseCloth,
    addCloth,
    isScrappy: isScrappy(document),
    drawAgain: again,
  };
  useColourCommands(colouring);
  return colouring;
};

const useColourCommands = (of: Colouring): void => {
  const { look, lookAs, isCompared, compare, makeWay, addCloth, isScrappy: scrappy, drawAgain: again } = of;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'add cloth', part: 'Colour', words: 'Add a cloth', keys: ['A'], run: addCloth },
        {
          id: 'look',
          part: 'Colour',
          words: look === 'grey' ? 'Look at it in colour' : 'Look at it in grey',
          keys: ['G'],
          run: () => lookAs(look === 'grey' ? 'colour' : 'grey'),
        },
        ...looks.slice(2).map(
          ({ value, words: name }): Command => ({
            id: `look ${value}`,
            part: 'Colour',
            words: `Look at it with ${name.toLowerCase()} eyes`,
            isOff: look === value,
            run: () => lookAs(value),
          }),
        ),
        {
          id: 'side by side',
          part: 'Colour',
          words: isCompared ? 'Back to the one quilt' : 'Colourways side by side',
          keys: ['W'],
          run: () => compare(!isCompared),
        },
        { id: 'make colourway', part: 'Colour', words: 'Make another colourway', run: makeWay },
        {
          id: 'draw again',
          part: 'Colour',
          words: 'Draw the scrappy cloths again',
          keys: ['D'],
          isOff: !scrappy,
          run: again,
        },
      ],
      [addCloth, look, lookAs, isCompared, compare, makeWay, scrappy, again],
    ),
  );
};
