// A batch of a chain in words: what is joined, how many for which block, how it is sewn and pressed. Paper and screen say the same.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { type ChainBatch, type ChainMember, type ChainRound, chainsOf } from '#craft/chains';
import { counted, wayText } from '#paper/words';
import { titleOf } from './block-head.ts';
import { measuresText } from './made-words.ts';
import { partName, pressText } from './naming.ts';
import { isChained, type StepWords, stepWords } from './step-words.ts';

/** A step's words in the letters of the block that shows it, the first; `make` is "16", "8, one by one", or "16, eight at a time". */
export interface ChainWords extends StepWords {
  /** "Star, unit 3: 32", one for each block that takes it. */
  readonly members: readonly string[];
}

/** Round after round of all blocks; none where nothing is sewn but on foundations. */
export const quiltChains = ({ blocks, quilt }: QuiltPlan): readonly ChainRound[] => {
  const directed = new Set(quilt.fabrics.flatMap(({ id, print }) => (print === 'none' ? [] : [id])));
  return chainsOf(blocks, (fabric) => directed.has(fabric));
};

export const roundTitle = (round: number): string => `Round ${round}`;

/** "138 seams, 6 chains"; what is sewn one by one is no chain. */
export const roundSum = (plan: QuiltPlan, { batches }: ChainRound): string => {
  const seams = counted(
    batches.reduce((all, { count }) => all + count, 0),
    'seam',
  );
  const chained = batches.filter((batch) => isChained(memberIn(plan, batch.members[0]).step)).length;
  return `${seams}, ${chained === 0 ? 'one by one' : chained === 1 ? 'one chain' : `${chained} chains`}`;
};

/** The block and the step of a share. */
export const memberIn = (
  { blocks }: QuiltPlan,
  { entry, step }: ChainMember,
): { readonly block: BlockPlan; readonly step: PlannedStep } => {
  const block = blocks[entry] as BlockPlan;
  return { block, step: block.steps[step] as PlannedStep };
};

export const chainWords = (plan: QuiltPlan, batch: ChainBatch): ChainWords => {
  const { block, step } = memberIn(plan, batch.members[0]);
  // counted over all blocks that take it
  const words = stepWords(plan, { block, step: { ...step, perBlock: 1 }, counts: [batch.count] });
  return {
    ...words,
    make: `${batch.count}${howMade(step, batch.count)}`,
    members: batch.members.map((member) => {
      const its = memberIn(plan, member);
      return `${titleOf(plan, its.block)}, ${partName(its.step.makes)}: ${member.count}`;
    }),
    press: batch.isPressedAlike ? pressText(step) : 'Press as the steps of its blocks say.',
    measures: measuresText(plan, step, ''),
    machine:
      batch.members.length > 1 && step.made && step.made.way.name !== 'singly'
        ? 'Sew them as the steps of their blocks say.'
        : words.machine,
  };
};

/** What is chained as it lies says nothing. */
const howMade = ({ kind, made }: PlannedStep, count: number): string => {
  if (made && made.way.name !== 'singly') return `, ${wayText(made.way.name)}`;
  return isChained({ kind }) || count === 1 ? '' : ', one by one';
};
