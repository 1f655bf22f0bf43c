// Strips between the blocks.
import { memo, useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { ClothField, LengthField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import { usualStrip } from './top-edits.ts';

export const SashingFields = memo(() => {
  const { document, edit } = useQuilt();
  const { top, fabrics, unit } = document;
  const { sashing } = top;
  const first = fabrics[0]?.id ?? '';
  const put = useCallback(
    () =>
      edit('Put sashing between the blocks', (draft) => {
        draft.top.sashing = { width: usualStrip[unit], fabric: first };
      }),
    [edit, unit, first],
  );
  const takeOut = useCallback(
    () =>
      edit('Take the sashing out', (draft) => {
        delete draft.top.sashing;
      }),
    [edit],
  );
  const hasSashing = sashing !== undefined;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        hasSashing
          ? { id: 'sashing', part: 'Set', words: 'Take the sashing out', run: takeOut }
          : { id: 'sashing', part: 'Set', words: 'Put sashing between the blocks', run: put },
      ],
      [hasSashing, put, takeOut],
    ),
  );
  if (top.set === 'sections') return null;
  if (sashing === undefined) {
    return (
      <section>
        <h2>Sashing</h2>
        <button type="button" onClick={put}>
          Put sashing between the blocks
        </button>
      </section>
    );
  }
  const change = (what: string, to: (sashing: NonNullable<typeof top.sashing>) => void) =>
    edit(what, (draft) => {
      if (draft.top.sashing !== undefined) to(draft.top.sashing);
    });
  const { width } = sashing;
  const isOneWidth = typeof width !== 'object';
  return (
    <section>
      <h2>Sashing</h2>
      {isOneWidth ? (
        <LengthField
          label="Width"
          value={width}
          unit={unit}
          onChange={(written) => change('Change the sashing', (draft) => void Object.assign(draft, { width: written }))}
        />
      ) : (
        <div className="pair">
          {(['across', 'down'] as const).map((way) => (
            <LengthField
              key={way}
              label={way === 'across' ? 'Between columns' : 'Between rows'}
              value={width[way]}
              unit={unit}
              onChange={(written) =>
                change('Change the sashing', (draft) => {
                  if (typeof draft.width === 'object') draft.width[way] = written;
                })
              }
            />
          ))}
        </div>
      )}
      <ClothField
        label="Cloth"
        fabrics={fabrics}
        value={sashing.fabric}
        onChange={(id) => change('Change the sashing', (draft) => void Object.assign(draft, { fabric: id ?? first }))}
      />
      <ClothField
        label="Cornerstones"
        fabrics={fabrics}
        value={sashing.cornerstones ?? null}
        none="none"
        onChange={(id) =>
          change('Change the cornerstones', (draft) => {
            if (id === null) delete draft.cornerstones;
            else draft.cornerstones = id;
          })
        }
      />
      {top.set === 'on-point' ? (
        <p className="quiet">On point it goes round the outside too.</p>
      ) : (
        <label className="check">
          <input
            type="checkbox"
            checked={sashing.outer === true}
            onChange={(event) => {
              const { checked } = event.target;
              change('Change the sashing', (draft) => {
                if (checked) draft.outer = true;
                else delete draft.outer;
              });
            }}
          />
          Round the outside too
        </label>
      )}
      <button type="button" onClick={takeOut}>
        Take the sashing out
      </button>
    </section>
  );
});
