// Colour: the quilt in its cloths, in their greys or as other eyes see it; its colourways side by side; the chosen cloth at the right,
// all cloths from light to dark below.
import { useCallback, useMemo, useState } from 'react';
import { seenAs } from '#craft/fabric';
import { type Command, useCommands } from '#workroom/commands';
import { ClothPhotos, DrawingView, placeOfKey, sceneOfQuilt, stripOfKey } from '#workroom/drawing';
import { ChoiceKeys } from '#workroom/fields';
import { usePicture, useQuilt, useRoom } from '#workroom/room';
import { freeCloth } from './cloth-edits.ts';
import { ClothFields, OtherCloth } from './cloth-fields.tsx';
import { addColourway, freeColourway } from './colourway-edits.ts';
import { ColourwayFields, ColourwaysSideBySide, ownWay } from './colourways.tsx';
import { litFor } from './lit.ts';
import { type Look, looks, sightOf } from './looks.ts';
import { seenCloths } from './seen-cloths.ts';
import { drawAgain, isScrappy } from './tone-edits.ts';
import { ToneRecolour } from './tone-recolour.tsx';
import { ValueLadder } from './value-ladder.tsx';
import { ValueWarnings } from './value-warnings.tsx';

export const ColourView = () => {
  const { document, answer, words, edit, problems } = useQuilt();
  const { say } = useRoom();
  const [look, setLook] = useState<Look>('colour');
  const [isCompared, setCompared] = useState(false);
  const [wantedWay, setWantedWay] = useState<string | null>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  const [wanted, setWanted] = useState<string | null>(null);
  const [marks, setMarks] = useState<'shown' | 'hidden'>('shown');
  const ways = document.colourways ?? [];
  const colourway = ways.some(({ id }) => id === wantedWay) ? wantedWay : null;
  const sight = sightOf(look);
  const cloths = useMemo(() => seenCloths(document, colourway), [document, colourway]);
  const cloth = document.fabrics.find(({ id }) => id === wanted) ?? document.fabrics[0];
  const seen = cloths.find(({ id }) => id === cloth?.id);
  const picture = usePicture();
  const drawn = useMemo(() => (picture === null ? null : sceneOfQuilt(picture, words.nearSize)), [picture, words]);
  const scene = useMemo(
    () =>
      drawn === null
        ? null
        : {
            ...drawn,
            colours: new Map(cloths.map(({ id, colour }) => [id, sight === null ? colour : seenAs(colour, sight)])),
          },
    [drawn, cloths, sight],
  );
  const near = useMemo(() => (answer?.values ?? []).filter((one) => one.colourway === colourway), [answer, colourway]);
  const lit = useMemo(
    () => litFor({ near: marks === 'shown' ? near : [], problems, picture, document }),
    [near, marks, problems, picture, document],
  );

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
  const make = useCallback(() => {
    const made = freeColourway(document, null);
    if (made === null) return;
    edit('Make a colourway', (draft) => addColourway(draft, made));
    setWantedWay(made.id);
    setCompared(true);
    say(`${made.title} is made: its cloths are those of the quilt until you change them`);
  }, [document, edit, say]);
  const scrappy = isScrappy(document);
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
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'add cloth', part: 'Colour', words: 'Add a cloth', keys: ['A'], run: add },
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
          run: () => setCompared(!isCompared),
        },
        { id: 'make colourway', part: 'Colour', words: 'Make another colourway', run: make },
        {
          id: 'draw again',
          part: 'Colour',
          words: 'Draw the scrappy cloths again',
          keys: ['D'],
          isOff: !scrappy,
          run: again,
        },
      ],
      [add, look, lookAs, isCompared, make, scrappy, again],
    ),
  );
  const about = looks.find(({ value }) => value === look)?.about ?? '';
  return (
    <div className="view-parts">
      <div className="stage">
        <div className="stage-keys">
          <ChoiceKeys
            label="Look at it"
            choices={looks.map(({ value, words: name, spoken }) => ({ value, words: name, spoken }))}
            value={look}
            onChoose={setLook}
          />
          {!isCompared && ways.length > 0 && (
            <label className="way-field">
              <span className="unseen">Colourway</span>
              <select
                value={colourway ?? ''}
                onChange={(event) => setWantedWay(event.target.value === '' ? null : event.target.value)}
              >
                <option value="">{ownWay}</option>
                {ways.map(({ id, title }) => (
                  <option key={id} value={id}>
                    {title || id}
                  </option>
                ))}
              </select>
            </label>
          )}
          <button type="button" aria-pressed={isCompared} onClick={() => setCompared(!isCompared)}>
            Side by side
          </button>
        </div>
        {about !== '' && <p className="look-about quiet">{about}</p>}
        {scene === null ? (
          <p className="empty" role="status">
            {problems.length > 0 ? 'It can be drawn when what stands above is mended.' : 'Drawing the quilt …'}
          </p>
        ) : isCompared ? (
          <ColourwaysSideBySide scene={scene} sight={sight} chosen={colourway} onChoose={setWantedWay} onMake={make} />
        ) : (
          <ClothPhotos cloths={cloths} unit={document.unit} sight={sight}>
            <DrawingView
              scene={scene}
              label={`The quilt ${look === 'colour' || look === 'grey' ? `in ${look}` : `as ${look} eyes see it`}, ${words.size([scene.width, scene.height])}`}
              chosen={chosen}
              onChoose={choose}
              onPatch={choosePatch}
              lit={lit}
            />
          </ClothPhotos>
        )}
        <ValueLadder cloths={cloths} sight={sight} chosen={cloth?.id ?? null} onChoose={setWanted} onAdd={add} />
      </div>
      <aside className="side" aria-label="This cloth">
        <ValueWarnings
          near={near}
          cloths={cloths}
          colourway={colourway}
          onLook={lookAs}
          marks={marks}
          onMarks={setMarks}
        />
        <ColourwayFields chosen={colourway} onChoose={setWantedWay} />
        {cloth !== undefined && seen !== undefined && <ClothFields cloth={cloth} seen={seen} colourway={colourway} />}
        {colourway === null ? (
          <>
            {seen !== undefined && <OtherCloth cloth={seen} cloths={cloths} onRemoved={() => setWanted(null)} />}
            <ToneRecolour cloths={cloths} />
            {scrappy && (
              <section>
                <h2>Scrappy cloths</h2>
                <p className="quiet">
                  Drawn for you: neighbours differ, and each cloth is used about equally often. This is draw{' '}
                  {document.draw ?? 1}.
                </p>
                <button type="button" onClick={again}>
                  Draw again
                </button>
              </section>
            )}
          </>
        ) : (
          <section>
            <h2>The same in every colourway</h2>
            <p className="quiet">Which cloth lies where belongs to the quilt itself.</p>
            <button type="button" onClick={() => setWantedWay(null)}>
              To the quilt {ownWay.toLowerCase()}
            </button>
          </section>
        )}
      </aside>
    </div>
  );
};
