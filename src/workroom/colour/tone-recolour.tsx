// Another cloth for a tone, in one block, in several or in the whole quilt; several cloths are drawn from, patch by patch.
import { useState } from 'react';
import { useBlockName, useQuilt, useRoom } from '#workroom/room';
import type { SeenCloth } from './seen-cloths.ts';
import { recolourTone, tonesOfQuilt } from './tone-edits.ts';
import { ClothPatch } from './value-ladder.tsx';

export const ToneRecolour = ({ cloths }: { readonly cloths: readonly SeenCloth[] }) => {
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const blockName = useBlockName();
  const tones = tonesOfQuilt(document);
  const [wanted, setWanted] = useState<string | null>(null);
  const [leftOut, setLeftOut] = useState<readonly string[]>([]);
  const [picked, setPicked] = useState<readonly string[] | null>(null);
  const use = tones.find(({ tone }) => tone === wanted) ?? tones[0];
  if (use === undefined) return null;
  const blocks = use.blocks.filter((id) => !leftOut.includes(id));
  const chosen = (picked ?? use.cloths).filter((id) => cloths.some((cloth) => cloth.id === id));
  const names = chosen.map((id) => cloths.find((cloth) => cloth.id === id)?.name ?? id);
  const isSame =
    picked === null || (chosen.length === use.cloths.length && chosen.every((id) => use.cloths.includes(id)));
  const give = () => {
    edit(`${names.join(', ')} for ${use.tone}`, (draft) =>
      recolourTone(draft, { tone: use.tone, cloths: chosen, blocks }),
    );
    say(
      `${names.join(', ')} for ${use.tone} in ${blocks.length === use.blocks.length ? 'every block' : `${blocks.length} of ${use.blocks.length} blocks`}`,
    );
    setPicked(null);
  };
  const toggled = (list: readonly string[], id: string): readonly string[] =>
    list.includes(id) ? list.filter((one) => one !== id) : [...list, id];
  return (
    <section>
      <h2>Recolour by tone</h2>
      <label className="field">
        <span>Tone</span>
        <select
          value={use.tone}
          onChange={(event) => {
            setWanted(event.target.value);
            setPicked(null);
            setLeftOut([]);
          }}
        >
          {tones.map(({ tone, blocks: all }) => (
            <option key={tone} value={tone}>
              {tone}, in {all.length === 1 ? '1 block' : `${all.length} blocks`}
            </option>
          ))}
        </select>
      </label>
      {use.blocks.length > 1 && (
        <fieldset className="tone-blocks">
          <legend>In these blocks</legend>
          {use.blocks.map((id) => (
            <label key={id} className="check">
              <input
                type="checkbox"
                checked={!leftOut.includes(id)}
                onChange={() => setLeftOut(toggled(leftOut, id))}
              />
              {blockName(id)}
            </label>
          ))}
          <button
            type="button"
            className="word-key"
            onClick={() => setLeftOut(blocks.length > 0 ? [...use.blocks] : [])}
          >
            {blocks.length > 0 ? 'None of them' : 'All of them'}
          </button>
        </fieldset>
      )}
      <fieldset className="tone-cloths" aria-label={`Cloths for ${use.tone}`}>
        {cloths.map(({ id, name, colour, photo }) => (
          <button
            key={id}
            type="button"
            className="swatch-key"
            aria-pressed={chosen.includes(id)}
            onClick={() => setPicked(toggled(chosen, id))}
          >
            <ClothPatch className="swatch" colour={colour} image={photo?.image} />
            {name}
          </button>
        ))}
      </fieldset>
      <p className="quiet">
        {chosen.length > 1
          ? `${chosen.length} cloths: each patch gets one of them, neighbours different ones.`
          : 'Press one cloth, or several to draw from.'}
      </p>
      <button type="button" disabled={chosen.length === 0 || blocks.length === 0 || isSame} onClick={give}>
        Give {use.tone} {chosen.length > 1 ? 'these cloths' : 'this cloth'}
      </button>
    </section>
  );
};
