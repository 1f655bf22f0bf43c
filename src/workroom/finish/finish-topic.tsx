// One part of the finish: its fields and what it takes, its drawing, and how it is made.
import { memo, type ReactNode } from 'react';
import type { QuiltDocument } from '#craft/design';
import type { FinishPart, FinishTopic, WorkroomNote } from '#workroom/compute';
import { PaperDrawing } from '#workroom/drawing';
import { focusSoon, useQuilt, useRoom } from '#workroom/room';
import { BorderList } from './border-list.tsx';
import { addPart, type FinishKey, takeOutPart } from './finish-edits.ts';
import {
  BackingFields,
  BattingFields,
  BedFields,
  BindingFields,
  type FieldsOf,
  LabelFields,
  QuiltingFields,
  SleeveFields,
} from './finish-fields.tsx';
import { withKey, withoutKey } from './finish-ways.ts';
import { partNames, topicNames } from './part-names.ts';
import type { Prices } from './use-prices.ts';

/** Of the element that heads it. */
export const headingId = (topic: string): string => `finish-${topic}`;

const fieldsFor: Readonly<Record<FinishTopic, (of: FieldsOf) => ReactNode>> = {
  borders: () => <BorderList />,
  backing: BackingFields,
  batting: BattingFields,
  quilting: QuiltingFields,
  sleeve: SleeveFields,
  binding: BindingFields,
  label: LabelFields,
  bed: BedFields,
};

/** Borders are of the top, and quilting lines follow the batting. */
const keyOf: Readonly<Record<FinishTopic, FinishKey | null>> = {
  borders: null,
  backing: 'backing',
  batting: 'batting',
  quilting: null,
  sleeve: 'sleeve',
  binding: 'binding',
  label: 'label',
  bed: 'bed',
};

export const Topic = (of: {
  readonly topic: FinishTopic;
  readonly parts: readonly FinishPart[];
  readonly notes: readonly WorkroomNote[];
  readonly fields: FieldsOf;
}) => {
  const { topic, parts, notes, fields } = of;
  const { document } = useQuilt();
  const key = keyOf[topic];
  const isThere = key === null ? isOfThem(topic, document) : document.finish?.[key] !== undefined;
  const Fields = fieldsFor[topic];
  return (
    <section className="finish-part" aria-labelledby={headingId(topic)}>
      <h2 id={headingId(topic)} tabIndex={-1}>
        {topicNames[topic]}
      </h2>
      <div className="finish-fields">
        <Fields {...fields} />
        {key !== null && <PartKey part={key} isThere={isThere} prices={fields.prices} />}
      </div>
      <div className="finish-told">
        {notes.map(({ text, path }) => (
          <p key={`${path} ${text}`} className="finish-warning">
            <span className="problem-mark" aria-hidden="true">
              ◆
            </span>
            {text}
          </p>
        ))}
        {parts.length === 0 && !isThere && <p className="quiet">{absentWords(topic)}</p>}
        {parts.map((part) => (
          <Told key={part.heading} part={part} isHeaded={parts.length > 1 && part.heading !== topicNames[topic]} />
        ))}
      </div>
    </section>
  );
};

/** Borders are there where the top has some, quilting lines where there is batting. */
const isOfThem = (topic: FinishTopic, { top, finish }: QuiltDocument): boolean =>
  topic === 'borders' ? (top.borders ?? []).length > 0 : finish?.batting !== undefined;

const absentWords = (topic: FinishTopic): string => {
  const key = keyOf[topic];
  if (key !== null) return `No ${partNames[key]} is asked for.`;
  return topic === 'borders' ? 'The quilt has no borders.' : 'The batting says how far apart quilting lines may lie.';
};

/** It stays as it is while one types. */
const Told = memo(({ part, isHeaded }: { readonly part: FinishPart; readonly isHeaded: boolean }) => (
  <>
    {isHeaded && <h3>{part.heading}</h3>}
    {part.picture !== null && <PaperDrawing {...part.picture} label={`${part.heading}, drawn`} />}
    {part.lines.length === 1 ? (
      <p>{part.lines[0]}</p>
    ) : (
      <ol>
        {part.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    )}
    {part.table !== null && (
      // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it scrolls, and keys must be able to scroll it
      <section className="table-room" tabIndex={0} aria-label={`${part.heading}, listed`}>
        <table className="table-told">
          <thead>
            <tr>
              {part.table.head.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {part.table.rows.map((row) => (
              <tr key={row.join(' ')}>
                {row.map((cell, index) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a cell is known by its column
                  <td key={index}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    )}
  </>
));

/** Takes the part out, or adds it. */
const PartKey = ({
  part,
  isThere,
  prices,
}: {
  readonly part: FinishKey;
  readonly isThere: boolean;
  readonly prices: Prices;
}) => {
  const { edit } = useQuilt();
  const { say } = useRoom();
  const name = partNames[part];
  if (isThere)
    return (
      <div className="row">
        <button
          type="button"
          className="word-key"
          onClick={() => {
            edit(`Take out the ${name}`, (draft) => takeOutPart(draft, part));
            say(`The ${name} is taken out.`);
            focusSoon(headingId(part));
          }}
        >
          Take out the {name}
        </button>
        {prices.more(withoutKey(part)) !== '' && <span className="quiet">{prices.more(withoutKey(part))}</span>}
      </div>
    );
  return (
    <>
      <button
        type="button"
        onClick={() => {
          edit(`Add a ${name}`, (draft) => addPart(draft, part));
          say(`A ${name} is added.`);
          focusSoon(headingId(part));
        }}
      >
        Add a {name}
      </button>
      {prices.more(withKey(part)) !== '' && <p className="quiet">{prices.more(withKey(part))}</p>}
    </>
  );
};
