// Colourways: the same quilt in other cloths, side by side as live pictures; the chosen one is named, copied and edited.
import { useCallback, useMemo } from 'react';
import { type Sight, seenAs } from '#craft/fabric';
import { type Command, useCommands } from '#workroom/commands';
import { ClothPhotos, type Scene, SmallPicture } from '#workroom/drawing';
import { NameField } from '#workroom/fields';
import { useQuilt, useRoom } from '#workroom/room';
import { addColourway, freeColourway, mostColourways, removeColourway } from './colourway-edits.ts';
import { seenCloths } from './seen-cloths.ts';

export const ownWay = 'As drawn';

export interface ColourwaysOf {
  readonly chosen: string | null;
  readonly onChoose: (id: string | null) => void;
}

/** @param scene of the quilt; colourways change nothing in it but the colours */
export const ColourwaysSideBySide = (
  of: ColourwaysOf & { readonly scene: Scene; readonly sight: Sight | null; readonly onMake: () => void },
) => {
  const { document } = useQuilt();
  const ways = [
    { id: null, title: ownWay },
    ...(document.colourways ?? []).map(({ id, title }) => ({ id, title: title || id })),
  ];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it
    <section className="colourways" aria-label="Colourways side by side" tabIndex={0}>
      <ul>
        {ways.map(({ id, title }) => (
          <li key={id ?? ''}>
            <button
              type="button"
              className="colourway-key"
              aria-pressed={id === of.chosen}
              onClick={() => of.onChoose(id)}
            >
              <ColourwayPicture scene={of.scene} colourway={id} sight={of.sight} />
              <span>{title}</span>
            </button>
          </li>
        ))}
        <li className="colourway-new">
          <button type="button" disabled={ways.length > mostColourways} onClick={of.onMake}>
            Make another colourway
          </button>
          {ways.length === 1 && <p className="quiet">The same quilt in other cloths: it begins with these.</p>}
        </li>
      </ul>
    </section>
  );
};

/** Two fit side by side where the stage is narrow, three where it is wide. */
const picturePx = (): number => (window.innerWidth <= 1024 ? 150 : window.innerWidth < 1440 ? 210 : 300);

const ColourwayPicture = (of: {
  readonly scene: Scene;
  readonly colourway: string | null;
  readonly sight: Sight | null;
}) => {
  const { document } = useQuilt();
  const { scene, colourway, sight } = of;
  const cloths = useMemo(() => seenCloths(document, colourway), [document, colourway]);
  const shown = useMemo(
    () => ({
      ...scene,
      colours: new Map(cloths.map(({ id, colour }) => [id, sight === null ? colour : seenAs(colour, sight)])),
    }),
    [scene, cloths, sight],
  );
  return (
    <ClothPhotos cloths={cloths} unit={document.unit} sight={sight}>
      <SmallPicture scene={shown} sidePx={picturePx()} alt="" />
    </ClothPhotos>
  );
};

/** The name of the chosen colourway, and what is done with it. */
export const ColourwayFields = ({ chosen, onChoose }: ColourwaysOf) => {
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const way = document.colourways?.find(({ id }) => id === chosen);
  const isFull = (document.colourways?.length ?? 0) >= mostColourways;
  const copy = useCallback(() => {
    const made = freeColourway(document, chosen);
    if (made === null) return;
    edit('Copy the colourway', (draft) => addColourway(draft, made));
    onChoose(made.id);
    say(`${made.title} is made`);
  }, [document, chosen, edit, onChoose, say]);
  const remove = useCallback(() => {
    if (way === undefined) return;
    edit('Remove the colourway', (draft) => removeColourway(draft, way.id));
    onChoose(null);
    say(`${way.title || way.id} is removed`);
  }, [way, edit, onChoose, say]);
  const name = way?.title || way?.id;
  useCommands(
    useMemo(
      (): readonly Command[] =>
        name === undefined
          ? []
          : [
              { id: 'copy colourway', part: 'Colour', words: `Copy the colourway ${name}`, isOff: isFull, run: copy },
              { id: 'remove colourway', part: 'Colour', words: `Remove the colourway ${name}`, run: remove },
            ],
      [name, isFull, copy, remove],
    ),
  );
  if (way === undefined) return null;
  return (
    <section>
      <h2>Colourway</h2>
      <NameField
        label="Name of the colourway"
        value={way.title}
        otherwise={way.id}
        named={`colourway ${way.id}`}
        onChange={(title, gesture) =>
          edit(
            'Name the colourway',
            (draft) => void Object.assign(draft.colourways?.find(({ id }) => id === way.id) ?? {}, { title }),
            gesture,
          )
        }
      />
      <div className="row">
        <button type="button" onClick={copy} disabled={isFull}>
          Copy it
        </button>
        <button type="button" onClick={remove}>
          Remove it
        </button>
      </div>
      <p className="quiet">
        A colourway gives cloths other names, colours and photographs. What is cut and sewn stays the same.
      </p>
    </section>
  );
};
