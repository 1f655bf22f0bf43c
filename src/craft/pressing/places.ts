// For pictures: the points at which seams meet, in a block and in the top.
import { topSeams } from '#craft/piecing';
import type { SetTop } from '#craft/setting';
import type { Point } from '#ground/plane';
import { type SewnSeams, spotsInBlock } from './block.ts';
import { spotsInTop } from './spots-in-top.ts';

interface FacedBlock extends Pick<SewnSeams, 'seams'> {
  /** Mirrored already, with its seams, where its entry is. */
  readonly finished: readonly [number, number];
}

/** In the block's frame. */
export const meetingPlacesIn = (block: FacedBlock): readonly Point[] =>
  spotsInBlock(block, block.finished)
    .spots.filter(({ meetings }) => meetings.length > 0)
    .map(({ at }) => at);

/**
 * Between blocks, rows, sashes and borders.
 *
 * @param blockAt the entry of every placed block, by its place among the blocks
 */
export const meetingPlacesOf = (of: {
  readonly set: SetTop;
  readonly blocks: readonly FacedBlock[];
  readonly blockAt: readonly number[];
}): readonly Point[] => {
  const { set, blocks, blockAt } = of;
  const rims = blocks.map((block) => ({ size: block.finished, rim: spotsInBlock(block, block.finished).rim }));
  const placed = set.placed.map((one) => ({ ...one, mirror: false }));
  return spotsInTop({ set: { ...set, placed }, rims, seams: topSeams(set), entryOf: blockAt })
    .filter(({ meetings }) => meetings.length > 0)
    .map(({ at }) => at);
};
