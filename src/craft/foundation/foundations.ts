// On how few foundations can a block be pieced, and in which order?
import { type Drawing, drawingOf } from '#craft/chords';
import { cornerTolerance } from '#craft/limits';
import type { Arc } from '#ground/arc';
import { at, centroid, distance, type Polygon } from '#ground/plane';
import { orderLike } from './alike.ts';
import { type FoundationOrder, foundationOrder } from './order.ts';
import { leastSections, type Sections } from './sections.ts';

export interface FoundationsOf {
  /** Of a rectangle, tiled. */
  readonly patches: readonly { readonly points: Polygon; readonly arcs?: readonly Arc[] }[];
  readonly finished: readonly [width: number, height: number];
  /** Steps of sewing by seams, each with the patches of its two parts: what is sewn later there comes later here, where it can; else what is listed later, and the middle first. */
  readonly steps: readonly { readonly patches: readonly [readonly number[], readonly number[]] }[];
}

/** More are not pieced on paper by anyone, and would take long to look through. Our own figure. */
export const mostFoundationPatches = 200;

/** @returns null where not every seam runs straight from edge to edge, or the patches are too many */
export const foundationsOf = ({ patches, finished, steps }: FoundationsOf): Sections | null => {
  if (patches.length === 0 || patches.length > mostFoundationPatches) return null;
  const taken = new Map<number, number>();
  const parts = steps.flatMap((step) => step.patches);
  parts.forEach((part, number) => {
    for (const patch of part) if (!taken.has(patch)) taken.set(patch, number);
  });
  const slack = cornerTolerance * Math.max(...finished);
  const outlines = patches.map(({ points }) => points);
  const later = outward(outlines, finished, slack);
  const drawing = drawingOf(
    outlines,
    slack,
    patches.map(({ arcs }) => arcs ?? []),
  );
  const least = leastSections({
    drawing,
    unit: patches.map((_, patch) => patch),
    rank: (patch) => taken.get(patch) ?? parts.length + (later[patch] as number),
  });
  return least && { ...least, sections: sewnAlike({ drawing, patches: outlines, sections: least.sections, slack }) };
};

/** By patch: where a patch lies in the middle of the block, round by round from there; else as they are listed. */
const outward = (
  outlines: readonly Polygon[],
  [width, height]: readonly [number, number],
  slack: number,
): readonly number[] => {
  const away = outlines.map((outline) => distance(centroid(outline), at(width / 2, height / 2)));
  if (!away.some((far) => far < 3 * slack)) return outlines.map((_, patch) => patch);
  return away.map((far, patch) => Math.round(far / (10 * slack)) + patch / outlines.length);
};

const sewnAlike = (of: {
  readonly drawing: Drawing;
  readonly patches: readonly Polygon[];
  readonly sections: readonly FoundationOrder[];
  readonly slack: number;
}): readonly FoundationOrder[] => {
  const sewn: FoundationOrder[] = [];
  for (const section of of.sections) {
    const unit = section.map(({ patch }) => patch);
    const order = firstOf(sewn, (like) => orderLike({ ...of, unit, like, slack: 3 * of.slack }));
    // of several that could be the last it takes the one that comes later: that is the order
    const turned = order && foundationOrder(of.drawing, unit, (patch) => order.indexOf(patch));
    sewn.push(turned ?? section);
  }
  return sewn;
};

const firstOf = <T, Found>(list: readonly T[], find: (one: T) => Found | null): Found | null => {
  for (const one of list) {
    const found = find(one);
    if (found !== null) return found;
  }
  return null;
};
