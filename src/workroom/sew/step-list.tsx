// The steps of an entry in a list, each with how many of it are sewn.
import { memo } from 'react';
import type { EntryLine } from '#workroom/compute';
import { useHereInSight } from '#workroom/room';
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
  const list = useHereInSight<HTMLOListElement>(here, isSettled);
  return (
    <ol ref={list} className="sew-steps">
      {entry.steps.map((step, i) => (
        <StepLink
          key={step.number}
          number={step.number}
          heading={step.heading}
          place={step.place === entry.steps[i - 1]?.place ? '' : step.place}
          done={doneWords(sewing.countOf(step), step.total)}
          href={sewing.addressOf({ entry: entry.key, step: step.number, ...place })}
          isHere={step.number === here}
        />
      ))}
    </ol>
  );
};

interface StepLinkOf {
  readonly number: number;
  readonly heading: string;
  /** Of the top, where a row, section or border begins; else empty. */
  readonly place: string;
  readonly done: string;
  readonly href: string;
  readonly isHere: boolean;
}

/** A large top has more than a thousand: one step further changes two of them. */
const StepLink = memo(({ number, heading, place, done, href, isHere }: StepLinkOf) => (
  <li>
    {place !== '' && <h3 className="sew-steps-place">{place}</h3>}
    <a href={href} aria-current={isHere ? 'step' : undefined}>
      <span className="sew-steps-number">{number}</span>
      <span>{heading}</span>
      <span className="sew-steps-done">{done}</span>
    </a>
  </li>
));

export const doneWords = (done: number, total: number): string => {
  if (done === 0) return total === 1 ? '' : `${total} ×`;
  return done === total ? 'sewn' : `${done}/${total}`;
};
