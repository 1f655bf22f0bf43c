// One step: which piece is next, and which way round. In the usual size with the whole board and the list of steps beside it; in large
// type alone, to be read beside the machine.
import { memo, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { EntryLine, StepLine, StepSeen } from '#workroom/compute';
import { quiltAddress, timeWords, useLook, useMedia, usePreferences, useQuilt, useRoom } from '#workroom/room';
import { EntryStrip } from './entry-strip.tsx';
import { LivePicture } from './live-picture.tsx';
import type { SewPlace, SewSight } from './sew-address.ts';
import { StepCounter } from './step-counter.tsx';
import { StepList } from './step-list.tsx';
import { StepPictures } from './step-pictures.tsx';
import { fillScreen, useFilledScreen } from './use-filled-screen.ts';
import { useSewCommands } from './use-sew-commands.ts';
import { type Sewing, type StepPlace, stepAfter } from './use-sewing.ts';

export interface StepPlayerOf {
  readonly sewing: Sewing;
  readonly place: SewPlace;
  readonly entry: EntryLine;
  readonly step: StepLine;
}

export const StepPlayer = memo(({ sewing, place, entry, step }: StepPlayerOf) => {
  const { say, preferences } = useRoom();
  const { hand } = usePreferences(preferences);
  const isNarrow = useMedia('(max-width: 700px)');
  const letters = isNarrow || place.type === 'large' ? 'large' : 'usual';
  const look = useMemo(
    () => ({ entry: entry.key, step: step.number, letters }) as const,
    [entry.key, step.number, letters],
  );
  const found = useLook('sewingStep', look);
  const seen = found === 'nowhere' ? null : found;
  const isHere = seen !== null && seen.entry === entry.key && seen.step === step.number;
  const [again, setAgain] = useState(0);
  const { arrived } = sewing;
  useEffect(() => arrived(entry.key, step.number), [arrived, entry.key, step.number]);
  const told = isHere ? toldWords(entry, step, seen) : null;
  useEffect(() => {
    if (told !== null) say(told);
  }, [told, say]);

  const before = useMemo(() => stepAfter(sewing.entries, { entry, step }, -1), [sewing.entries, entry, step]);
  const after = useMemo(() => stepAfter(sewing.entries, { entry, step }, 1), [sewing.entries, entry, step]);
  const showAgain = useCallback(() => setAgain((times) => times + 1), []);
  useSewCommands({ sewing, place, step, entry, before, after, showAgain });
  useFilledScreen(place.type === 'large');

  const card = seen !== null && (
    <StepCard {...{ sewing, place, entry, step, seen, before, after, again, hand }} isHere={isHere} />
  );
  if (place.type === 'large') return <div className="sew-large">{card}</div>;
  return (
    <>
      <EntryStrip sewing={sewing} here={entry.key} />
      <div className="view-parts sew-parts">
        <div className="stage">
          {card}
          {seen === null && (
            <p className="empty" role="status">
              Laying it out …
            </p>
          )}
        </div>
        <aside className="side" aria-label="All pieces and steps">
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
            <StepList sewing={sewing} entry={entry} here={step.number} place={place} isSettled={seen !== null} />
          </section>
        </aside>
      </div>
    </>
  );
});

const toldWords = (entry: EntryLine, step: StepLine, { words }: StepSeen): string =>
  `${entry.title}, step ${step.number} of ${entry.steps.length}. ${words.heading}. ${words.machine} ${words.press} ${words.measures}`;

interface StepCardOf extends StepPlayerOf {
  readonly seen: StepSeen;
  readonly isHere: boolean;
  readonly before: StepPlace | null;
  readonly after: StepPlace | null;
  readonly again: number;
  readonly hand: 'left' | 'right';
}

const StepCard = (of: StepCardOf) => {
  const { id } = useQuilt();
  const { sewing, place, entry, step, seen, before, after } = of;
  const { words } = seen;
  const [sewn, all] = sewing.seams;
  const to = ({ entry: { key }, step: { number } }: StepPlace): SewPlace => ({ ...place, entry: key, step: number });
  const heading = useRef<HTMLHeadingElement>(null);
  // the key that led here is gone: what is read begins at the step
  useEffect(() => {
    if (document.activeElement === null || document.activeElement === document.body) {
      heading.current?.focus({ preventScroll: true });
    }
  }, []);
  return (
    <section className={of.isHere ? 'sew-step' : 'sew-step is-behind'} aria-label={`Step ${step.number}`}>
      <div className="sew-step-scroll">
        <div className="sew-head">
          <p className="sew-where">
            {entry.title} · step {step.number} of {entry.steps.length}
            {step.place === '' ? '' : ` · ${step.place}`} · <strong>{words.make}</strong>
          </p>
          <SightKeys sewing={sewing} place={place} />
        </div>
        <h2 ref={heading} className="sew-heading" tabIndex={-1}>
          {words.heading}
        </h2>
        {seen.take.length > 0 && <p className="sew-take">Take {seen.take.join('; ')}</p>}
        <StepPictures seen={seen} sight={place.sight} again={of.again} />
        <div className="sew-words">
          <p>{words.machine}</p>
          <p>
            {words.press} <strong>{words.measures}</strong>
          </p>
          {seen.notes.length > 0 && place.type === 'usual' && (
            <ul className="sew-notes">
              {seen.notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          )}
        </div>
      </div>
      <div className={`sew-foot is-${of.hand}`}>
        <button
          type="button"
          className="sew-back"
          disabled={before === null}
          onClick={() => (before === null ? undefined : sewing.goTo(to(before)))}
        >
          Back
        </button>
        <div className="sew-far">
          <StepCounter sewing={sewing} step={step} />
          <p className="sew-seams">
            <progress aria-label="Seams of the quilt sewn" max={all} value={sewn} />
            {sewn} of {all} seams of the quilt
          </p>
        </div>
        {after === null ? (
          <a className="main-key sew-next" href={quiltAddress(id, 'finish')}>
            That was the last seam: on to Finish
          </a>
        ) : (
          <button type="button" className="main-key sew-next" onClick={() => sewing.goTo(to(after))}>
            {nextWords(entry, after)}
          </button>
        )}
      </div>
    </section>
  );
};

/** What comes after this. */
const nextWords = (entry: EntryLine, { entry: { key, title }, step }: StepPlace): string =>
  key === entry.key ? `Next: ${step.heading}` : `Next, ${title}: ${step.heading}`;

const sights: readonly (readonly [SewSight, string])[] = [
  ['both', 'Both'],
  ['board', 'Board'],
  ['machine', 'Machine'],
];

const SightKeys = (of: { readonly sewing: Sewing; readonly place: SewPlace }) => {
  const { sewing, place } = of;
  const isLarge = place.type === 'large';
  return (
    <nav className="link-keys sew-sights" aria-label="How it is shown">
      {sights.map(([sight, words]) => (
        <a
          key={sight}
          href={sewing.addressOf({ ...place, sight })}
          aria-current={sight === place.sight ? 'true' : undefined}
        >
          {words}
        </a>
      ))}
      <a
        href={sewing.addressOf({ ...place, type: isLarge ? 'usual' : 'large' })}
        onClick={isLarge ? undefined : fillScreen}
      >
        {isLarge ? 'Close' : 'Large type'}
      </a>
    </nav>
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
