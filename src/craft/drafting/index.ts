// Drafting: recipes and drawings become patches that tile the block.

import type { BlockDesign } from '#craft/design';
import { done, type Outcome, refused } from '#ground/outcome';
import type { DraftedBlock } from './block.ts';
import { draftLogCabin } from './log-cabin.ts';
import { draftPatches } from './patches.ts';
import type { DraftingProblem } from './problems.ts';
import { tilingProblems } from './tiling.ts';

export type { DraftedBlock, Patch } from './block.ts';
export { mirrored, mirroredSide } from './mirror.ts';
export { cornerTolerance, outlineOf } from './patches.ts';
export type { DraftingProblem } from './problems.ts';

/** The block's patches at turn 0, finished size; or every place where a drawing lies double or bare. */
export const draftBlock = (design: BlockDesign): Outcome<DraftedBlock, DraftingProblem> => {
  const { id, title, path, shape } = design;
  if (shape.kind === 'log-cabin') return done(draftLogCabin({ id, title, path, shape }));
  const drafted = draftPatches({ id, title, path, shape });
  const problems = tilingProblems(drafted);
  return problems.length > 0 ? refused(problems) : done(drafted);
};
