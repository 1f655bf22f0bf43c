// One step: which piece is next, and which way round. In the usual size with the whole board and the list of steps beside it; in large
// type alone, to be read beside the machine.
import { memo, useCallback, useMemo, useState } from 'react';
import type { EntryLine, StepLine, StepSeen } from '#workroom/compute';
import { quiltAddress, timeWords, useLook, useQuilt } from '#workroom/room';
import { LivePicture } from './live-picture.tsx';
import { PlayerFrame, useArrival, usePictured } from './player-frame.tsx';
import { chainsEntry, type SewPlace } from './sew-address.ts';
import { StepCard } from './step-card.tsx';
import { StepList } from './step-list.tsx';
import { useSewCommands } from './use-sew-commands.ts';
import { type Sewing, type StepPlace, stepAfter } from './use-sewing.ts';

export interface StepPlayerOf {
  readonly sewing: Sewing;
  readonly place: SewPlace;
  readonly entry: EntryLine;
  readonly step: StepLine;
}

export const StepPlayer = memo(({ sewing, place, entry, step }: StepPlayerOf) => {
  const { id } = useQuilt();
  const pictured = usePictured(place.type);
  const look = useMemo(
    () => ({ entry: entry.key, step: step.number, ...pictured }),
    [entry.key, step.number, pictured],
  );
  const found = useLook('sewingStep', look);
  const seen = found === 'nowhere' ? null : found;
  const isHere = seen !== null && seen.entry === entry.key && seen.step === step.number;
  useArrival({ sewing, entry: entry.key, step: step.number, told: isHere ? toldWords(entry, step, seen) : null });

  const [again, setAgain] = useState(0);
  const showAgain = useCallback(() => setAgain((times) => times + 1), []);
  const before = useMemo(() => stepAfter(sewing.entries, { entry, step }, -1), [sewing.entries, entry, step]);
  const after = useMemo(() => stepAfter(sewing.entries, { entry, step }, 1), [sewing.entries, entry, step]);
  const playing = useMemo(
    () => ({
      place,
      goTo: sewing.goTo,
      before: before && placeAt(place, before),
      after: after && placeAt(place, after),
      counter: {
        done: sewing.countOf(step),
        total: step.total,
        count: (done: number) => sewing.count([step], done),
      },
      showAgain,
    }),
    [sewing, place, step, before, after, showAgain],
  );
  useSewCommands({ sewing, entry, playing });

  const card = seen && (
    <StepCard
      {...{ sewing, place, again, isHere }}
      name={`Step ${step.number}`}
      where={`${entry.title} · step ${step.number} of ${entry.steps.length}${step.place === '' ? '' : ` · ${step.place}`}`}
      shown={seen}
      counter={playing.counter}
      before={playing.before}
      after={after && { place: placeAt(place, after), words: nextWords(entry, after) }}
      end={
        <a className="main-key sew-next" href={quiltAddress(id, 'finish')}>
          That was the last seam: on to Finish
        </a>
      }
    />
  );
  return (
    <PlayerFrame
      {...{ sewing, card }}
      entry={entry.key}
      type={place.type}
      sideName="All pieces and steps"
      side={
        <>
          {seen !== null && <LaidOut sewing={sewing} place={place} entry={entry} seen={seen} />}
          <section>
            <h2>Steps of {entry.kind === 'top' ? 'the top' : entry.title}</h2>
            <p className="quiet">
              Step {step.number} takes about {timeWords(step.minutes)}
              {step.total > 1 ? `, all ${step.total} in a chain` : ''}.
            </p>
            {entry.isTold && (
              <p>
                <a className="lone-link" href={sewing.wrongSizeOf(entry.key)}>
                  It came out the wrong size
                </a>
              </p>
            )}
            <ItsBatch sewing={sewing} entry={entry} step={step} />
            <StepList sewing={sewing} entry={entry} here={step.number} place={place} isSettled={seen !== null} />
          </section>
        </>
      }
    />
  );
});

const placeAt = (place: SewPlace, to: StepPlace): SewPlace => ({
  ...place,
  entry: to.entry.key,
  step: to.step.number,
});

/** What comes after this. */
const nextWords = (entry: EntryLine, { entry: { key, title }, step }: StepPlace): string =>
  key === entry.key ? `Next: ${step.heading}` : `Next, ${title}: ${step.heading}`;

const toldWords = (entry: EntryLine, step: StepLine, { words }: StepSeen): string =>
  `${entry.title}, step ${step.number} of ${entry.steps.length}. ${words.heading}. ${words.machine} ${words.press} ${words.measures}`;

/** The batch that holds the step, where it is sewn for several blocks at once. */
const ItsBatch = ({ sewing, entry, step }: Pick<StepPlayerOf, 'sewing' | 'entry' | 'step'>) => {
  const batches = sewing.chains?.rounds.flatMap(({ batches: all }) => all) ?? [];
  const batch = batches.find(({ members }) => members.some(({ key }) => key === step.key));
  if (batch === undefined) return null;
  const others = batch.members.filter((member) => member.entry !== entry.key).map(({ title }) => title);
  return (
    <p>
      <a
        className="lone-link"
        href={sewing.addressOf({ entry: chainsEntry, step: batch.number, sight: 'both', type: 'usual' })}
      >
        In chains: batch {batch.number}
        {others.length > 0 ? `, with ${[...new Set(others)].join(' and ')}` : ''}
      </a>
    </p>
  );
};

const LaidOut = (of: {
  readonly sewing: Sewing;
  readonly place: SewPlace;
  readonly entry: EntryLine;
  readonly seen: StepSeen;
}) => (
  <section aria-label="All pieces laid out">
    <LivePicture
      picture={of.seen.laid}
      className="sew-laid"
      onThing={(thing) => {
        const step = of.seen.taking[thing];
        if (step !== undefined && step > 0) of.sewing.goTo({ ...of.place, entry: of.entry.key, step });
      }}
    />
    <p className="quiet">
      Close together: sewn. Ringed: now. Pale and dashed: later. Tap a piece for the step that takes it.
    </p>
  </section>
);
