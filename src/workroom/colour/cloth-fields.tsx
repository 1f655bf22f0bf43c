// One cloth: its name, its colour, how wide it lies, how much is bought, and what may take its place.
import { useId, useState } from 'react';
import { parseColour, usualWidth } from '#craft/fabric';
import { toNumber } from '#ground/exact';
import { LengthField } from '#workroom/fields';
import { buyWords, useGesture, useQuilt } from '#workroom/room';
import { type Cloth, exchange, isUsed } from './cloth-edits.ts';

export const ClothFields = ({ cloth, onRemoved }: { readonly cloth: Cloth; readonly onRemoved: () => void }) => {
  const { document, answer, edit } = useQuilt();
  const { id, name, colour } = cloth;
  const known = answer?.cloths.find((one) => one.id === id);
  const gesture = useGesture();
  const used = isUsed(document, id);
  const others = document.fabrics.filter((one) => one.id !== id);
  const change = (what: string, fields: Partial<Cloth>, gesture?: string) =>
    edit(what, (draft) => void Object.assign(draft.fabrics.find((one) => one.id === id) ?? {}, fields), gesture);
  return (
    <>
      <section>
        <h2>{name || id}</h2>
        <label className="field">
          <span>Name of the cloth</span>
          <input
            type="text"
            value={name ?? ''}
            placeholder={id}
            maxLength={200}
            onChange={(event) => change('Name the cloth', { name: event.target.value }, gesture.named(`name ${id}`))}
            onFocus={gesture.begin}
          />
        </label>
        <ColourField
          colour={colour}
          onChange={(to) => change('Colour the cloth', { colour: to }, gesture.named(`colour ${id}`))}
          onBegin={gesture.begin}
        />
        <LengthField
          label="Usable width"
          value={cloth.usableWidth ?? toNumber(usualWidth[document.unit])}
          unit={document.unit}
          onChange={(written) => change('Change the cloth’s width', { usableWidth: written })}
        />
        {known !== undefined && (
          <dl className="facts">
            <dt>To buy</dt>
            <dd>{buyWords([known.buy])}</dd>
            <dt>Value</dt>
            <dd>
              {known.value}, {Math.round(known.lightness)} of 100
            </dd>
          </dl>
        )}
      </section>
      <section>
        <h2>Another cloth in its place</h2>
        <div className="row">
          {others.map((other) => (
            <button
              key={other.id}
              type="button"
              className="swatch-key"
              disabled={!used}
              onClick={() =>
                edit(`${other.name || other.id} in place of ${name || id}`, (draft) =>
                  exchange(draft, { from: id, to: other.id }),
                )
              }
            >
              <span className="swatch" style={{ background: other.colour }} aria-hidden="true" />
              {other.name || other.id}
            </button>
          ))}
        </div>
        <p className="quiet">
          {used
            ? 'Everywhere in the quilt: blocks, borders, sashing and finish. Then this one can be removed.'
            : 'The quilt does not use this cloth yet.'}
        </p>
        <button
          type="button"
          disabled={used || others.length === 0}
          onClick={() => {
            edit('Remove the cloth', (draft) => {
              draft.fabrics = draft.fabrics.filter((one) => one.id !== id);
            });
            onRemoved();
          }}
        >
          Remove this cloth
        </button>
      </section>
    </>
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
