// Borders, from the inside outward: each with its own fields, and further in or out by a key.
import { memo, useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { Measured } from '#workroom/compute';
import { ClothField, LengthField } from '#workroom/fields';
import { borderWords, useQuilt, useRoom } from '#workroom/room';
import {
  addPieced,
  type Border,
  type BorderUnit,
  borderUnits,
  fitMark,
  isStrip,
  moveBorder,
  type StripBorder,
  unitTitle,
} from './border-edits.ts';
import { ends } from './cloths.ts';
import { PiecedFields } from './pieced-fields.tsx';

/** A quilt that has more is edited in its file. */
const most = 12;

export const BorderFields = memo(({ measured }: { readonly measured: Measured }) => {
  const { document, edit, answer } = useQuilt();
  const { say } = useRoom();
  const { top, fabrics, unit } = document;
  const borders = top.borders ?? [];
  const first = fabrics.at(-1)?.id ?? '';
  const isFull = borders.length >= most;
  const add = useCallback(
    () =>
      edit('Add a border', (draft) => {
        draft.top.borders ??= [];
        draft.top.borders.push({ width: unit === 'in' ? '3' : '8', fabric: first });
      }),
    [edit, unit, first],
  );
  // where the measures have not come yet: it goes round the whole quilt
  const sides = measured.rings[borders.length] ?? answer?.figures.top ?? null;
  const addOf = useCallback(
    (of: BorderUnit) => {
      edit('Add a pieced border', (draft) =>
        addPieced(draft, { unit: of, sides, mark: fitMark[unit], cloths: ends(fabrics) }),
      );
      say(`${unitTitle(of)} added`);
    },
    [edit, say, sides, unit, fabrics],
  );
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'add border', part: 'Set', words: 'Add a border', keys: ['B'], isOff: isFull, run: add },
        ...borderUnits.map(
          (of): Command => ({
            id: `add border ${of}`,
            part: 'Set',
            words: `Add a pieced border: ${unitWords[of]}`,
            isOff: isFull,
            run: () => addOf(of),
          }),
        ),
      ],
      [add, addOf, isFull],
    ),
  );
  return (
    <section>
      <h2>Borders</h2>
      {borders.length === 0 && <p className="quiet">None yet.</p>}
      <ol className="borders">
        {borders.map((border, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a border is known by its place
          <li key={index}>
            {isStrip(border) ? (
              <StripFields border={border} index={index} count={borders.length} />
            ) : (
              <PiecedFields border={border} index={index} count={borders.length} measured={measured} />
            )}
            <BorderKeys index={index} count={borders.length} />
          </li>
        ))}
      </ol>
      {!isFull && (
        <>
          <button type="button" onClick={add}>
            Add a border
          </button>
          <fieldset className="choose-keys">
            <legend>Or a pieced one, of</legend>
            {borderUnits.map((of) => (
              <button key={of} type="button" onClick={() => addOf(of)}>
                {unitWords[of]}
              </button>
            ))}
          </fieldset>
        </>
      )}
    </section>
  );
});

const unitWords: Readonly<Record<BorderUnit, string>> = {
  squares: 'squares',
  sawtooth: 'sawtooth',
  geese: 'flying geese',
  keys: 'piano keys',
};

interface PlaceOf {
  readonly index: number;
  readonly count: number;
}

const StripFields = ({ border, index, count }: PlaceOf & { readonly border: StripBorder }) => {
  const { document, edit } = useQuilt();
  const { fabrics, unit } = document;
  const first = fabrics.at(-1)?.id ?? '';
  const change = (to: (border: StripBorder) => void) =>
    edit('Change a border', (draft) => {
      const own: Border | undefined = draft.top.borders?.[index];
      if (isStrip(own)) to(own);
    });
  return (
    <>
      <div className="pair">
        <LengthField
          label={borderWords(index + 1, count)}
          value={border.width}
          unit={unit}
          onChange={(written) => change((draft) => void Object.assign(draft, { width: written }))}
        />
        <label className="field">
          <span>Corners</span>
          <select
            value={border.corners ?? 'butted'}
            onChange={(event) => {
              const corners = event.target.value as NonNullable<StripBorder['corners']>;
              change((draft) => {
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
        onChange={(id) => change((draft) => void Object.assign(draft, { fabric: id ?? first }))}
      />
      {border.corners === 'squares' && (
        <ClothField
          label="Corner squares"
          fabrics={fabrics}
          value={border.cornerFabric ?? border.fabric}
          onChange={(id) => change((draft) => void Object.assign(draft, { cornerFabric: id ?? first }))}
        />
      )}
    </>
  );
};

const BorderKeys = ({ index, count }: PlaceOf) => {
  const { edit } = useQuilt();
  const { say } = useRoom();
  const name = borderWords(index + 1, count);
  const move = (by: 1 | -1) => {
    edit('Move a border', (draft) => moveBorder(draft.top.borders ?? [], { from: index, by }));
    say(by === 1 ? 'It lies further out now' : 'It lies further in now');
  };
  return (
    <div className="row">
      {count > 1 && (
        <>
          <button
            type="button"
            className="word-key"
            aria-label={`Further in: ${name}`}
            disabled={index === 0}
            onClick={() => move(-1)}
          >
            Further in
          </button>
          <button
            type="button"
            className="word-key"
            aria-label={`Further out: ${name}`}
            disabled={index === count - 1}
            onClick={() => move(1)}
          >
            Further out
          </button>
        </>
      )}
      <button
        type="button"
        className="word-key"
        aria-label={`Take out: ${name}`}
        onClick={() => edit('Take a border out', (draft) => void draft.top.borders?.splice(index, 1))}
      >
        Take out
      </button>
    </div>
  );
};
