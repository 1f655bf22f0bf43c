// Which units of a block that does not go on foundations as a whole can be pieced on one each, as they are sewn anyway?
import { drawingOf } from '#craft/chords';
import { cornerTolerance } from '#craft/limits';
import type { Arc } from '#ground/arc';
import { convexOutlines } from '#ground/outline';
import type { Polygon } from '#ground/plane';
import { type FoundationOrder, foundationOrder } from './order.ts';

export interface UnitsOf {
  readonly patches: readonly { readonly points: Polygon; readonly arcs?: readonly Arc[] }[];
  readonly finished: readonly [width: number, height: number];
  /** In the order of sewing: names of what is joined and made, and the patches of one such unit. */
  readonly steps: readonly {
    readonly join: readonly string[];
    readonly makes: string;
    readonly patches: readonly [readonly number[], readonly number[]];
  }[];
}

/** A unit, by the place of the step that makes it. */
export interface UnitOnOne {
  readonly step: number;
  readonly order: FoundationOrder;
}

/** One seam is sewn as quickly without paper. Our own figure. */
const fewestPatches = 3;

/**
 * The largest units, none inside another: convex, of straight edges alone, and of three patches or more.
 *
 * @returns in the order of sewing
 */
export const unitsOnOne = ({ patches, finished, steps }: UnitsOf): readonly UnitOnOne[] => {
  const slack = cornerTolerance * Math.max(...finished);
  const outlines = patches.map(({ points }) => points);
  const arcs = patches.map((patch) => patch.arcs ?? []);
  const drawing = drawingOf(outlines, slack, arcs);
  const convexOutline = convexOutlines(outlines, slack);
  const makers = new Map(steps.map(({ makes }, place) => [makes, place] as const));
  const found = new Map<number, UnitOnOne | null>();
  const look = (step: number): void => {
    const { join, patches: parts } = steps[step] as UnitsOf['steps'][number];
    const unit = [...new Set(parts.flat())].sort((a, b) => a - b);
    if (found.has(step) || unit.length < fewestPatches) return;
    const isStraight = unit.every((patch) => arcs[patch]?.length === 0);
    const order = isStraight && convexOutline(unit) !== null ? foundationOrder(drawing, unit) : null;
    found.set(step, order && { step, order });
    if (order !== null) return;
    for (const part of join) {
      const maker = makers.get(part);
      if (maker !== undefined) look(maker);
    }
  };
  look(steps.length - 1);
  return [...found.values()].filter((unit) => unit !== null).toSorted((a, b) => a.step - b.step);
};
