// How the top is set, and how large it is: rows and columns, what is every other place, what fills a set on point to its edge.
import { memo, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { Measured } from '#workroom/compute';
import { ChoiceKeys, ClothField, CountField, LengthField } from '#workroom/fields';
import { useQuilt, useRoom } from '#workroom/room';
import { usualPlain } from './cloths.ts';
import { FrameAll } from './frame-fields.tsx';
import { becoming, chosenOf, HeldSelect } from './held-select.tsx';
import { alternate, changeSet } from './kind-edits.ts';
import { type Counts, countsOf, mostLines, resize, type SetKind, setOf } from './top-edits.ts';
import { inUnit } from './written-length.ts';

const kinds: readonly { readonly value: SetKind; readonly words: string; readonly said: string }[] = [
  { value: 'straight', words: 'Straight', said: 'Set straight' },
  { value: 'on-point', words: 'On point', said: 'Set on point' },
  { value: 'sections', words: 'In sections', said: 'Set in sections' },
];

export const TopFields = memo(({ measured }: { readonly measured: Measured }) => {
  const { document, answer, words, edit } = useQuilt();
  const { say } = useRoom();
  const picture = answer?.picture ?? null;
  const { top } = document;
  const set = setOf(top);
  const size = countsOf(top, picture);
  const cloth = usualPlain(document);
  const become = (to: Counts) => edit('Resize the top', (draft) => resize(draft.top, { ...to, picture }));
  const setTo = useMemo(
    () => (kind: SetKind) => {
      const said = kinds.find(({ value }) => value === kind)?.said ?? '';
      edit(said, (draft) => changeSet(draft.top, { kind, picture, cloth }));
      say(said);
    },
    [edit, say, picture, cloth],
  );
  useCommands(
    useMemo(
      () =>
        kinds.map(
          ({ value, said }): Command => ({
            id: `set ${value}`,
            part: 'Set',
            words: said.replace('Set ', 'Set the top '),
            isOff: value === set,
            run: () => setTo(value),
          }),
        ),
      [set, setTo],
    ),
  );
  return (
    <section>
      <h2>The top</h2>
      <ChoiceKeys label="How it is set" choices={kinds} value={set} onChoose={setTo} />
      {size !== null && (
        <div className="pair">
          <CountField
            label="Rows"
            value={size.rows}
            least={1}
            most={mostLines}
            onChange={(count) => become({ rows: count, columns: size.columns })}
          />
          <CountField
            label="Columns"
            value={size.columns}
            least={1}
            most={mostLines}
            onChange={(count) => become({ rows: size.rows, columns: count })}
          />
        </div>
      )}
      <FrameAll measured={measured} />
      {set === 'on-point' && <OnPointFields />}
      {size !== null && <EveryOther />}
      {answer !== null && (
        <dl className="facts">
          <dt>Finished</dt>
          <dd>{words.nearSize(answer.figures.top)}</dd>
        </dl>
      )}
    </section>
  );
});

/** Our own steps: cut to the mark, a little to trim, and enough to let the blocks float. */
const floats = { in: ['0', '1/2', '1'], cm: ['0', '1', '2.5'] } as const;

const OnPointFields = () => {
  const { document, edit, words } = useQuilt();
  const { top, fabrics, unit } = document;
  const float = String(top.float ?? 0);
  const floatTo = (written: string) =>
    edit('Change what there is to trim', (draft) => {
      if (written === '0') delete draft.top.float;
      else draft.top.float = written;
    });
  return (
    <>
      <ClothField
        label="Setting triangles"
        fabrics={fabrics}
        value={top.settingFabric ?? null}
        onChange={(id) =>
          edit('Change the setting triangles', (draft) => void Object.assign(draft.top, { settingFabric: id ?? '' }))
        }
      />
      <ChoiceKeys
        label="Cut them larger, to trim"
        isLabelSeen
        choices={floats[unit].map((value) => ({
          value,
          words: value === '0' ? 'exact' : words.length(inUnit(value, unit) ?? 0),
        }))}
        value={floats[unit].find((value) => value === float) ?? null}
        onChoose={floatTo}
      />
      <LengthField label="Or larger by" value={float} unit={unit} sign="zero-or-more" onChange={floatTo} />
    </>
  );
};

const EveryOther = () => {
  const { document, answer, edit } = useQuilt();
  const { say } = useRoom();
  const picture = answer?.picture ?? null;
  const { top, blocks, fabrics } = document;
  const [wanted, setWanted] = useState('');
  const known = [
    ...blocks.map(({ id }) => chosenOf({ block: id })),
    ...fabrics.map(({ id }) => chosenOf({ plain: id })),
  ];
  const value = known.includes(wanted) ? wanted : chosenOf({ plain: usualPlain(document) });
  const isOnPoint = setOf(top) === 'on-point';
  return (
    <div className="every-other">
      <HeldSelect label={isOnPoint ? 'Between the blocks' : 'Every other place'} value={value} onChoose={setWanted} />
      <button
        type="button"
        onClick={() => {
          edit('Fill every other place', (draft) => alternate(draft.top, { picture, change: becoming(value) }));
          say(isOnPoint ? 'It lies between the blocks now' : 'It lies in every other place now');
        }}
      >
        Fill
      </button>
    </div>
  );
};
