// The directions of one cloth in the order of cutting, each strip with its picture, each step with its tick.
import { useCallback, useEffect, useMemo, useRef } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { CutStepsSeen, CutStrip } from '#workroom/compute';
import { useKeptValue, useQuilt, useRoom } from '#workroom/room';
import { strayTicks, ticked, ticksOf, unticked } from './ticks.ts';

export interface CutStepsOf {
  readonly seen: CutStepsSeen;
  /** The number of the strip that the address names. */
  readonly at: string | null;
}

export const CutSteps = ({ seen, at }: CutStepsOf) => {
  const { id } = useQuilt();
  const { say } = useRoom();
  const kept = ticksOf(id);
  const ticks = useKeptValue(kept);
  const done = useMemo(() => new Set(ticks), [ticks]);
  const steps = useMemo(() => [...seen.leads.flatMap((lead) => [lead, ...lead.strips]), ...seen.apart], [seen]);
  const keys = useMemo(() => new Set(steps.map(({ key }) => key)), [steps]);
  const isDone = steps.filter(({ key }) => done.has(key)).length;
  const stray = strayTicks(ticks, { cloth: seen.cloth, keys });
  const next = steps.find(({ key }) => !done.has(key));
  const tick = useCallback(
    (key: string, to: boolean) => {
      const now = kept.now();
      kept.put(to ? ticked(now, key) : unticked(now, new Set([key])));
    },
    [kept],
  );
  const tickNext = useCallback(() => {
    if (next === undefined) return;
    tick(next.key, true);
    say(`Done: ${next.text}`);
  }, [next, tick, say]);
  const clear = useCallback(() => {
    kept.put(unticked(kept.now(), new Set([...keys, ...stray])));
    say('No step is ticked off');
  }, [kept, keys, stray, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'tick next',
          part: 'Cut',
          words: 'Tick off the next step',
          keys: ['X'],
          isOff: next === undefined,
          run: tickNext,
        },
        { id: 'clear ticks', part: 'Cut', words: 'Begin cutting this cloth again', isOff: isDone === 0, run: clear },
      ],
      [next, isDone, tickNext, clear],
    ),
  );
  const here = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (at !== null) here.current?.scrollIntoView({ block: 'start' });
  }, [at]);
  const box = { done, tick, next: next?.key ?? null };
  return (
    <section className="cut-steps" aria-label={`Directions for cloth ${seen.letter}, ${seen.name}`}>
      <div className="cut-progress">
        <p role="status">
          {isDone === steps.length ? 'All steps are done.' : `${isDone} of ${steps.length} steps done.`}
        </p>
        <progress value={isDone} max={Math.max(1, steps.length)} aria-label="Steps done" />
        <button type="button" disabled={next === undefined} onClick={tickNext}>
          Next step done
        </button>
        <button type="button" className="word-key" disabled={isDone === 0 && stray.length === 0} onClick={clear}>
          Begin again
        </button>
      </div>
      {stray.length > 0 && (
        <p className="note">
          {stray.length === 1 ? 'One step that was ticked off is' : `${stray.length} steps that were ticked off are`} of
          another layout of this cloth. What is cut already may not fit the directions as they stand now.
        </p>
      )}
      {seen.before.map((text) => (
        <p key={text} className="cut-words">
          {text}
        </p>
      ))}
      <ol className="cut-leads">
        {seen.leads.map((lead) => (
          <li key={lead.key}>
            <Tick {...box} step={lead} />
            <ol className="cut-strips">
              {lead.strips.map((strip) => (
                <li
                  key={strip.key}
                  ref={strip.number === at ? here : undefined}
                  aria-current={strip.number === at ? 'step' : undefined}
                >
                  <Tick {...box} step={strip} number={strip.number} />
                  <StripPicture picture={strip.picture} />
                  {strip.cuts.length > 0 && (
                    <ol className="cut-cuts">
                      {strip.cuts.map(({ number, text }) => (
                        <li key={number}>
                          <span className="cut-number">{number}</span> {text}
                        </li>
                      ))}
                    </ol>
                  )}
                </li>
              ))}
            </ol>
          </li>
        ))}
        {seen.apart.map((step) => (
          <li key={step.key}>
            <Tick {...box} step={step} />
          </li>
        ))}
      </ol>
      {seen.nested.map((picture) => (
        <StripPicture key={picture} picture={picture} />
      ))}
      {seen.kept !== '' && <p className="cut-words">Worth keeping: {seen.kept}.</p>}
      <p className="quiet">{seen.effort}</p>
    </section>
  );
};

const Tick = (of: {
  readonly step: Pick<CutStrip, 'key' | 'text'>;
  readonly number?: string;
  readonly done: ReadonlySet<string>;
  readonly next: string | null;
  readonly tick: (key: string, to: boolean) => void;
}) => {
  const { step, number, done, next, tick } = of;
  const isDone = done.has(step.key);
  return (
    <label className={`check cut-tick${isDone ? ' is-done' : ''}${step.key === next ? ' is-next' : ''}`}>
      <input type="checkbox" checked={isDone} onChange={(event) => tick(step.key, event.target.checked)} />
      <span>
        {number !== undefined && <span className="cut-number">{number}</span>} {step.text}
      </span>
    </label>
  );
};

/** As the page has it, on paper's own ground. */
const StripPicture = ({ picture }: { readonly picture: string }) => (
  // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by our own hand, every name in it escaped
  <div className="cut-picture" dangerouslySetInnerHTML={{ __html: picture }} />
);
