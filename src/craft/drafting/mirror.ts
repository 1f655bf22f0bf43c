// A block seen in a mirror: left and right change places, the order of patches stays.

import type { Side } from '#craft/design';
import { at } from '#ground/plane';
import type { DraftedBlock } from './block.ts';

export const mirroredSide = (side: Side): Side => (side === 'left' ? 'right' : side === 'right' ? 'left' : side);

export const mirrored = (block: DraftedBlock): DraftedBlock => ({
  ...block,
  patches: block.patches.map((patch) => ({
    ...patch,
    // reversed, so that the outline runs clockwise again
    points: patch.points.map((p) => at(block.size[0] - p.x, p.y)).toReversed(),
  })),
  added: block.added?.map(mirroredSide) ?? null,
});
