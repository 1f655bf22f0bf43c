// Patches drawn on a grid, brought to the block's finished size.

import type { PatchesDesign } from '#craft/design';
import { type ExactDraft, offGrid } from './exact-draft.ts';

/** @param path of the block */
export const patchesDraft = (shape: PatchesDesign, path: string): ExactDraft => {
  const place = offGrid(shape);
  const patches = shape.patches.map(({ corners, arcs, tone, letter }, index) => ({
    corners: corners.map(place),
    arcs: arcs?.map((arc) => ({ ...arc, centre: place(arc.centre) })),
    tone,
    letter,
    path: `${path}/patches/list/${index}`,
  }));
  return { size: shape.size, patches, added: [] };
};
