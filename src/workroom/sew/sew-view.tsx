// Sew: what is sewn, in order; one block or the top before its first seam; and one step after another.
import { useMemo } from 'react';
import type { EntryLine } from '#workroom/compute';
import { useQuilt, type Within } from '#workroom/room';
import { ChainPlayer } from './chain-player.tsx';
import { ChainsPage } from './chains-page.tsx';
import { EntryPage } from './entry-page.tsx';
import { EntryStrip } from './entry-strip.tsx';
import { Overview } from './overview.tsx';
import { PressingPage } from './pressing-page.tsx';
import { chainsEntry, isWrongSize, pressingPlaceIn, roundIn, type SewPlace, sewPlaceIn } from './sew-address.ts';
import { StepPlayer } from './step-player.tsx';
import { useFilledScreen } from './use-filled-screen.ts';
import { type Sewing, useSewing } from './use-sewing.ts';
import { WrongSizePage } from './wrong-size-page.tsx';

export const SewView = ({ within }: { readonly within: Within }) => {
  const written = JSON.stringify(within);
  const place = useMemo(() => sewPlaceIn(JSON.parse(written) as Within), [written]);
  const sewing = useSewing();
  const { problems } = useQuilt();
  // here, so that from the last chain to the top it stays filled
  useFilledScreen(place.step !== null && place.type === 'large');
  if (sewing === null) {
    return (
      <p className="empty" role="status">
        {problems.length > 0 ? 'The steps come when what stands above is mended.' : 'Working out the order of sewing …'}
      </p>
    );
  }
  if (place.entry === chainsEntry) return <Chains sewing={sewing} place={place} within={within} />;
  const entry = sewing.entries.find(({ key }) => key === place.entry);
  const step = entry?.steps.find(({ number }) => number === place.step);
  if (entry !== undefined && step !== undefined) {
    return <StepPlayer sewing={sewing} place={place} entry={entry} step={step} />;
  }
  return (
    <>
      <EntryStrip sewing={sewing} here={entry?.key ?? null} />
      {place.entry !== null && entry === undefined && (
        <p className="sew-lost" role="status">
          The quilt has no such block to sew. These are all that it has.
        </p>
      )}
      {entry === undefined ? <Overview sewing={sewing} /> : <OfEntry sewing={sewing} entry={entry} within={within} />}
    </>
  );
};

const Chains = (of: { readonly sewing: Sewing; readonly place: SewPlace; readonly within: Within }) => {
  const { sewing, place, within } = of;
  const { chains } = sewing;
  if (chains === null) {
    return (
      <p className="empty" role="status">
        Looking which units are alike …
      </p>
    );
  }
  const batch = chains.rounds.flatMap(({ batches }) => batches).find(({ number }) => number === place.step);
  if (batch !== undefined) return <ChainPlayer sewing={sewing} place={place} chains={chains} batch={batch} />;
  return (
    <>
      <EntryStrip sewing={sewing} here={chainsEntry} />
      <ChainsPage sewing={sewing} chains={chains} round={roundIn(within)} />
    </>
  );
};

/** What there is to see of a block or the top beside its steps. */
const OfEntry = ({
  sewing,
  entry,
  within,
}: {
  readonly sewing: Sewing;
  readonly entry: EntryLine;
  readonly within: Within;
}) => {
  const pressing = pressingPlaceIn(within);
  if (pressing !== null) return <PressingPage sewing={sewing} entry={entry} place={pressing} />;
  if (isWrongSize(within) && entry.isTold) return <WrongSizePage key={entry.key} sewing={sewing} entry={entry} />;
  return <EntryPage sewing={sewing} entry={entry} />;
};
