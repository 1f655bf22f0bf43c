// Chains over all blocks: round after round, in each the same unit for all blocks that take it, in the words of the printed chapter; and
// of one batch what is looked at while it is sewn.
import { blockStepMinutes, type QuiltPlan } from '#craft';
import type { ChainBatch, ChainMember } from '#craft/chains';
import { clothSignsFor } from '#paper/cloth';
import { asFirstPlaced, type Drawing } from '#paper/drawing';
import {
  type ChainWords,
  chainWords,
  drawBatch,
  memberIn,
  quiltChains,
  roundSum,
  roundTitle,
  titleOf,
} from '#paper/pages';
import { keyOfEntry } from './entries.ts';
import { blockStepShown, countKey, fits, type StepLook, type StepShown } from './seen-sewing.ts';

export interface ChainsSeen {
  readonly rounds: readonly RoundLine[];
  /** Blocks that are sewn on foundations, sheet by sheet, by their names. */
  readonly leftOut: readonly string[];
}

export interface RoundLine {
  /** From 1. */
  readonly number: number;
  readonly title: string;
  readonly sum: string;
  readonly batches: readonly BatchLine[];
}

export interface BatchLine {
  /** From 1, through all rounds. */
  readonly number: number;
  readonly round: number;
  readonly words: ChainWords;
  readonly total: number;
  /** For all of them, an estimate. */
  readonly minutes: number;
  /** In which blocks it is a step; the first shows it. */
  readonly members: readonly [MemberLine, ...MemberLine[]];
}

export interface MemberLine {
  /** Of the entry that takes it, and its step. */
  readonly entry: string;
  readonly title: string;
  readonly step: number;
  readonly text: string;
  readonly total: number;
  /** What is counted of it: the step's own count. */
  readonly key: string;
}

export const seeChains = (plan: QuiltPlan, _all: Readonly<Record<never, never>>): ChainsSeen => ({
  rounds: quiltChains(plan).map((round, i) => ({
    number: i + 1,
    title: roundTitle(i + 1),
    sum: roundSum(plan, round),
    batches: round.batches.map((batch) => batchLine(plan, batch, i + 1)),
  })),
  leftOut: plan.blocks.filter(({ foundations }) => foundations !== null).map((block) => titleOf(plan, block)),
});

const batchLine = (plan: QuiltPlan, batch: ChainBatch, round: number): BatchLine => {
  const words = chainWords(plan, batch);
  const lineOf = (member: ChainMember, i: number): MemberLine => {
    const { block, step } = memberIn(plan, member);
    const entry = keyOfEntry(block);
    return {
      entry,
      title: titleOf(plan, block),
      step: step.number,
      text: words.members[i] as string,
      total: member.count,
      key: countKey(entry, step),
    };
  };
  const [first, ...others] = batch.members;
  return {
    number: batch.number,
    round,
    words,
    total: batch.count,
    minutes: batch.members.reduce((all, member) => {
      const { block, step } = memberIn(plan, member);
      return all + blockStepMinutes(plan, block, step);
    }, 0),
    members: [lineOf(first, 0), ...others.map((member, i) => lineOf(member, i + 1))],
  };
};

/** The picture of every batch, in order, as the printed chapter has it. */
export const seeChainPictures = (plan: QuiltPlan, _all: Readonly<Record<never, never>>): readonly Drawing[] => {
  const signs = clothSignsFor(plan);
  return quiltChains(plan).flatMap(({ batches }) => batches.map((batch) => drawBatch({ plan, signs }, batch)));
};

export interface ChainStepLook extends Pick<StepLook, 'letters' | 'hand'> {
  readonly batch: number;
}

export interface ChainStepSeen extends StepShown {
  readonly batch: number;
}

/** A batch in the pictures that the step has in the block that shows it. */
export const seeChainStep = (plan: QuiltPlan, look: ChainStepLook): ChainStepSeen | 'nowhere' => {
  const batch = quiltChains(plan)
    .flatMap(({ batches }) => batches)
    .find(({ number }) => number === look.batch);
  if (batch === undefined) return 'nowhere';
  const { block, step } = memberIn(plan, batch.members[0]);
  const { members: _told, ...words } = chainWords(plan, batch);
  return {
    batch: batch.number,
    ...blockStepShown(plan, {
      hand: look.hand,
      block: asFirstPlaced(plan, block),
      step,
      words: { ...words, make: `make ${words.make}` },
      fit: fits[look.letters],
    }),
  };
};
