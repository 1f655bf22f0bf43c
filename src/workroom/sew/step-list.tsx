// The steps of an entry in a list, each with how many of it are sewn.
import { useEffect, useRef } from 'react';
import type { EntryLine } from '#workroom/compute';
import type { SewPlace } from './sew-address.ts';
import type { Sewing } from './use-sewing.ts';

export interface StepListOf {
  readonly sewing: Sewing;
  readonly entry: EntryLine;
  readonly here: number | null;
  readonly place: Pick<SewPlace, 'sight' | 'type'>;
  /** What stands above it is drawn: the list has its height. */
  readonly isSettled: boolean;
}

export const StepList = ({ sewing, entry, here, place, isSettled }: StepListOf) => {
  const list = useRef<HTMLOListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list is moved when another step is come to
  useEffect(() => {
    const line = list.current;
    const link = line?.querySelector<HTMLElement>('[aria-current]');
    if (line == null || link == null) return;
    const [own, whole] = [link.getBoundingClientRect(), line.getBoundingClientRect()];
    if (own.top < whole.top || own.bottom > whole.bottom) line.scrollTop += own.top - whole.top - own.height;
  }, [here, isSettled]);
  return (
    <ol ref={list} className="sew-steps">
      {entry.steps.map((step, i) => {
        const done = sewing.countOf(step);
        return (
          <li key={step.number}>
            {step.place !== '' && step.place !== entry.steps[i - 1]?.place && (
              <h3 className="sew-steps-place">{step.place}</h3>
            )}
            <a
              href={sewing.addressOf({ entry: entry.key, step: step.number, ...place })}
              aria-current={step.number === here ? 'step' : undefined}
            >
              <span className="sew-steps-number">{step.number}</span>
              <span>{step.heading}</span>
              <span className="sew-steps-done">{doneWords(done, step.total)}</span>
            </a>
          </li>
        );
      })}
    </ol>
  );
};

const doneWords = (done: number, total: number): string => {
  if (done === 0) return total === 1 ? '' : `${total} ×`;
  return done === total ? 'sewn' : `${done}/${total}`;
};
