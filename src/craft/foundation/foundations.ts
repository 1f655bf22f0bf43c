// On how few foundations can a block be pieced, and in which order?
import { drawingOf } from '#craft/chords';
import { cornerTolerance } from '#craft/limits';
import type { Arc } from '#ground/arc';
import type { Polygon } from '#ground/plane';
import { leastSections, type Sections } from './sections.ts';

export interface FoundationsOf {
  /** Of a rectangle, tiled. */
  readonly patches: readonly { readonly points: Polygon; readonly arcs?: readonly Arc[] }[];
  readonly finished: readonly [width: number, height: number];
  /** Steps of sewing by seams, each with the patches of its two parts: what is sewn later there comes later here, where it can. */
  readonly steps: readonly { readonly patches: readonly [readonly number[], readonly number[]] }[];
}

/** More are not pieced on paper by anyone, and would take long to look through. Our own figure. */
const mostFoundationPatches = 200;

/** @returns null where not every seam runs straight from edge to edge, or the patches are too many */
export const foundationsOf = ({ patches, finished, steps }: FoundationsOf): Sections | null => {
  if (patches.length === 0 || patches.length > mostFoundationPatches) return null;
  const taken = new Map<number, number>();
  const parts = steps.flatMap((step) => step.patches);
  parts.forEach((part, number) => {
    for (const patch of part) if (!taken.has(patch)) taken.set(patch, number);
  });
  const drawing = drawingOf(
    patches.map(({ points }) => points),
    cornerTolerance * Math.max(...finished),
    patches.map(({ arcs }) => arcs ?? []),
  );
  return leastSections({
    drawing,
    unit: patches.map((_, patch) => patch),
    rank: (patch) => taken.get(patch) ?? parts.length,
  });
};
