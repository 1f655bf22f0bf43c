// Sewing in chains: the units of all blocks round after round, the same ones together, as a sewer with the whole quilt cut does.
import type { QuiltPlan } from '#craft';
import type { ChainBatch } from '#craft/chains';
import type { ClothSigns } from '#paper/cloth';
import { asFirstPlaced, type Drawing, drawStep } from '#paper/drawing';
import { type Album, type Picture, shown } from './album.ts';
import { titleOf } from './block-head.ts';
import { type ChainWords, chainWords, memberIn, quiltChains, roundSum, roundTitle } from './chain-words.ts';

export interface ChainsPage {
  readonly rounds: readonly {
    readonly title: string;
    readonly sum: string;
    readonly batches: readonly ChainLine[];
  }[];
}

export interface ChainLine extends Pick<ChainWords, 'make' | 'members' | 'press' | 'measures'> {
  readonly number: string;
  readonly picture: Picture;
}

interface ChainsOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** @returns null where nothing is sewn but on foundations */
export const chainsPage = (of: ChainsOf): ChainsPage | null => {
  const { plan, album } = of;
  const rounds = quiltChains(plan);
  if (rounds.length === 0) return null;
  return {
    rounds: rounds.map((round, i) => ({
      title: roundTitle(i + 1),
      sum: roundSum(plan, round),
      batches: round.batches.map((batch): ChainLine => {
        const { make, members, press, measures } = chainWords(plan, batch);
        const picture = shown(album, `chain-${batch.number}`, drawBatch(of, batch));
        return { number: String(batch.number), picture, make, members, press, measures };
      }),
    })),
  };
};

/** What is joined, in the first block of those that take the unit, with the cloths that it has where it is first placed. */
export const drawBatch = ({ plan, signs }: Omit<ChainsOf, 'album'>, batch: ChainBatch): Drawing => {
  const { block, step } = memberIn(plan, batch.members[0]);
  return drawStep({
    block: asFirstPlaced(plan, block),
    step,
    signs,
    ruler: plan.quilt,
    fitPt: [112, 62],
    alt: `${titleOf(plan, block)}, step ${step.number}: what is joined, as it lies on the board.`,
  });
};
