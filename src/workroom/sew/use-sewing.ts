// What the parts of this view share: the entries with their steps, what is sewn of them, and the way from one to another.
import { useCallback, useMemo } from 'react';
import type { ChainsSeen, EntryLine, StepLine } from '#workroom/compute';
import { go, quiltAddress, useKeptValue, useLook, useQuilt, useRoom } from '#workroom/room';
import {
  type PressingPlace,
  type SewPlace,
  withinOf,
  withinPressing,
  withinRound,
  wrongSizeWithin,
} from './sew-address.ts';
import { type Counted, countedTogether, countOf, type Sewn, sewnOf, sumOf } from './sewn.ts';

const all = {};

export interface Sewing {
  readonly entries: readonly EntryLine[];
  /** The same steps in chains over all blocks; null before they are worked out. */
  readonly chains: ChainsSeen | null;
  /** Seams sewn and seams there are, of the whole quilt. */
  readonly seams: readonly [sewn: number, all: number];
  readonly countOf: (step: Counted) => number;
  readonly sumOf: (steps: readonly Counted[]) => number;
  /** So many of steps that are sewn together are sewn by now: kept, and told. */
  readonly count: (steps: readonly Counted[], to: number) => void;
  readonly arrived: (entry: string, step: number) => void;
  /** Where one was last. */
  readonly last: () => Sewn['last'];
  readonly addressOf: (place: SewPlace) => string;
  readonly pressingAddress: (place: PressingPlace) => string;
  readonly wrongSizeOf: (entry: string) => string;
  readonly roundAddress: (round: number) => string;
  readonly goTo: (place: SewPlace) => void;
}

/** @returns null before the first plan */
export const useSewing = (): Sewing | null => {
  const { id } = useQuilt();
  const entries = useLook('sewing', all);
  const chains = useLook('chains', all);
  const kept = sewnOf(id);
  // where one is, is kept too, and changes nothing that is shown
  const { counts } = useKeptValue(kept);
  const addressOf = useCallback((place: SewPlace) => quiltAddress(id, 'sew', ...withinOf(place)), [id]);
  const pressingAddress = useCallback(
    (place: PressingPlace) => quiltAddress(id, 'sew', ...withinPressing(place)),
    [id],
  );
  const wrongSizeOf = useCallback((entry: string) => quiltAddress(id, 'sew', ...wrongSizeWithin(entry)), [id]);
  const roundAddress = useCallback((round: number) => quiltAddress(id, 'sew', ...withinRound(round)), [id]);
  const { say } = useRoom();
  const count = useCallback(
    (steps: readonly Counted[], to: number) => {
      const now = countedTogether(kept.now(), steps, to);
      kept.put(now);
      say(soFarWords(sumOf(now, steps), totalOf(steps)));
    },
    [kept, say],
  );
  const arrived = useCallback(
    (entry: string, step: number) => {
      const [lastEntry, lastStep] = kept.now().last ?? [];
      if (lastEntry !== entry || lastStep !== step) kept.put({ ...kept.now(), last: [entry, step] });
    },
    [kept],
  );
  return useMemo(() => {
    if (entries === null) return null;
    const steps = entries.flatMap((entry) => entry.steps);
    const sewn: Sewn = { last: null, counts };
    return {
      entries,
      chains,
      seams: [sumOf(sewn, steps), totalOf(steps)],
      countOf: (step) => countOf(sewn, step),
      sumOf: (some) => sumOf(sewn, some),
      count,
      arrived,
      last: () => kept.now().last,
      addressOf,
      pressingAddress,
      wrongSizeOf,
      roundAddress,
      goTo: (place) => go(addressOf(place)),
    };
  }, [entries, chains, counts, kept, count, arrived, addressOf, pressingAddress, wrongSizeOf, roundAddress]);
};

const totalOf = (steps: readonly Counted[]): number => steps.reduce((all, { total }) => all + total, 0);

const soFarWords = (done: number, total: number): string =>
  done === total ? `All ${total} sewn` : `${done} of ${total} sewn`;

export interface StepPlace {
  readonly entry: EntryLine;
  readonly step: StepLine;
}

/** The step after another, of the same entry or of the next that has any; null at the end. */
export const stepAfter = (entries: readonly EntryLine[], at: StepPlace, by: 1 | -1): StepPlace | null => {
  const steps = entries.flatMap((entry) => entry.steps.map((step) => ({ entry, step })));
  const here = steps.findIndex(({ entry, step }) => entry.key === at.entry.key && step.number === at.step.number);
  return steps[here + by] ?? null;
};

/** The first step of which not all are sewn; the last where all are. */
export const firstOpen = (sewing: Pick<Sewing, 'countOf'>, entries: readonly EntryLine[]): StepPlace | null => {
  const steps = entries.flatMap((entry) => entry.steps.map((step) => ({ entry, step })));
  return steps.find(({ step }) => sewing.countOf(step) < step.total) ?? steps.at(-1) ?? null;
};
