// In which order can the patches of a unit be sewn to one foundation, each along one straight line? The last is cut off from all
// others by a seam from edge to edge, the one before it from all before it, and so on down to the first.
import type { Drawing, SeamLine } from '#craft/chords';

/** One after the other; the first is laid on without a seam. */
export type FoundationOrder = readonly {
  readonly patch: number;
  /** Null for the first. */
  readonly line: SeamLine | null;
}[];

/**
 * Where several could be the last, the one that `rank` puts furthest back: any of them leads on, since what is left of an order without
 * one of its patches is an order of the rest.
 *
 * @param unit patches of a convex unit of the drawing
 * @returns null where some part of it cannot be sewn so
 * @source the criterion: Leake, Bernstein, Davis and Agrawala, 'A Mathematical Foundation for Foundation Paper Pieceable Quilts', 2021
 *   (a design can be pieced on one foundation exactly when its faces can be plucked one by one); in chords of a convex block it is ours
 */
export const foundationOrder = (
  drawing: Drawing,
  unit: readonly number[],
  rank: (patch: number) => number = (patch) => patch,
): FoundationOrder | null => {
  const left = new Set(unit);
  const backwards: { readonly patch: number; readonly line: SeamLine | null }[] = [];
  const fromLast = [...unit].sort((a, b) => rank(b) - rank(a));
  while (left.size > 1) {
    const last = firstThat(fromLast, (patch) => (left.has(patch) ? lineThatCutsOff(drawing, left, patch) : null));
    if (last === null) return null;
    left.delete(last.patch);
    backwards.push(last);
  }
  for (const patch of left) backwards.push({ patch, line: null });
  return backwards.reverse();
};

const firstThat = (
  patches: readonly number[],
  lineOf: (patch: number) => SeamLine | null,
): { readonly patch: number; readonly line: SeamLine } | null => {
  for (const patch of patches) {
    const line = lineOf(patch);
    if (line !== null) return { patch, line };
  }
  return null;
};

/** A line along one of its edges that has this patch on one hand and all others of the unit on the other. */
const lineThatCutsOff = (drawing: Drawing, left: ReadonlySet<number>, patch: number): SeamLine | null => {
  for (const index of drawing.linesOf[patch] as readonly number[]) {
    const side = drawing.side[index] as Int8Array;
    const own = side[patch] as number;
    if (own !== 0 && allOn(left, patch, (other) => side[other] === -own)) return drawing.lines[index] as SeamLine;
  }
  return null;
};

const allOn = (left: ReadonlySet<number>, but: number, isThere: (patch: number) => boolean): boolean => {
  for (const patch of left) if (patch !== but && !isThere(patch)) return false;
  return true;
};
