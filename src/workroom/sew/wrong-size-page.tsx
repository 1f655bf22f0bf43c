// "It came out the wrong size": what was measured after any steps is written down, and answered in two sentences and a picture, with
// what can be saved.
import { useEffect, useMemo, useRef } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { EntryLine, SizesSeen, SizesTold, WrittenSize } from '#workroom/compute';
import { go, quiltAddress, useKeptValue, useLook, useQuilt, useRoom } from '#workroom/room';
import { LivePicture } from './live-picture.tsx';
import { SizesForm } from './sizes-form.tsx';
import type { Sewing } from './use-sewing.ts';
import { measuredOf, written } from './wrong-size.ts';

const none: readonly WrittenSize[] = [];

export const WrongSizePage = ({ sewing, entry }: { readonly sewing: Sewing; readonly entry: EntryLine }) => {
  const { id } = useQuilt();
  const { say } = useRoom();
  const kept = measuredOf(id);
  const measured = useKeptValue(kept);
  const sizes = measured[entry.key] ?? none;
  const look = useMemo(() => ({ entry: entry.key, written: sizes }), [entry.key, sizes]);
  const found = useLook('sizes', look);
  const seen = found === null || found === 'nowhere' || found.entry !== entry.key ? null : found;
  const told = seen?.told ?? null;
  const answer = told === null ? null : `${told.what} ${told.mend}`;
  useEffect(() => {
    if (answer !== null) say(answer);
  }, [answer, say]);
  const answered = useRef<HTMLDivElement>(null);
  const takeOut = (step: number): void => {
    kept.put({ ...kept.now(), [entry.key]: sizes.filter((size) => size.step !== step) });
    say(`The size after step ${step} taken out`);
  };
  const back = backTo(sewing, entry);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'back to sewing',
          part: 'Sew',
          words: 'Back to the steps',
          keys: ['Escape'],
          run: () => go(back),
        },
      ],
      [back],
    ),
  );
  if (seen === null) {
    return (
      <p className="empty" role="status">
        {found === 'nowhere' ? 'Nothing of it is measured while it is sewn.' : 'Looking up what it should measure …'}
      </p>
    );
  }
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it
    <section className="sew-page sew-wrong" aria-label="It came out the wrong size" tabIndex={0}>
      <div className="sew-wrong-head">
        <p>
          <a className="lone-link" href={back}>
            Back to the steps
          </a>
        </p>
        <h2>{seen.title} came out the wrong size</h2>
        <p>
          {entry.kind === 'top'
            ? 'Press it, lay it flat, and measure through the middle of its blocks from raw edge to raw edge: rows and sections before they are joined, too.'
            : 'Press the unit, lay it flat as the board shows it, and measure through its middle from raw edge to raw edge.'}{' '}
          Write down what you find after any steps, the more the better.
        </p>
      </div>
      <div className="sew-wrong-form">
        <SizesForm
          seen={seen}
          sizes={sizes}
          here={stepBefore(sewing, entry)}
          onTake={(of) => kept.put(written(kept.now(), entry.key, of))}
        />
        {answer !== null && (
          <button type="button" className="sew-wrong-up" onClick={() => answered.current?.scrollIntoView()}>
            To the answer
          </button>
        )}
        {sizes.length > 0 && (
          <button
            type="button"
            onClick={() => {
              const { [entry.key]: _gone, ...others } = kept.now();
              kept.put(others);
              say('All sizes taken out');
            }}
          >
            Take all sizes out
          </button>
        )}
      </div>
      <div ref={answered} className="sew-wrong-told">
        {told === null ? (
          <Waiting seen={seen} isWritten={sizes.length > 0} onTakeOut={takeOut} />
        ) : (
          <Told told={told} />
        )}
        <p className="quiet">Print has the seam test: three strips at true size, to set the guide by.</p>
        <a className="lone-link" href={quiltAddress(id, 'print')}>
          To Print
        </a>
      </div>
    </section>
  );
};

/** The step where one was last, if it is of this block; else its first page. */
const backTo = (sewing: Sewing, entry: EntryLine): string =>
  sewing.addressOf({ entry: entry.key, step: stepBefore(sewing, entry), sight: 'both', type: 'usual' });

const stepBefore = (sewing: Sewing, entry: EntryLine): number | null => {
  const [key, step] = sewing.last() ?? [];
  return key === entry.key ? (step ?? null) : null;
};

interface WaitingOf {
  readonly seen: SizesSeen;
  readonly isWritten: boolean;
  readonly onTakeOut: (step: number) => void;
}

/** A step may be gone since its size was written down: there is no field to mend it in. */
const Waiting = ({ seen, isWritten, onTakeOut }: WaitingOf) => {
  if (seen.problems.length === 0) {
    return (
      <p className="quiet">
        {isWritten ? 'Reading what is written down …' : 'The answer stands here as soon as a size is written down.'}
      </p>
    );
  }
  const gone = seen.problems.filter((problem) => seen.steps.every(({ number }) => number !== problem.step));
  return (
    <>
      <p>There is no answer while a size cannot be read.</p>
      {gone.map(({ step, what }) => (
        <div key={step} className="sew-wrong-gone">
          <p className="field-problem">◆ {what}</p>
          {step !== null && (
            <button type="button" onClick={() => onTakeOut(step)}>
              Take the size after step {step} out
            </button>
          )}
        </div>
      ))}
    </>
  );
};

const Told = ({ told }: { readonly told: SizesTold }) => (
  <>
    <p className="sew-wrong-what">
      {told.what} <strong>{told.mend}</strong>
    </p>
    <LivePicture picture={told.picture} className="is-paper sew-wrong-picture" />
    {told.saved.length > 0 && (
      <section className="sew-part" aria-label="What can be saved">
        <h3>What can be saved</h3>
        <ul>
          {told.saved.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    )}
    {told.likely.length > 1 && (
      <section className="sew-part" aria-label="How likely">
        <h3>How likely</h3>
        <ul>
          {told.likely.map(([share, words]) => (
            <li key={words}>
              {share}: {words}
            </li>
          ))}
        </ul>
      </section>
    )}
    <p className="quiet">Read to {told.readTo}. The turn of the cloth at a pressed seam counts as part of the seam.</p>
  </>
);
