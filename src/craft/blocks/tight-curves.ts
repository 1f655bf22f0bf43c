// Pieces with a hollow side so tight that about the same centre nothing is left for the allowance.
import { type CuttingProblem, tightestHollow } from '#craft/cutting';
import { type Length, length } from '#craft/measure';
import type { BlockPlan } from '#craft/plan';

/** Each kind of piece once: a mirrored block has its own entry, and the same curves. */
export const tightCurves = (of: {
  readonly blocks: readonly BlockPlan[];
  readonly seam: Length;
  readonly pathOf: (block: string) => string;
}): readonly CuttingProblem[] => {
  const found = new Map<string, CuttingProblem>();
  for (const block of of.blocks) {
    for (const { piece, points, arcs = [] } of block.patches) {
      const radius = tightestHollow({ points, arcs });
      if (radius > of.seam) continue;
      found.set(JSON.stringify([block.id, piece]), {
        code: 'cutting/curve-too-tight',
        path: of.pathOf(block.id),
        block: block.id,
        label: piece,
        radius: length(radius),
        seam: of.seam,
      });
    }
  }
  return [...found.values()];
};
