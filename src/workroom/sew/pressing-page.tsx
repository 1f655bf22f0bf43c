// How a block or the top is pressed, all seams at once: arrows, where seams meet and whether they nest; choose a seam and read why.
import { useCallback, useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { EntryLine } from '#workroom/compute';
import { go, useHereInSight, useLook } from '#workroom/room';
import { LivePicture } from './live-picture.tsx';
import type { PressingPlace } from './sew-address.ts';
import type { Sewing } from './use-sewing.ts';

export interface PressingPageOf {
  readonly sewing: Sewing;
  readonly entry: EntryLine;
  readonly place: PressingPlace;
}

export const PressingPage = ({ sewing, entry, place }: PressingPageOf) => {
  const { chosen, way } = place;
  const look = useMemo(() => ({ entry: entry.key, chosen, way }), [entry.key, chosen, way]);
  const found = useLook('pressing', look);
  const seen = found === null || found === 'nowhere' || found.entry !== entry.key ? null : found;
  const { pressingAddress } = sewing;
  const choose = useCallback(
    (step: number | null) => go(pressingAddress({ entry: entry.key, chosen: step, way })),
    [pressingAddress, entry.key, way],
  );
  usePressingCommands({ count: seen?.steps.length ?? 0, chosen, choose });
  const list = useHereInSight<HTMLOListElement>(chosen);
  if (found === 'nowhere') return <p className="empty">There is no seam in it to press.</p>;
  if (seen === null) {
    return (
      <p className="empty" role="status">
        Looking where seams meet …
      </p>
    );
  }
  const here = seen.steps.find(({ number }) => number === chosen);
  return (
    <div className="view-parts">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it */}
      <section className="stage sew-page" aria-label={`How ${seen.title} is pressed`} tabIndex={0}>
        <div className="sew-pressed">
          <h2>{seen.title}, pressed</h2>
          <LivePicture picture={seen.picture} className="is-paper" onThing={choose} />
          <div className="sew-pressed-words">
            <p className="quiet">
              An arrow points the way that a seam is pressed; two heads: open. A dot marks where seams meet and nest, a
              crossed ring where they do not.
            </p>
            {seen.ways === 2 && (
              <nav className="link-keys" aria-label="Which way it is pressed">
                {(['first', 'other'] as const).map((one) => (
                  <a
                    key={one}
                    href={pressingAddress({ entry: entry.key, chosen, way: one })}
                    aria-current={one === way ? 'true' : undefined}
                  >
                    {one === 'first' ? 'The first way' : 'The other way'}
                  </a>
                ))}
              </nav>
            )}
            {seen.share.map((line) => (
              <p key={line}>{line}</p>
            ))}
            <p role="status" className="sew-pressed-here">
              {here === undefined ? '' : `Step ${here.number}, ${here.heading}. ${here.press}`}
            </p>
            {seen.back !== null && (
              <figure className="sew-pressed-back">
                <LivePicture picture={seen.back} className="is-paper" />
                <figcaption className="quiet">From the back</figcaption>
              </figure>
            )}
            <a
              className="lone-link"
              href={sewing.addressOf({ entry: entry.key, step: null, sight: 'both', type: 'usual' })}
            >
              Back to {entry.kind === 'top' ? 'the top' : entry.title}
            </a>
          </div>
        </div>
      </section>
      <aside className="side" aria-label="Seams">
        <section>
          <h2>Seams</h2>
          <ol ref={list} className="sew-steps">
            {seen.steps.map(({ number, heading, press }) => (
              <li key={number}>
                <a
                  href={pressingAddress({ entry: entry.key, chosen: number === chosen ? null : number, way })}
                  aria-current={number === chosen ? 'step' : undefined}
                >
                  <span className="sew-steps-number">{number}</span>
                  <span>
                    {heading}
                    <br />
                    <span className="quiet">{press}</span>
                  </span>
                </a>
              </li>
            ))}
          </ol>
        </section>
      </aside>
    </div>
  );
};

const usePressingCommands = (of: {
  readonly count: number;
  readonly chosen: number | null;
  readonly choose: (step: number | null) => void;
}): void => {
  const { count, chosen, choose } = of;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'next seam pressed',
          part: 'Sew',
          words: 'The next seam, and why it is pressed so',
          keys: ['ArrowRight'],
          isOff: (chosen ?? 0) >= count,
          run: () => choose((chosen ?? 0) + 1),
        },
        {
          id: 'seam pressed before',
          part: 'Sew',
          words: 'The seam before',
          keys: ['ArrowLeft'],
          isOff: chosen === null,
          run: () => choose(chosen === null || chosen === 1 ? null : chosen - 1),
        },
      ],
      [count, chosen, choose],
    ),
  );
};
