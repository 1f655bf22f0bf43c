// Colour: the quilt in its cloths or in their greys, the chosen cloth at the right, all cloths from light to dark below.
import { useCallback, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { DrawingView, placeOfKey, sceneOfQuilt, stripOfKey } from '#workroom/drawing';
import { ChoiceKeys } from '#workroom/fields';
import { useQuilt, useRoom } from '#workroom/room';
import { freeCloth } from './cloth-edits.ts';
import { ClothFields } from './cloth-fields.tsx';
import { ValueLadder } from './value-ladder.tsx';

type Look = 'colour' | 'grey';

export const ColourView = () => {
  const { document, answer, words, edit, problems } = useQuilt();
  const { say } = useRoom();
  const [look, setLook] = useState<Look>('colour');
  const [chosen, setChosen] = useState<string | null>(null);
  const [wanted, setWanted] = useState<string | null>(null);
  const cloth = document.fabrics.find(({ id }) => id === wanted) ?? document.fabrics[0];
  const picture = answer?.picture ?? null;
  const cloths = answer?.cloths;
  const scene = useMemo(() => {
    if (picture === null) return null;
    const coloured = sceneOfQuilt(picture, words.size);
    if (look === 'colour' || cloths === undefined) return coloured;
    return { ...coloured, colours: new Map(cloths.map(({ id, grey }) => [id, grey])) };
  }, [picture, cloths, words, look]);

  const choose = (key: string | null) => {
    setChosen(key);
    const strip = stripOfKey(key);
    const fabric = strip === null ? undefined : picture?.strips[strip]?.fabric;
    if (fabric !== undefined) setWanted(fabric);
  };
  const choosePatch = (key: string, patch: number) => {
    const placed = picture?.placed[placeOfKey(key) ?? -1];
    const fabric = placed?.fabrics?.[patch] ?? picture?.entries[placed?.entry ?? -1]?.patches[patch]?.fabric;
    if (fabric !== undefined) setWanted(fabric);
  };
  const add = useCallback(() => {
    const made = freeCloth(document.fabrics);
    edit('Add a cloth', (draft) => void draft.fabrics.push(made));
    setWanted(made.id);
    say(`${made.name} is added`);
  }, [document.fabrics, edit, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'add cloth', part: 'Colour', words: 'Add a cloth', keys: ['A'], run: add },
        {
          id: 'look',
          part: 'Colour',
          words: look === 'colour' ? 'Look at it in grey' : 'Look at it in colour',
          keys: ['G'],
          run: () => setLook(look === 'colour' ? 'grey' : 'colour'),
        },
      ],
      [add, look],
    ),
  );
  const near = answer?.notes.filter(({ code }) => code === 'fabric/values-near') ?? [];
  return (
    <div className="view-parts">
      <div className="stage">
        <div className="stage-keys">
          <ChoiceKeys
            label="Look at it"
            choices={[
              { value: 'colour', words: 'In colour' },
              { value: 'grey', words: 'In grey, for values' },
            ]}
            value={look}
            onChoose={setLook}
          />
        </div>
        {scene === null ? (
          <p className="empty" role="status">
            {problems.length > 0 ? 'It can be drawn when the problem above is mended.' : 'Drawing the quilt …'}
          </p>
        ) : (
          <DrawingView
            scene={scene}
            label={`The quilt in ${look}, ${words.size([scene.width, scene.height])}`}
            chosen={chosen}
            onChoose={choose}
            onPatch={choosePatch}
          />
        )}
        <ValueLadder chosen={cloth?.id ?? null} onChoose={setWanted} onAdd={add} />
      </div>
      <aside className="side" aria-label="This cloth">
        {near.length > 0 && (
          <section>
            <h2>
              <span className="problem-mark" aria-hidden="true">
                ◆
              </span>
              Values lie near
            </h2>
            {near.map(({ text }) => (
              <p key={text}>{text}</p>
            ))}
          </section>
        )}
        {cloth !== undefined && <ClothFields cloth={cloth} onRemoved={() => setWanted(null)} />}
      </aside>
    </div>
  );
};
