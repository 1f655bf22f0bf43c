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
export { outlineOf } from './settled.ts';

/** The block's patches at turn 0, finished size; or every place where a drawing lies double or bare. */
export const draftBlock = (design: BlockDesign): Outcome<DraftedBlock, DraftingProblem> => blockDrafter()(design);

/** Drafts block after block of one document; a block that lies in others' centres is drafted once. */
export const blockDrafter = (): ((design: BlockDesign) => Outcome<DraftedBlock, DraftingProblem>) => {
  const known: KnownDrafts = new Map();
  return (design) => {
    const drafted = draftShape(design.shape, { ...design, known });
    return drafted.ok ? done(settled(drafted.value, design)) : drafted;
  };
};

type KnownDrafts = Map<BlockShape, Outcome<ExactDraft, DraftingProblem>>;

interface Place extends Pick<BlockDesign, 'id' | 'path'> {
  readonly known: KnownDrafts;
}

const draftShape = (shape: BlockShape, place: Place): Outcome<ExactDraft, DraftingProblem> => {
  const before = place.known.get(shape);
  if (before !== undefined) return before;
  const drafted = newDraft(shape, place);
  place.known.set(shape, drafted);
  return drafted;
};

const newDraft = (shape: BlockShape, place: Place): Outcome<ExactDraft, DraftingProblem> => {
  const { id: block, path, known } = place;
  switch (shape.kind) {
    case 'log-cabin': {
      if (shape.centreBlock === null) return done(cabinDraft(shape, { core: null, path }));
      const { centreBlock } = shape;
      const core = draftShape(centreBlock.shape, { id: centreBlock.block, path: centreBlock.path, known });
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
  const problems = tilingProblems(settled(draft, { ...place, title: '' }));
  return problems.length > 0 ? refused(problems) : done(draft);
};
