// One batch of a chain: the same unit for all blocks that take it, in the pictures of its step, how many for which, and the rounds beside it;
// in large type alone.
import { memo, useCallback, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { BatchLine, ChainsSeen } from '#workroom/compute';
import { timeWords, useLook } from '#workroom/room';
import { BatchList, blocksOf } from './batch-list.tsx';
import { PlayerFrame, useArrival, usePictured } from './player-frame.tsx';
import { playingCommands } from './playing-commands.ts';
import { chainsEntry, type SewPlace } from './sew-address.ts';
import { StepCard } from './step-card.tsx';
import type { Sewing } from './use-sewing.ts';

export interface ChainPlayerOf {
  readonly sewing: Sewing;
  readonly place: SewPlace;
  readonly chains: ChainsSeen;
  readonly batch: BatchLine;
}

export const ChainPlayer = memo(({ sewing, place, chains, batch }: ChainPlayerOf) => {
  const pictured = usePictured(place.type);
  const look = useMemo(() => ({ batch: batch.number, ...pictured }), [batch.number, pictured]);
  const found = useLook('chainStep', look);
  const seen = found === 'nowhere' ? null : found;
  const isHere = seen?.batch === batch.number;
  useArrival({ sewing, entry: chainsEntry, step: batch.number, told: isHere ? toldWords(batch) : null });

  const [again, setAgain] = useState(0);
  const showAgain = useCallback(() => setAgain((times) => times + 1), []);
  const all = useMemo(() => chains.rounds.flatMap(({ batches }) => batches), [chains]);
  const before = all[batch.number - 2] ?? null;
  const after = all[batch.number] ?? null;
  const playing = useMemo(() => {
    const at = (to: BatchLine | null): SewPlace | null => to && { ...place, step: to.number };
    return {
      place,
      goTo: sewing.goTo,
      before: at(before),
      after: at(after),
      counter: {
        done: sewing.sumOf(batch.members),
        total: batch.total,
        count: (done: number) => sewing.count(batch.members, done),
      },
      showAgain,
    };
  }, [sewing, place, batch, before, after, showAgain]);
  useRoundCommands({ chains, batch, playing });
  const top = sewing.entries.find(({ kind, steps }) => kind === 'top' && steps.length > 0);

  const card = seen && (
    <StepCard
      {...{ sewing, place, again, isHere }}
      name={`Batch ${batch.number}`}
      where={`Round ${batch.round} of ${chains.rounds.length} · batch ${batch.number} of ${all.length}`}
      shown={seen}
      counter={playing.counter}
      before={playing.before}
      after={after && { place: { ...place, step: after.number }, words: nextWords(batch, after) }}
      end={
        top === undefined ? null : (
          <a className="main-key sew-next" href={sewing.addressOf({ ...place, entry: top.key, step: 1 })}>
            That was the last chain: on to the top
          </a>
        )
      }
      more={<Members sewing={sewing} place={place} batch={batch} />}
    />
  );
  return (
    <PlayerFrame
      {...{ sewing, card }}
      entry={chainsEntry}
      type={place.type}
      sideName="All rounds"
      side={
        <section>
          <h2>Rounds</h2>
          <p className="quiet">
            Batch {batch.number} takes about {timeWords(batch.minutes)}.
          </p>
          <BatchList sewing={sewing} chains={chains} here={batch.number} place={place} isSettled={seen !== null} />
        </section>
      }
    />
  );
});

const toldWords = ({ round, number, words }: BatchLine): string =>
  `Round ${round}, batch ${number}. ${words.heading}. ${words.machine} ${words.press} ${words.measures} ${words.members.join('; ')}.`;

const nextWords = (batch: BatchLine, { round, words, members }: BatchLine): string =>
  round === batch.round
    ? `Next, ${blocksOf(members)}: ${words.heading}`
    : `Snip, press, measure; then round ${round}, ${blocksOf(members)}: ${words.heading}`;

/** How many for which block, each a way to its own step. */
const Members = ({ sewing, place, batch }: Pick<ChainPlayerOf, 'sewing' | 'place' | 'batch'>) => (
  <section className="sew-members" aria-label="How many for which block">
    <ul>
      {batch.members.map((member) => {
        const done = sewing.countOf(member);
        return (
          <li key={member.key}>
            <a className="lone-link" href={sewing.addressOf({ ...place, entry: member.entry, step: member.step })}>
              {member.text}
            </a>
            {done > 0 && <span className="quiet"> {done === member.total ? 'sewn' : `${done} sewn`}</span>}
          </li>
        );
      })}
    </ul>
    {batch.members.length > 1 && <p className="quiet">Letters of pieces are those of {batch.members[0].title}.</p>}
  </section>
);

const useRoundCommands = (of: {
  readonly chains: ChainsSeen;
  readonly batch: BatchLine;
  readonly playing: Parameters<typeof playingCommands>[0];
}): void => {
  const { chains, batch, playing } = of;
  useCommands(
    useMemo((): readonly Command[] => {
      const firstOf = (round: number): SewPlace | null => {
        const first = chains.rounds[round - 1]?.batches[0];
        return first === undefined ? null : { ...playing.place, step: first.number };
      };
      const toRound = (id: string, words: string, key: string, round: number): Command => {
        const to = firstOf(round);
        return { id, part: 'Sew', words, keys: [key], isOff: to === null, run: () => to && playing.goTo(to) };
      };
      return [
        ...playingCommands(playing),
        toRound('next round', 'To the next round', 'N', batch.round + 1),
        toRound('round before', 'To the round before', 'P', batch.round - 1),
      ];
    }, [chains, batch, playing]),
  );
};
