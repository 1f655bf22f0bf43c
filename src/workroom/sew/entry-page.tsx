// A block, or the top, before its first seam: as the printed page has it, and the way in.
import { useEffect, useMemo } from 'react';
import type { EntryLine, EntryPart } from '#workroom/compute';
import { useLook, useQuilt } from '#workroom/room';
import { LivePicture } from './live-picture.tsx';
import { StepList } from './step-list.tsx';
import { firstOpen, type Sewing } from './use-sewing.ts';

export const EntryPage = ({ sewing, entry }: { readonly sewing: Sewing; readonly entry: EntryLine }) => {
  const { answer } = useQuilt();
  const look = useMemo(() => ({ entry: entry.key }), [entry.key]);
  const found = useLook('sewingEntry', look);
  const seen = found === null || found === 'nowhere' || found.entry !== entry.key ? null : found;
  useEffect(() => {
    document.querySelector('.sew-page')?.scrollTo(0, 0);
  }, []);
  if (seen === null || answer === null) {
    return (
      <p className="empty" role="status">
        Laying it out …
      </p>
    );
  }
  const { head } = seen;
  const open = firstOpen(sewing, [entry]);
  return (
    <div className={entry.steps.length === 0 ? 'view-parts is-whole' : 'view-parts'}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it */}
      <section className="stage sew-page" aria-label={entry.title} tabIndex={0}>
        <div className="sew-page-head">
          <LivePicture picture={seen.board} className={head === null ? 'is-paper is-wide' : 'is-paper'} />
          <div className="sew-page-words">
            <h2>{entry.title}</h2>
            {head !== null && (
              <p>
                <strong>{head.make}</strong>
                <br />
                <span className="quiet">{head.size}</span>
              </p>
            )}
            {open !== null && (
              <a
                className="main-key sew-next"
                href={sewing.addressOf({ entry: entry.key, step: open.step.number, sight: 'both', type: 'usual' })}
              >
                {open.step.number === 1 ? 'Begin' : `Go on at step ${open.step.number}`}: {open.step.heading}
              </a>
            )}
            {entry.steps.length > 0 && (
              <a className="lone-link" href={sewing.pressingAddress({ entry: entry.key, chosen: null, way: 'first' })}>
                How it is pressed
              </a>
            )}
            {entry.steps.length === 0 && (
              <p className="quiet">
                {head !== null && head.pieces.length === 0
                  ? 'It is made elsewhere: there is nothing of it to sew here.'
                  : 'It is one piece: there is nothing to sew.'}
              </p>
            )}
            {head?.warning != null && <p className="sew-warning">{head.warning}</p>}
            {[...seen.reading, ...(head?.remarks ?? [])].map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
        </div>
        {head !== null && head.pieces.length > 0 && (
          <PlainTable
            caption="Pieces"
            head={['Piece', 'Cloth', 'Pieces', 'Cut']}
            rows={head.pieces.map(({ label, cloth, count, cut }) => [label, cloth, count, cut])}
          />
        )}
        {seen.parts.map((part) => (
          <Part key={part.heading} part={part} />
        ))}
      </section>
      {entry.steps.length > 0 && (
        <aside className="side" aria-label="Steps">
          <section>
            <h2>Steps</h2>
            {entry.isTold && (
              <p>
                <a className="lone-link" href={sewing.wrongSizeOf(entry.key)}>
                  It came out the wrong size
                </a>
              </p>
            )}
            <StepList sewing={sewing} entry={entry} here={null} place={{ sight: 'both', type: 'usual' }} isSettled />
          </section>
        </aside>
      )}
    </div>
  );
};

const Part = ({ part: { heading, lead, table, list } }: { readonly part: EntryPart }) => (
  <section className="sew-part" aria-label={heading}>
    <h3>{heading}</h3>
    {lead.map((line) => (
      <p key={line}>{line}</p>
    ))}
    {list.length > 0 && (
      <ul>
        {list.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    )}
    {table !== null && <PlainTable caption={heading} head={table.head} rows={table.rows} />}
  </section>
);

/** The first of each row names it. */
const PlainTable = (of: {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it scrolls sideways, and keys must be able to scroll it
  <section className="sew-table" aria-label={`${of.caption}, in a table`} tabIndex={0}>
    <table className="sew-pieces" aria-label={of.caption}>
      <thead>
        <tr>
          {of.head.map((word) => (
            <th key={word} scope="col">
              {word}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {of.rows.map(([name = '', ...cells]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, i) => (
              <td key={of.head[i + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);
