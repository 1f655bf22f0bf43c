// The patches that are chosen on the table: coloured, mirrored, turned, moved, taken out.
import { chosenBox } from '#craft/redrawing';
import { at } from '#ground/plane';
import { countWords, useQuilt } from '#workroom/room';
import { type Block, clothOf } from './block-edits.ts';
import { PlaceFields } from './place-fields.tsx';
import { RepeatFields } from './repeat-fields.tsx';
import { ToneSelect } from './tone-select.tsx';
import type { TableState } from './use-table.ts';

export const ChosenPatches = ({ block, table }: { readonly block: Block; readonly table: TableState }) => {
  const { drawn, chosen, tool } = table;
  const { document } = useQuilt();
  if (drawn === null) return null;
  const tones = [...new Set(chosen.map((index) => drawn.patches[index]?.tone ?? ''))];
  const [only] = tones;
  const box = chosenBox(drawn.patches, chosen);
  const cloth = only === undefined ? '' : clothOf(block, only);
  return (
    <section>
      <h2>{chosen.length === 0 ? 'No patch is chosen' : `${countWords(chosen.length, 'patch', 'patches')} chosen`}</h2>
      <label className="check">
        <input
          type="checkbox"
          checked={table.taps === 'add'}
          onChange={(event) => table.tapTo(event.target.checked ? 'add' : 'choose')}
        />
        Each tap takes one more
      </label>
      <div className="row">
        <button
          type="button"
          onClick={() =>
            table.choose(
              0,
              drawn.patches.map((_, index) => index),
            )
          }
        >
          Choose all
        </button>
        {chosen.length === 1 && only !== undefined && (
          <button
            type="button"
            onClick={() =>
              table.choose(
                chosen[0] ?? null,
                drawn.patches.flatMap(({ tone }, index) => (tone === only ? [index] : [])),
              )
            }
          >
            All of {document.fabrics.find(({ id }) => id === cloth)?.name || only}
          </button>
        )}
        {chosen.length > 0 && (
          <button type="button" onClick={() => table.choose(null)}>
            Choose none
          </button>
        )}
      </div>
      {chosen.length === 0 ? (
        <p className="quiet">
          Choose a patch in the drawing to colour, move, mirror, turn or repeat it; or rule a seam through it.
        </p>
      ) : (
        <>
          <ToneSelect
            label="Tone or cloth"
            tones={table.tones}
            value={tones.length === 1 ? (only ?? null) : null}
            onChange={table.colour}
          />
          <div className="row">
            <button type="button" onClick={() => table.mirror('left-right')}>
              Mirror across
            </button>
            <button type="button" onClick={() => table.mirror('top-bottom')}>
              Mirror down
            </button>
            <button type="button" onClick={table.turn}>
              Turn
            </button>
            <button type="button" onClick={table.takeOut}>
              Take out
            </button>
            {chosen.length > 1 && (
              <button type="button" onClick={table.join}>
                Take out the seams between
              </button>
            )}
          </div>
          {tool === 'move' && (
            <>
              <p className="quiet">Tap where their upper left corner is to lie, or move them with the arrow keys.</p>
              <PlaceFields value={at(box.x, box.y)} grid={drawn.grid} onChange={table.pointAt} />
            </>
          )}
          <RepeatFields key={`${box.width} ${box.height}`} box={box} table={table} />
        </>
      )}
    </section>
  );
};
