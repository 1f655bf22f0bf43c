// Sewing in chains: the units of all blocks round after round, the same ones together, as a sewer with the whole quilt cut does.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { type ChainBatch, type ChainMember, chainsOf } from '#craft/chains';
import type { ClothSigns } from '#paper/cloth';
import { drawStep } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import { counted } from '#paper/words';
import { type Album, type Picture, shown } from './album.ts';
import { titleOf } from './block-head.ts';
import { partName, pressText } from './naming.ts';
import { isChained } from './step-words.ts';

export interface ChainsPage {
  readonly rounds: readonly {
    readonly title: string;
    /** "138 seams, 6 chains"; what is sewn one by one is no chain. */
    readonly sum: string;
    readonly batches: readonly ChainLine[];
  }[];
}

export interface ChainLine {
  readonly number: string;
  readonly picture: Picture;
  /** "16", or "8, one by one". */
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
      sum: sumText(of.plan, batches),
      batches: batches.map((batch) => chainLine(of, batch)),
    })),
  };
};

const sumText = (plan: QuiltPlan, batches: readonly ChainBatch[]): string => {
  const seams = counted(
    batches.reduce((all, { count }) => all + count, 0),
    'seam',
  );
  const chained = batches.filter((batch) => isChained(stepOf(plan, batch.members[0]))).length;
  return `${seams}, ${chained === 0 ? 'one by one' : chained === 1 ? 'one chain' : `${chained} chains`}`;
};

const chainLine = (of: ChainsOf, batch: ChainBatch): ChainLine => {
  const { plan, signs, album } = of;
  const [shows] = batch.members;
  const block = plan.blocks[shows.entry] as BlockPlan;
  const step = stepOf(plan, shows);
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
    make: `${batch.count}${isChained(step) || batch.count === 1 ? '' : ', one by one'}`,
    members: batch.members.map((member) => {
      const its = plan.blocks[member.entry] as BlockPlan;
      return `${titleOf(plan, its)}, ${partName(stepOf(plan, member).makes)}: ${member.count}`;
    }),
    press: batch.isPressedAlike ? pressText(step) : 'Press as the steps of its blocks say.',
    measures: `Measures ${checkSize(step.unfinished, plan.quilt)}.`,
  };
};

const stepOf = ({ blocks }: QuiltPlan, { entry, step }: ChainMember): PlannedStep =>
  blocks[entry]?.steps[step] as PlannedStep;
