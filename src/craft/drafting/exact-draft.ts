// A drawing before it becomes doubles: patches with exact corners in the document's unit, from the shape's own
// upper left corner. Shapes are put inside each other here, without rounding.
import type { ExactSize, Side } from '#craft/design';
import { add, div, mul, type Rational } from '#ground/exact';

export interface ExactDraft {
  readonly size: ExactSize;
  readonly patches: readonly ExactPatch[];
  /** The sides on which the last patches are added, in order, to those before them. */
  readonly added: readonly Side[];
}

export interface ExactPatch {
  readonly corners: readonly ExactCorner[];
  /** Edges that are arcs; none where missing. */
  readonly arcs?: readonly ExactArc[] | undefined;
  readonly tone: string;
  readonly letter?: string | undefined;
  readonly fabric?: string | undefined;
  readonly path: string;
}

export interface ExactArc {
  /** The corner that it begins at, by index; it ends at the next. */
  readonly edge: number;
  /** Equally far from both ends, but for the tolerance of corners. */
  readonly centre: ExactCorner;
  readonly clockwise: boolean;
}

export type ExactCorner = readonly [x: Rational, y: Rational];

export interface ExactBox {
  readonly left: Rational;
  readonly top: Rational;
  readonly right: Rational;
  readonly bottom: Rational;
}

/** Clockwise on screen, from the upper left. */
export const boxCorners = ({ left, top, right, bottom }: ExactBox): readonly ExactCorner[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

export const moved = (patches: readonly ExactPatch[], by: ExactCorner): readonly ExactPatch[] =>
  patches.map((patch) => ({
    ...patch,
    corners: patch.corners.map((corner) => shifted(corner, by)),
    arcs: patch.arcs?.map((arc) => ({ ...arc, centre: shifted(arc.centre, by) })),
  }));

const shifted = ([x, y]: ExactCorner, by: ExactCorner): ExactCorner => [add(x, by[0]), add(y, by[1])];

/** From the block's grid to its finished size. */
export const offGrid = (shape: {
  readonly size: ExactSize;
  readonly grid: readonly [Rational, Rational];
}): ((corner: ExactCorner) => ExactCorner) => {
  const across = div(shape.size[0], shape.grid[0]);
  const down = div(shape.size[1], shape.grid[1]);
  return ([x, y]) => [mul(x, across), mul(y, down)];
};
