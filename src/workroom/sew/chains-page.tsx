// Sewing in chains, before the first of them: round after round, every batch with its picture and how many for which block.
import { useEffect } from 'react';
import type { Drawing } from '#paper/drawing';
import type { BatchLine, ChainsSeen, RoundLine } from '#workroom/compute';
import { countWords, timeWords, useLook } from '#workroom/room';
import { blocksOf } from './batch-list.tsx';
import { LivePicture } from './live-picture.tsx';
import { chainsEntry } from './sew-address.ts';
import type { Sewing } from './use-sewing.ts';

const all = {};

export const ChainsPage = (of: {
  readonly sewing: Sewing;
  readonly chains: ChainsSeen;
  /** The round that its address asks for. */
  readonly round: number | null;
}) => {
  const { sewing, chains, round } = of;
  const pictures = useLook('chainPictures', all);
  const isDrawn = pictures !== null;
  useEffect(() => {
    if (round !== null && isDrawn) document.getElementById(idOf(round))?.scrollIntoView({ block: 'start' });
  }, [round, isDrawn]);
  const batches = chains.rounds.flatMap((one) => one.batches);
  const open = batches.find((batch) => isOpen(sewing, batch)) ?? null;
  const sewn = sewing.sumOf(batches.flatMap(({ members }) => members));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it
    <section className="stage sew-page sew-chains" aria-label="Sewing in chains" tabIndex={0}>
      <div className="sew-chains-head">
        <h2>In chains</h2>
        <p>
          With the whole quilt cut, the same unit is sewn for all of its blocks at once. Sew all chains of a round
          without cutting the thread between the pieces; then snip them apart, press them, measure one of each, and go
          on with the next round.
        </p>
        <p className="quiet">
          {countWords(chains.rounds.length, 'round', 'rounds')}, {countWords(batches.length, 'batch', 'batches')}, about{' '}
          {timeWords(batches.reduce((sum, { minutes }) => sum + minutes, 0))}. What is counted here is counted in the
          blocks too.
          {chains.leftOut.length > 0 && ` Sewn on foundations, sheet by sheet: ${chains.leftOut.join(', ')}.`}
        </p>
        {open !== null && (
          <a
            className="main-key sew-next"
            href={sewing.addressOf({ entry: chainsEntry, step: open.number, sight: 'both', type: 'usual' })}
          >
            {sewn === 0 ? 'Begin' : 'Go on'} at batch {open.number}: {blocksOf(open.members)}
          </a>
        )}
        {batches.length === 0 && <p>There is nothing to sew in chains: no block has a seam off a foundation.</p>}
        {batches.length > 0 && open === null && <p>All of them are sewn.</p>}
      </div>
      {chains.rounds.map((one) => (
        <section
          key={one.number}
          id={idOf(one.number)}
          className={one.number === round ? 'sew-round is-asked' : 'sew-round'}
          aria-label={one.title}
        >
          <h3>
            <a href={sewing.roundAddress(one.number)} aria-current={one.number === round ? 'true' : undefined}>
              {one.title}
            </a>{' '}
            <span className="quiet">
              {one.sum}
              {farWords(sewing, one)}
            </span>
          </h3>
          <ol className="sew-batches">
            {one.batches.map((batch) => (
              <BatchCard
                key={batch.number}
                sewing={sewing}
                batch={batch}
                picture={pictures?.[batch.number - 1] ?? null}
              />
            ))}
          </ol>
        </section>
      ))}
    </section>
  );
};

const BatchCard = (of: { readonly sewing: Sewing; readonly batch: BatchLine; readonly picture: Drawing | null }) => {
  const { sewing, batch, picture } = of;
  const { number, words, members, total } = batch;
  const done = sewing.sumOf(members);
  return (
    <li>
      <a
        className="sew-batch"
        href={sewing.addressOf({ entry: chainsEntry, step: number, sight: 'both', type: 'usual' })}
      >
        <span className="sew-batch-number">{number}</span>
        <span className="sew-batch-picture">
          {picture !== null && <LivePicture picture={picture} className="is-paper" />}
        </span>
        <span className="sew-batch-words">
          <strong>Make {words.make}</strong>
          {words.members.map((text) => (
            <span key={text}>{text}</span>
          ))}
          <span className="quiet">
            {words.press} {words.measures}
          </span>
          {done > 0 && <span>{done === total ? 'all sewn' : `${done} of ${total} sewn`}</span>}
        </span>
      </a>
    </li>
  );
};

const idOf = (round: number): string => `sew-round-${round}`;

const isOpen = (sewing: Sewing, { members, total }: BatchLine): boolean => sewing.sumOf(members) < total;

const farWords = (sewing: Sewing, { batches }: RoundLine): string => {
  const done = sewing.sumOf(batches.flatMap(({ members }) => members));
  const total = batches.reduce((sum, batch) => sum + batch.total, 0);
  return done === 0 ? '' : done === total ? ' · all sewn' : ` · ${done} of ${total} sewn`;
};
