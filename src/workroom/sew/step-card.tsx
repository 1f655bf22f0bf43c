// One step as it is sewn: what goes where, its pictures and words, how many so far, and the way on. A block's own step, and a batch of
// all blocks.
import { type ReactNode, useEffect, useRef } from 'react';
import type { StepShown } from '#workroom/compute';
import { usePreferences, useRoom } from '#workroom/room';
import type { SewPlace, SewSight } from './sew-address.ts';
import { StepCounter, type StepCounterOf } from './step-counter.tsx';
import { StepPictures } from './step-pictures.tsx';
import { fillScreen } from './use-filled-screen.ts';
import type { Sewing } from './use-sewing.ts';

export interface StepCardOf {
  readonly sewing: Sewing;
  readonly place: SewPlace;
  /** "Step 3" */
  readonly name: string;
  /** Where it is in the sewing, before how many to make. */
  readonly where: string;
  readonly shown: StepShown;
  /** False while another step is still shown. */
  readonly isHere: boolean;
  readonly again: number;
  readonly counter: StepCounterOf;
  readonly before: SewPlace | null;
  readonly after: { readonly place: SewPlace; readonly words: string } | null;
  /** Where it leads after the last. */
  readonly end: ReactNode;
  /** Below the words. */
  readonly more?: ReactNode;
}

export const StepCard = (of: StepCardOf) => {
  const { preferences } = useRoom();
  const { hand } = usePreferences(preferences);
  const { sewing, place, shown, before, after } = of;
  const { words } = shown;
  const [sewn, all] = sewing.seams;
  const heading = useRef<HTMLHeadingElement>(null);
  // the key that led here is gone: what is read begins at the step, and a small screen, where the whole view scrolls, at its top
  useEffect(() => {
    heading.current?.closest('.view')?.scrollTo(0, 0);
    if (document.activeElement === null || document.activeElement === document.body) {
      heading.current?.focus({ preventScroll: true });
    }
  }, []);
  return (
    <section className={of.isHere ? 'sew-step' : 'sew-step is-behind'} aria-label={of.name}>
      <div className="sew-step-scroll">
        <div className="sew-head">
          <p className="sew-where">
            {of.where} · <strong>{words.make}</strong>
          </p>
          <SightKeys sewing={sewing} place={place} />
        </div>
        <h2 ref={heading} className="sew-heading" tabIndex={-1}>
          {words.heading}
        </h2>
        {shown.take.length > 0 && <p className="sew-take">Take {shown.take.join('; ')}</p>}
        <StepPictures seen={shown} sight={place.sight} again={of.again} />
        <div className="sew-words">
          <p>{words.machine}</p>
          <p>
            {words.press} <strong>{words.measures}</strong>
          </p>
          {shown.notes.length > 0 && place.type === 'usual' && (
            <ul className="sew-notes">
              {shown.notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          )}
          {of.more}
        </div>
      </div>
      <div className={`sew-foot is-${hand}`}>
        <button
          type="button"
          className="sew-back"
          disabled={before === null}
          onClick={() => (before === null ? undefined : sewing.goTo(before))}
        >
          Back
        </button>
        <div className="sew-far">
          <StepCounter {...of.counter} />
          <p className="sew-seams">
            <progress aria-label="Seams of the quilt sewn" max={all} value={sewn} />
            {sewn} of {all} seams of the quilt
          </p>
        </div>
        {after === null ? (
          of.end
        ) : (
          <button type="button" className="main-key sew-next" onClick={() => sewing.goTo(after.place)}>
            {after.words}
          </button>
        )}
      </div>
    </section>
  );
};

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
