// The batches of all rounds in a list, each with how many of it are sewn.
import type { ChainsSeen } from '#workroom/compute';
import { useHereInSight } from '#workroom/room';
import { chainsEntry, type SewPlace } from './sew-address.ts';
import { doneWords } from './step-list.tsx';
import type { Sewing } from './use-sewing.ts';

export interface BatchListOf {
  readonly sewing: Sewing;
  readonly chains: ChainsSeen;
  readonly here: number;
  readonly place: Pick<SewPlace, 'sight' | 'type'>;
  /** What stands above it is drawn: the list has its height. */
  readonly isSettled: boolean;
}

export const BatchList = ({ sewing, chains, here, place, isSettled }: BatchListOf) => {
  const list = useHereInSight<HTMLOListElement>(here, isSettled);
  return (
    <ol ref={list} className="sew-steps">
      {chains.rounds.flatMap((round) =>
        round.batches.map(({ number, words, members, total }, i) => (
          <li key={number}>
            {i === 0 && (
              <h3 className="sew-steps-place">
                <a href={sewing.roundAddress(round.number)}>{round.title}</a>
              </h3>
            )}
            <a
              href={sewing.addressOf({ entry: chainsEntry, step: number, ...place })}
              aria-current={number === here ? 'step' : undefined}
            >
              <span className="sew-steps-number">{number}</span>
              <span>{words.heading}</span>
              <span className="sew-steps-done">{doneWords(sewing.sumOf(members), total)}</span>
            </a>
          </li>
        )),
      )}
    </ol>
  );
};
