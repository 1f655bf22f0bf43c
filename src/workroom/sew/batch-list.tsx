// The batches of all rounds in a list, each with how many of it are sewn.
import type { ChainsSeen, MemberLine } from '#workroom/compute';
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
              <span>
                {blocksOf(members)}
                <br />
                <span className="quiet">{words.heading}</span>
              </span>
              <span className="sew-steps-done">{doneWords(sewing.sumOf(members), total)}</span>
            </a>
          </li>
        )),
      )}
    </ol>
  );
};

/** "Shoo Fly", "Shoo Fly and Comb", "Shoo Fly and 3 more" */
export const blocksOf = (members: readonly MemberLine[]): string => {
  const [first, second, ...more] = new Set(members.map(({ title }) => title));
  if (second === undefined) return first ?? '';
  return more.length === 0 ? `${first} and ${second}` : `${first} and ${more.length + 1} more`;
};
