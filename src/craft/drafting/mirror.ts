// A block seen in a mirror: left and right change places, the order of patches stays.

import type { Side } from '#craft/design';
import type { Arc } from '#ground/arc';
import { at, type Point } from '#ground/plane';
import type { DraftedBlock } from './block.ts';

export const mirroredSide = (side: Side): Side => (side === 'left' ? 'right' : side === 'right' ? 'left' : side);

const across =
  ({ size }: DraftedBlock) =>
  (p: Point): Point =>
    at(size[0] - p.x, p.y);

/** Turned over and walked the other way: it runs round its centre as it did. */
const mirroredArc = ({ from, to, centre, clockwise }: Arc, over: (p: Point) => Point): Arc => ({
  from: over(to),
  to: over(from),
  centre: over(centre),
  clockwise,
});

export const mirrored = (block: DraftedBlock): DraftedBlock => ({
  ...block,
  patches: block.patches.map((patch) => ({
    ...patch,
    // reversed, so that the outline runs clockwise again
    points: patch.points.map(across(block)).toReversed(),
    ...(patch.arcs === undefined ? {} : { arcs: patch.arcs.map((arc) => mirroredArc(arc, across(block))) }),
  })),
  added: block.added?.map(mirroredSide) ?? null,
});
