// One cloth: its name, how it looks, how wide it lies, how much is bought, and what may take its place.
import { useId, useState } from 'react';
import { parseColour, usualWidth } from '#craft/fabric';
import { toNumber } from '#ground/exact';
import { ChoiceKeys, LengthField, NameField } from '#workroom/fields';
import { buyWords, useGesture, useQuilt, useRoom } from '#workroom/room';
import { type Cloth, changePrint, exchange, isUsed, type PrintWay, swapCloths } from './cloth-edits.ts';
import { asInQuilt, changeLook, type Look, removeCloth } from './colourway-edits.ts';
import { ClothPhoto } from './photo-fields.tsx';
import type { SeenCloth } from './seen-cloths.ts';
import { ClothPatch } from './value-ladder.tsx';

export interface ClothFieldsOf {
  /** As the quilt has it. */
  readonly cloth: Cloth;
  /** As the colourway shows it. */
  readonly seen: SeenCloth;
  readonly colourway: string | null;
}

export const ClothFields = ({ cloth, seen, colourway }: ClothFieldsOf) => {
  const { document, answer, edit } = useQuilt();
  const { id } = cloth;
  const known = answer?.cloths.find((one) => one.id === id);
  const gesture = useGesture();
  const way = document.colourways?.find((one) => one.id === colourway);
  const look = (what: string, fields: Look, named?: string) =>
    edit(what, (draft) => changeLook(draft, { cloth: id, colourway, look: fields }), named);
  const key = `${colourway ?? ''} ${id}`;
  return (
    <section>
      <h2>{seen.name}</h2>
      <NameField
        label="Name of the cloth"
        value={colourway === null ? cloth.name : way?.fabrics[id]?.name}
        otherwise={colourway === null ? id : cloth.name || id}
        named={`name ${key}`}
        onChange={(name, named) => look('Name the cloth', { name }, named)}
      />
      <ColourField
        colour={seen.colour}
        onChange={(to) => look('Colour the cloth', { colour: to }, gesture.named(`colour ${key}`))}
        onBegin={gesture.begin}
      />
      <ClothPhoto seen={seen} colourway={colourway} />
      {colourway === null && (
        <LengthField
          label="Usable width"
          value={cloth.usableWidth ?? toNumber(usualWidth[document.unit])}
          unit={document.unit}
          onChange={(written) =>
            edit('Change the cloth’s width', (draft) => {
              const own = draft.fabrics.find((one) => one.id === id);
              if (own !== undefined) own.usableWidth = written;
            })
          }
        />
      )}
      {colourway === null && (
        <ChoiceKeys
          label="Direction of its print"
          isLabelSeen
          choices={prints}
          value={cloth.print ?? 'none'}
          onChoose={(print) => edit('Change the print', (draft) => changePrint(draft, { cloth: id, print }))}
        />
      )}
      <dl className="facts">
        {known !== undefined && (
          <>
            <dt>To buy</dt>
            <dd>{buyWords([known.buy])}</dd>
          </>
        )}
        <dt>Value</dt>
        <dd>
          {seen.value}, {Math.round(seen.lightness)} of 100
        </dd>
      </dl>
      {colourway !== null && seen.isOwn && (
        <button
          type="button"
          onClick={() => edit('The cloth as in the quilt', (draft) => asInQuilt(draft, { cloth: id, colourway }))}
        >
          As in the quilt itself
        </button>
      )}
    </section>
  );
};

const prints: readonly { readonly value: PrintWay; readonly words: string; readonly spoken: string }[] = [
  { value: 'none', words: 'None', spoken: 'None: it may lie any way' },
  { value: 'one-way', words: 'One way', spoken: 'One way: it has a top' },
  { value: 'two-way', words: 'Two ways', spoken: 'Two ways: the same upside down' },
];

type Way = 'place' | 'exchange';

/** Another cloth takes its place, or the two change places; a cloth that nothing uses can go. */
export const OtherCloth = (of: {
  readonly cloth: SeenCloth;
  readonly cloths: readonly SeenCloth[];
  readonly onRemoved: () => void;
}) => {
  const { cloth, cloths, onRemoved } = of;
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const [way, setWay] = useState<Way>('place');
  const used = isUsed(document, cloth.id);
  const others = cloths.filter(({ id }) => id !== cloth.id);
  const take = (other: SeenCloth) => {
    if (way === 'place') {
      edit(`${other.name} in place of ${cloth.name}`, (draft) => exchange(draft, { from: cloth.id, to: other.id }));
      say(`${other.name} lies where ${cloth.name} lay`);
      return;
    }
    edit(`${cloth.name} and ${other.name} change places`, (draft) =>
      swapCloths(draft, { one: cloth.id, other: other.id }),
    );
    say(`${cloth.name} and ${other.name} have changed places`);
  };
  return (
    <section>
      <h2>Another cloth for {cloth.name}</h2>
      <ChoiceKeys
        label="What the other cloth does"
        choices={[
          { value: 'place', words: 'Takes its place' },
          { value: 'exchange', words: 'Changes places' },
        ]}
        value={way}
        onChoose={setWay}
      />
      <div className="row">
        {others.map((other) => (
          <button
            key={other.id}
            type="button"
            className="swatch-key"
            disabled={!used && way === 'place'}
            onClick={() => take(other)}
          >
            <ClothPatch className="swatch" colour={other.colour} image={other.photo?.image} />
            {other.name}
          </button>
        ))}
      </div>
      <p className="quiet">
        {used
          ? 'Everywhere in the quilt: blocks, borders, sashing and finish.'
          : 'The quilt does not use this cloth yet: give it to a tone, or remove it.'}
      </p>
      <button
        type="button"
        disabled={used || others.length === 0}
        onClick={() => {
          edit('Remove the cloth', (draft) => removeCloth(draft, cloth.id));
          say(`${cloth.name} is removed`);
          onRemoved();
        }}
      >
        Remove this cloth
      </button>
    </section>
  );
};

/** Picked, or written as #rrggbb. */
const ColourField = (of: {
  readonly colour: string;
  readonly onChange: (colour: string) => void;
  readonly onBegin: () => void;
}) => {
  const { colour, onChange, onBegin } = of;
  const [draft, setDraft] = useState<string | null>(null);
  const id = useId();
  const read = parseColour(draft ?? colour);
  const take = () => {
    if (!read.ok) return;
    if (draft !== null) onChange(read.value);
    setDraft(null);
  };
  const isRefused = !read.ok;
  return (
    <div className="field">
      <span aria-hidden="true">Colour</span>
      <div className="colour-field">
        <input
          type="color"
          aria-label="Pick the colour"
          onFocus={onBegin}
          value={read.ok ? read.value : colour}
          onChange={(event) => onChange(event.target.value)}
        />
        <input
          type="text"
          aria-label="Colour, written"
          onFocus={onBegin}
          autoComplete="off"
          spellCheck={false}
          value={draft ?? colour}
          aria-invalid={isRefused}
          aria-describedby={isRefused ? id : undefined}
          onChange={(event) => setDraft(event.target.value)}
          onBlur={take}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take();
          }}
        />
      </div>
      {isRefused && (
        <span className="field-problem" id={id} role="alert">
          ◆ This is not a colour. Write it like #b1452f.
        </span>
      )}
    </div>
  );
};
