// Sewing in chains: units that are alike in several blocks of the quilt are sewn together, round after round, so that
// everything of a round can be fed through the machine before the iron is taken up.

import type { BlockPlan, PlannedStep } from '#craft';
import { formSorter } from '#craft/piecing';
import type { Point } from '#ground/plane';

/** One entry's share of a batch. */
export interface ChainMember {
  /** Indexes into the plan's blocks, and into the entry's steps. */
  readonly entry: number;
  readonly step: number;
  /** In the whole quilt. */
  readonly count: number;
}

export interface ChainBatch {
  /** From 1, through all rounds. */
  readonly number: number;
  readonly members: readonly [ChainMember, ...ChainMember[]];
  readonly count: number;
  /** Whether all members are pressed the same way. */
  readonly isPressedAlike: boolean;
}

/** What can be sewn when the rounds before it are sewn. */
export interface ChainRound {
  readonly batches: readonly ChainBatch[];
}

/**
 * Units are alike when the same pieces lie in them alike, turned or not, and they are joined from parts that are alike. Blocks on
 * foundations are left out: they are sewn sheet by sheet.
 *
 * @param isDirected whether a cloth's print stands upright, so that a turned unit is another
 */
export const chainsOf = (
  blocks: readonly BlockPlan[],
  isDirected: (fabric: string) => boolean = () => false,
): readonly ChainRound[] => {
  const known = new Map<string, Growing>();
  const nameOf = namesOf(blocks, isDirected);
  blocks.forEach((block, entry) => {
    if (block.foundations !== null) return;
    const made = new Map<string, Growing>();
    block.steps.forEach((step, index) => {
      const parts = step.join.map((part) => made.get(part));
      const key = JSON.stringify([nameOf(entry, step), step.kind, parts.map((part) => part?.order ?? -1).toSorted()]);
      const round = 1 + Math.max(0, ...parts.map((part) => part?.round ?? 0));
      const batch = known.get(key) ?? { order: known.size, round, members: [] };
      known.set(key, batch);
      made.set(step.makes, batch);
      batch.members.push({ entry, step: index, count: step.total });
    });
  });
  return inRounds(blocks, [...known.values()]);
};

interface Growing {
  readonly order: number;
  readonly round: number;
  readonly members: ChainMember[];
}

const inRounds = (blocks: readonly BlockPlan[], batches: readonly Growing[]): readonly ChainRound[] => {
  let number = 0;
  const last = Math.max(0, ...batches.map(({ round }) => round));
  return Array.from({ length: last }, (_, i) => ({
    batches: batches
      .filter(({ round }) => round === i + 1)
      .map(({ members }): ChainBatch => {
        number += 1;
        return {
          number,
          members: members as unknown as ChainBatch['members'],
          count: members.reduce((all, member) => all + member.count, 0),
          isPressedAlike: isPressedAlike(blocks, members),
        };
      }),
  }));
};

const isPressedAlike = (blocks: readonly BlockPlan[], members: readonly ChainMember[]): boolean => {
  const ways = members.map(({ entry, step }) => {
    const planned = blocks[entry]?.steps[step] as PlannedStep;
    return `${planned.pressTo} ${planned.otherWay}`;
  });
  return new Set(ways).size === 1 && ways[0]?.endsWith('null') === true;
};

/** What tells the unit of a step from all others in the quilt. */
const namesOf = (
  blocks: readonly BlockPlan[],
  isDirected: (fabric: string) => boolean,
): ((entry: number, step: PlannedStep) => string) => {
  const kinds = new Map<string, number>();
  const patches = blocks.flatMap((block) =>
    block.patches.map((patch) => {
      const piece = block.pieces.find(({ label }) => label === patch.piece);
      const cloths = piece?.fabrics.map(({ fabric }) => fabric) ?? [patch.fabric];
      const key = JSON.stringify([cloths, piece?.cut.shape, piece?.cut.size]);
      const kind = kinds.get(key) ?? kinds.size;
      kinds.set(key, kind);
      return { points: patch.points, kind, isDirected: cloths.some(isDirected) };
    }),
  );
  const firsts = blocks.map((_, entry) => blocks.slice(0, entry).reduce((all, block) => all + block.patches.length, 0));
  const formOf = formSorter({
    patches: patches.map(({ points }) => points),
    kindOf: patches.map(({ kind }) => kind),
    size: Math.max(...patches.flatMap(({ points }) => points.flatMap(({ x, y }: Point) => [x, y]))),
    turnsOf: (patch) => (patches[patch]?.isDirected ? 'none' : 'any'),
  });
  return (entry, step) => {
    const first = firsts[entry] as number;
    const unit = [...new Set(step.patches.flat())].map((patch) => first + patch).sort((a, b) => a - b);
    return `${formOf(unit).form}`;
  };
};
