// Ways to make: the choices that nothing beats in cloth, time and trueness at once, one of them compared with the quilt as it is; and the
// units, each with the ways that are open to it.
import { memo, useCallback, useEffect, useMemo } from 'react';
import type { QuiltDocument } from '#craft/design';
import { clothHeading, trueText } from '#paper/ways';
import { estimateText } from '#paper/words';
import { type Command, useCommands } from '#workroom/commands';
import type { WaysPoint, WaysSeen } from '#workroom/compute';
import { go, quiltAddress, useQuilt, useRoom } from '#workroom/room';
import { useWays } from './use-ways.ts';
import { waysPlace } from './ways-place.ts';
import { WaysPlot } from './ways-plot.tsx';

export const WaysView = ({ picked }: { readonly picked: string | null }) => {
  const { id, document, edit, problems } = useQuilt();
  const { say } = useRoom();
  const { seen, isDone } = useWays();
  const addressOf = useCallback((key: string) => quiltAddress(id, 'cut', waysPlace, key), [id]);
  const points = seen?.points;
  const at = points?.findIndex(({ key }) => key === picked) ?? -1;
  const goBy = useCallback(
    (by: 1 | -1) => {
      if (points === undefined || points.length === 0) return;
      const to = points[(Math.max(at, by > 0 ? -1 : 0) + by + points.length) % points.length];
      if (to !== undefined) go(addressOf(to.key));
    },
    [points, at, addressOf],
  );
  const choose = useCallback(
    (what: string, methods: WaysPoint['methods']) => {
      edit(what, (draft) => setMethods(draft, methods));
      say(`${what}: taken`);
    },
    [edit, say],
  );
  const chosen = points?.[at] ?? null;
  const take = useCallback(() => {
    if (chosen !== null) choose('Choose ways to make', chosen.methods);
  }, [chosen, choose]);
  const isNow = chosen !== null && chosen.key === seen?.now.key;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'next choice', part: 'Cut', words: 'To the next choice of ways', keys: ['N'], run: () => goBy(1) },
        { id: 'choice before', part: 'Cut', words: 'To the choice before', keys: ['P'], run: () => goBy(-1) },
        {
          id: 'take choice',
          part: 'Cut',
          words: 'Make the units so',
          keys: ['T'],
          isOff: chosen === null || isNow,
          run: take,
        },
      ],
      [goBy, take, chosen, isNow],
    ),
  );
  const told = chosen === null ? null : `Choice ${at + 1}. ${pointWords(chosen)}`;
  useEffect(() => {
    if (told !== null) say(told);
  }, [told, say]);
  if (seen === null)
    return (
      <p className="empty" role="status">
        {problems.length > 0 ? 'It can be planned when what stands above is mended.' : 'Looking for units …'}
      </p>
    );
  return (
    <div className="view-parts ways-view">
      <div className="stage ways-stage">
        <p>
          <a className="lone-link" href={quiltAddress(id, 'cut')}>
            All cloths
          </a>
        </p>
        <h2>Ways to make</h2>
        {seen.groups.every(({ ways }) => ways.length < 2) ? (
          <p>
            No unit of this quilt can be made in more than one way.{' '}
            {seen.groups.length > 0 ? 'Why others are not open stands beside it.' : ''}
          </p>
        ) : (
          <>
            <WaysPlot seen={seen} picked={picked} addressOf={addressOf} />
            <PointTable seen={seen} picked={picked} addressOf={addressOf} />
            <p className="quiet" role="status">
              {isDone ? seen.told : 'Planning one choice after another …'}
              {seen.between > 0 ? ` ${seen.between} more lie between these.` : ''} Minutes are {estimateText(document)}.
            </p>
          </>
        )}
      </div>
      <aside className="side" aria-label="This choice and the units">
        {chosen !== null && <Compared seen={seen} point={chosen} number={at + 1} onTake={take} />}
        <Units seen={seen} onChoose={choose} />
      </aside>
    </div>
  );
};

/** All that is chosen, for the quilt and its blocks, in one. */
const setMethods = (draft: QuiltDocument, methods: WaysPoint['methods']): void => {
  for (const block of draft.blocks) delete block.methods;
  const list = methods as unknown as NonNullable<QuiltDocument['methods']>;
  if (list.length === 0) delete draft.methods;
  else draft.methods = list;
};

const pointWords = ({ differences, time }: WaysPoint): string =>
  differences.length === 0 ? `As it is, ${time}.` : `${differences.join(', ')}.`;

const PointTable = memo(
  (of: { readonly seen: WaysSeen; readonly picked: string | null; readonly addressOf: (key: string) => string }) => {
    const { seen, picked, addressOf } = of;
    const { words, document } = useQuilt();
    const hasCost = seen.now.cost !== '';
    return (
      // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it scrolls, and keys must be able to scroll it
      <section className="table-room" tabIndex={0} aria-label="The choices, listed">
        <table className="table-told ways-table">
          <thead>
            <tr>
              <th scope="col">Choice</th>
              <th scope="col">{clothHeading(document.cutting?.layout ?? 'least')}</th>
              <th scope="col">Time</th>
              <th scope="col">Side of a unit</th>
              {hasCost && <th scope="col">Cost</th>}
              <th scope="col">Against the quilt as it is</th>
            </tr>
          </thead>
          <tbody>
            {seen.points.map((point, i) => (
              <tr key={point.key} aria-current={point.key === picked ? 'true' : undefined}>
                <th scope="row">
                  <a className="lone-link" href={addressOf(point.key)}>
                    Choice {i + 1}
                  </a>
                </th>
                <td>{words.length(point.cloth)}</td>
                <td>{point.time}</td>
                <td>{trueText(point.deviation, document.unit)}</td>
                {hasCost && <td>{point.cost}</td>}
                <td>{point.differences.length === 0 ? 'the quilt as it is' : point.differences.join(', ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    );
  },
);

const Compared = (of: {
  readonly seen: WaysSeen;
  readonly point: WaysPoint;
  readonly number: number;
  readonly onTake: () => void;
}) => {
  const { seen, point, number, onTake } = of;
  const { words, document } = useQuilt();
  const { now, groups } = seen;
  const changed = groups.flatMap((group, i) =>
    point.ways[i] === now.ways[i] ? [] : [{ group, from: now.ways[i] as number, to: point.ways[i] as number }],
  );
  const rows: readonly (readonly [string, string, string])[] = [
    [clothHeading(document.cutting?.layout ?? 'least'), words.length(now.cloth), words.length(point.cloth)],
    ['Time', now.time, point.time],
    ['Side of a unit', trueText(now.deviation, document.unit), trueText(point.deviation, document.unit)],
    ...(now.cost === '' ? [] : [['Cost', now.cost, point.cost] as const]),
  ];
  return (
    <section aria-labelledby="ways-compared">
      <h2 id="ways-compared">Choice {number}</h2>
      <p>{pointWords(point)}</p>
      <table className="table-told ways-compared">
        <thead>
          <tr>
            <td />
            <th scope="col">As it is</th>
            <th scope="col">Choice {number}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([what, before, after]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{before}</td>
              <td>{after}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {changed.length > 0 && (
        <ul className="ways-changes">
          {changed.map(({ group, from, to }) => (
            <li key={group.name}>
              <strong>{group.name}</strong>: {group.ways[to]} instead of {group.ways[from]}
            </li>
          ))}
        </ul>
      )}
      {point.key === now.key ? (
        <p className="quiet">The quilt is made so.</p>
      ) : (
        <button type="button" className="main-key" onClick={onTake}>
          Make the units so
        </button>
      )}
    </section>
  );
};

const Units = memo(
  (of: { readonly seen: WaysSeen; readonly onChoose: (what: string, methods: WaysPoint['methods']) => void }) => {
    const { seen, onChoose } = of;
    if (seen.groups.length === 0) return null;
    return (
      <section aria-labelledby="ways-units">
        <h2 id="ways-units">The units</h2>
        <ul className="ways-units">
          {seen.groups.map((group, i) => (
            <li key={group.name}>
              <label className="field">
                <span>{group.name}</span>
                <select
                  value={seen.now.ways[i]}
                  disabled={group.ways.length < 2}
                  onChange={(event) =>
                    onChoose('Choose a way to make', group.methodsFor[Number(event.target.value)] ?? [])
                  }
                >
                  {group.ways.map((way, option) => (
                    <option key={way} value={option}>
                      {way}
                    </option>
                  ))}
                </select>
              </label>
              <p className="quiet">In {group.blocks.join(', ')}.</p>
              {group.closed.map((line) => (
                <p key={line} className="quiet">
                  {line}
                </p>
              ))}
            </li>
          ))}
        </ul>
      </section>
    );
  },
);
