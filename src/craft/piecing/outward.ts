// Does a block grow outward from its middle, as a log cabin does?
import { centroid, distance, type Polygon } from '#ground/plane';
import type { Join, JoinTree } from './join.ts';
import type { SewnBlock } from './sewn.ts';

/**
 * Whether the block grows piece by piece round a patch in its middle, as a log cabin does: then the
 * middle comes first and every seam is pressed away from it.
 */
export const buildsOutward = (block: SewnBlock, tree: JoinTree): boolean => {
  let form = tree.root;
  for (;;) {
    const join = tree.joins.get(form) as Join;
    if (join.kind === 'ring' || join.bends > 0) return false;
    const [first, second] = join.branches;
    if ('form' in first && 'form' in second) return false;
    if ('form' in first) form = first.form;
    else if ('form' in second) form = second.form;
    else return inside(block, first.patch) || inside(block, second.patch);
  }
};

const inside = (block: SewnBlock, patch: number): boolean =>
  (block.outlines[patch] as Polygon).every(
    (p) =>
      p.x > block.slack && p.y > block.slack && p.x < block.size[0] - block.slack && p.y < block.size[1] - block.slack,
  );

/** Whether patch a lies nearer to the block's middle than b. */
export const nearerMiddle = (block: SewnBlock, a: number, b: number): boolean => {
  const middle = { x: block.size[0] / 2, y: block.size[1] / 2 };
  const far = (i: number) => distance(centroid(block.outlines[i] as Polygon), middle);
  return far(a) < far(b) - block.slack;
};
