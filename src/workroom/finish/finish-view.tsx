// Finish: what goes round the quilt, and what lies under it, part by part: its drawing, its fields and what it takes beside it, and how it
// is made, in the words of the printed pages.
import { type ReactNode, useEffect, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { FinishPart, FinishTopic, WorkroomNote } from '#workroom/compute';
import { PaperDrawing } from '#workroom/drawing';
import { quiltAddress, useLook, useQuilt, useRoom, type Within } from '#workroom/room';
import { BorderList } from './border-list.tsx';
import { addPart, type FinishKey, lackingParts, takeOutPart } from './finish-edits.ts';
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
import { FinishSum } from './finish-sum.tsx';
import { withKey, withoutKey } from './finish-ways.ts';
import { partNames, topicNames } from './part-names.ts';
import { PriceFields } from './price-fields.tsx';
import { type Prices, usePrices } from './use-prices.ts';

/** The look takes in all of the finish. */
const all = {};

export const FinishView = ({ within }: { readonly within: Within }) => {
  const { answer, problems } = useQuilt();
  const seen = useLook('finish', all);
  const prices = usePrices();
  const [topic] = within;
  useFinishCommands();
  useTopicInSight(topic, seen !== null);
  return (
    <div className="finish">
      <div className="finish-inner">
        {seen === null ? (
          <p className="empty" role="status">
            {problems.length > 0 ? 'It can be told when the problem above is mended.' : 'Working it out …'}
          </p>
        ) : (
          <>
            <FinishSum seen={seen} prices={prices} />
            {seen.topics.map((one) => (
              <Topic
                key={one.topic}
                topic={one.topic}
                parts={one.parts}
                notes={notesOf(one.topic, answer?.notes ?? [])}
                fields={{ figures: seen.figures, prices }}
              />
            ))}
            <PriceFields />
            <section className="finish-minded" aria-labelledby="finish-minded">
              <h2 id="finish-minded">To mind</h2>
              {seen.cautions.map(({ heading, lines }) => (
                <div key={heading}>
                  <h3>{heading}</h3>
                  {lines.map((line) => (
                    <p key={line}>{line}</p>
                  ))}
                </div>
              ))}
            </section>
          </>
        )}
      </div>
    </div>
  );
};

/** The address of a part leads to it. */
const useTopicInSight = (topic: string | undefined, isThere: boolean): void => {
  useEffect(() => {
    if (topic === undefined || !isThere) return;
    const heading = document.getElementById(headingId(topic));
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  }, [topic, isThere]);
};

const headingId = (topic: string): string => `finish-${topic}`;

const notesOf = (topic: FinishTopic, notes: readonly WorkroomNote[]): readonly WorkroomNote[] =>
  notes.filter(({ path }) => path.startsWith(topic === 'borders' ? '/top/borders' : `/finish/${topic}`));

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

const Topic = (of: {
  readonly topic: FinishTopic;
  readonly parts: readonly FinishPart[];
  readonly notes: readonly WorkroomNote[];
  readonly fields: FieldsOf;
}) => {
  const { topic, parts, notes, fields } = of;
  const { document } = useQuilt();
  const key = keyOf[topic];
  const isThere = key === null || document.finish?.[key] !== undefined;
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
        {parts.length === 0 && <p className="quiet">{absentWords(topic)}</p>}
        {parts.map((part) => (
          <Told key={part.heading} part={part} isHeaded={parts.length > 1 && part.heading !== topicNames[topic]} />
        ))}
      </div>
    </section>
  );
};

const absentWords = (topic: FinishTopic): string => {
  const key = keyOf[topic];
  return key === null ? 'The quilt has no borders.' : `No ${partNames[key]} is asked for.`;
};

const Told = ({ part, isHeaded }: { readonly part: FinishPart; readonly isHeaded: boolean }) => (
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
);

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
        }}
      >
        Add a {name}
      </button>
      {prices.more(withKey(part)) !== '' && <p className="quiet">{prices.more(withKey(part))}</p>}
    </>
  );
};

const parts: readonly FinishKey[] = ['backing', 'batting', 'binding', 'sleeve', 'label', 'bed'];

const useFinishCommands = (): void => {
  const { id, document, edit } = useQuilt();
  const { say } = useRoom();
  const has = parts.filter((part) => document.finish?.[part] !== undefined).join(' ');
  const lacks = lackingParts(document).join(' ');
  useCommands(
    useMemo((): readonly Command[] => {
      const there = has.split(' ');
      return [
        {
          id: 'add all finish',
          part: 'Finish',
          words: 'Add what the finish lacks',
          keys: ['A'],
          isOff: lacks === '',
          run: () => {
            edit('Add what the finish lacks', (draft) => lackingParts(draft).map((part) => addPart(draft, part)));
            say(`Added: ${lacks.replaceAll(' ', ', ')}.`);
          },
        },
        ...parts.map((part): Command => {
          const isThere = there.includes(part);
          return {
            id: `finish ${part}`,
            part: 'Finish',
            words: isThere ? `Take out the ${partNames[part]}` : `Add a ${partNames[part]}`,
            run: () =>
              edit(isThere ? `Take out the ${partNames[part]}` : `Add a ${partNames[part]}`, (draft) =>
                isThere ? takeOutPart(draft, part) : addPart(draft, part),
              ),
          };
        }),
        ...Object.entries(topicNames).map(
          ([topic, words]): Command => ({
            id: `go finish ${topic}`,
            part: 'Go',
            words: `To the finish: ${words}`,
            run: () => {
              location.hash = quiltAddress(id, 'finish', topic);
            },
          }),
        ),
      ];
    }, [id, has, lacks, edit, say]),
  );
};
