// Borders, from the inside outward.
import { useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { ClothField, LengthField } from '#workroom/fields';
import { borderWords, useQuilt } from '#workroom/room';
import type { Top } from './top-edits.ts';

type Border = NonNullable<Top['borders']>[number];
type StripBorder = Extract<Border, { width: unknown }>;

const isStrip = (border: Border | undefined): border is StripBorder => border !== undefined && 'width' in border;

/** A quilt that has more is edited in its file. */
const most = 12;

export const BorderFields = () => {
  const { document, edit } = useQuilt();
  const { top, fabrics, unit, blocks } = document;
  const borders = top.borders ?? [];
  const first = fabrics.at(-1)?.id ?? '';
  const add = useCallback(
    () =>
      edit('Add a border', (draft) => {
        draft.top.borders ??= [];
        draft.top.borders.push({ width: unit === 'in' ? '3' : '8', fabric: first });
      }),
    [edit, unit, first],
  );
  const isFull = borders.length >= most;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'add border', part: 'Set', words: 'Add a border', keys: ['B'], isOff: isFull, run: add },
      ],
      [add, isFull],
    ),
  );
  const change = (index: number, to: (border: StripBorder) => void) =>
    edit('Change a border', (draft) => {
      const border = draft.top.borders?.[index];
      if (isStrip(border)) to(border);
    });
  return (
    <section>
      <h2>Borders</h2>
      {borders.length === 0 && <p className="quiet">None yet.</p>}
      <ol className="borders">
        {borders.map((border, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a border is known by its place
          <li key={index}>
            {isStrip(border) ? (
              <>
                <div className="pair">
                  <LengthField
                    label={borderWords(index + 1, borders.length)}
                    value={border.width}
                    unit={unit}
                    onChange={(written) => change(index, (draft) => void Object.assign(draft, { width: written }))}
                  />
                  <label className="field">
                    <span>Corners</span>
                    <select
                      value={border.corners ?? 'butted'}
                      onChange={(event) => {
                        const corners = event.target.value as NonNullable<StripBorder['corners']>;
                        change(index, (draft) => {
                          draft.corners = corners;
                          if (corners === 'squares') draft.cornerFabric ??= draft.fabric;
                          else delete draft.cornerFabric;
                        });
                      }}
                    >
                      <option value="butted">butted</option>
                      <option value="squares">squares</option>
                      <option value="mitred">mitred</option>
                    </select>
                  </label>
                </div>
                <ClothField
                  label="Cloth"
                  fabrics={fabrics}
                  value={border.fabric}
                  onChange={(id) => change(index, (draft) => void Object.assign(draft, { fabric: id ?? first }))}
                />
                {border.corners === 'squares' && (
                  <ClothField
                    label="Corner squares"
                    fabrics={fabrics}
                    value={border.cornerFabric ?? border.fabric}
                    onChange={(id) =>
                      change(index, (draft) => void Object.assign(draft, { cornerFabric: id ?? first }))
                    }
                  />
                )}
              </>
            ) : (
              <p>
                {borderWords(index + 1, borders.length)}, pieced of{' '}
                {blocks.find(({ id }) => id === border.pieced.block)?.title ?? border.pieced.block}
              </p>
            )}
            <button
              type="button"
              className="word-key"
              aria-label={`Take out: ${borderWords(index + 1, borders.length)}`}
              onClick={() => edit('Take a border out', (draft) => void draft.top.borders?.splice(index, 1))}
            >
              Take out
            </button>
          </li>
        ))}
      </ol>
      {!isFull && (
        <button type="button" onClick={add}>
          Add a border
        </button>
      )}
    </section>
  );
};
