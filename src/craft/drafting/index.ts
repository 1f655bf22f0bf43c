// Drafting: recipes and drawings become patches that tile the block.

import type { BlockDesign, BlockShape } from '#craft/design';
import { done, type Outcome, refused } from '#ground/outcome';
import { cabinDraft, framedDraft } from './around.ts';
import type { DraftedBlock } from './block.ts';
import { drawingDraft } from './drawing.ts';
import type { ExactDraft } from './exact-draft.ts';
import { patchesDraft } from './patches.ts';
import type { DraftingProblem } from './problems.ts';
import { settled } from './settled.ts';
import { tilingProblems } from './tiling.ts';
import { unitOverlaps, unitsDraft } from './units.ts';

export { type DraftedBlock, fabricsOf, type Patch } from './block.ts';
export { mirrored, mirroredSide } from './mirror.ts';
export type { DraftingProblem } from './problems.ts';
export { cornerTolerance, outlineOf } from './settled.ts';

/** The block's patches at turn 0, finished size; or every place where a drawing lies double or bare. */
export const draftBlock = (design: BlockDesign): Outcome<DraftedBlock, DraftingProblem> => {
  const drafted = draftShape(design.shape, design);
  return drafted.ok ? done(settled(drafted.value, design)) : drafted;
};

type Place = Pick<BlockDesign, 'id' | 'title' | 'path'>;

const draftShape = (shape: BlockShape, place: Place): Outcome<ExactDraft, DraftingProblem> => {
  const { id: block, path } = place;
  switch (shape.kind) {
    case 'log-cabin': {
      if (shape.centreBlock === null) return done(cabinDraft(shape, { core: null, path }));
      const core = draftShape(shape.centreBlock.shape, { ...place, path: `${path}/recipe/centre` });
      // what is wrong with the block in the centre is told at that block
      return core.ok ? done(cabinDraft(shape, { core: core.value, path })) : refused([]);
    }
    case 'patches':
      return tiling(patchesDraft(shape, path), place);
    case 'units': {
      const overlaps = unitOverlaps({ shape, block, path });
      return overlaps.length > 0 ? refused(overlaps) : tiling(unitsDraft(shape, path), place);
    }
    case 'drawing':
      return drawingDraft({ shape, block, path });
    case 'collection':
      return draftShape(shape.shape, place);
    case 'elsewhere':
      return done({ size: shape.size, patches: [], added: [] });
    case 'framed': {
      const inner = draftShape(shape.inner, place);
      return inner.ok ? done(framedDraft(shape, { inner: inner.value, path })) : inner;
    }
  }
};

const tiling = (draft: ExactDraft, place: Place): Outcome<ExactDraft, DraftingProblem> => {
  const problems = tilingProblems(settled(draft, place));
  return problems.length > 0 ? refused(problems) : done(draft);
};
