// Sewing in chains: the units of all blocks round after round, the same ones together, as a sewer with the whole quilt cut does.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { type ChainBatch, chainsOf } from '#craft/chains';
import type { ClothSigns } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawStep } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import { type Album, type Picture, shown } from './album.ts';
import { partName, pressText } from './naming.ts';

export interface ChainsPage {
  readonly rounds: readonly {
    readonly title: string;
    /** "138 seams in 6 batches." */
    readonly sum: string;
    readonly batches: readonly ChainLine[];
  }[];
}

export interface ChainLine {
  readonly number: string;
  readonly picture: Picture;
  readonly make: string;
  /** "Star, unit 3: 32", one for each block that takes it. */
  readonly members: readonly string[];
  readonly press: string;
  readonly measures: string;
}

interface ChainsOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** @returns null where nothing is sewn but on foundations */
export const chainsPage = (of: ChainsOf): ChainsPage | null => {
  const { blocks, quilt } = of.plan;
  const directed = new Set(quilt.fabrics.flatMap(({ id, print }) => (print === 'none' ? [] : [id])));
  const rounds = chainsOf(blocks, (fabric) => directed.has(fabric));
  if (rounds.length === 0) return null;
  return {
    rounds: rounds.map(({ batches }, i) => ({
      title: `Round ${i + 1}`,
      sum: `${batches.reduce((all, { count }) => all + count, 0)} seams, ${batches.length === 1 ? 'one chain' : `${batches.length} chains`}`,
      batches: batches.map((batch) => chainLine(of, batch)),
    })),
  };
};

const chainLine = (of: ChainsOf, batch: ChainBatch): ChainLine => {
  const { plan, signs, album } = of;
  const [{ entry, step: index }] = batch.members;
  const block = plan.blocks[entry] as BlockPlan;
  const step = block.steps[index] as PlannedStep;
  const title = titleOf(plan, block);
  return {
    number: String(batch.number),
    picture: shown(
      album,
      `chain-${batch.number}`,
      drawStep({
        block,
        step,
        signs,
        ruler: plan.quilt,
        fitPt: [112, 62],
        alt: `${title}, step ${step.number}: what is joined, as it lies on the board.`,
      }),
    ),
    make: String(batch.count),
    members: batch.members.map((member) => {
      const its = plan.blocks[member.entry] as BlockPlan;
      return `${titleOf(plan, its)}, ${partName((its.steps[member.step] as PlannedStep).makes)}: ${member.count}`;
    }),
    press: batch.isPressedAlike ? pressText(step) : 'Press as the steps of its blocks say.',
    measures: `Measures ${checkSize(step.unfinished, plan.quilt)}.`,
  };
};

const titleOf = (plan: QuiltPlan, { id, colouring, mirror }: BlockPlan): string =>
  entryTitle(plan, { block: id, colouring, mirror });
