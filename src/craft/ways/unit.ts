// A unit that can be made in more than one way, where it stands in a drawing.
import type { UnitKind } from '#craft/design';
import type { Length } from '#craft/measure';
import type { Polygon } from '#ground/plane';

/** A unit where it stands. */
export interface Unit {
  readonly kind: UnitKind;
  /** Finished, across and down as it lies at turn 0. */
  readonly size: readonly [Length, Length];
  /**
   * Patches of the drawing by the unit's places at turn 0: half-square upper left, lower right; quarter-square top, right,
   * bottom, left; flying geese goose, left sky, right sky; square in a square and sewn corners the middle, then its corners from
   * the upper left clockwise; rails from the left, patches of a grid in reading order.
   */
  readonly patches: readonly number[];
  /** By place. */
  readonly fabrics: readonly string[];
  /** Square in a square and sewn corners: legs of the corners from the upper left clockwise, 0 where there is none; else empty. */
  readonly legs: readonly Length[];
  /** Rails and grids: widths of the columns from the left, and the height of a row; missing for triangles. */
  readonly strips?: { readonly widths: readonly Length[]; readonly height: Length };
}

/** A patch where it lies. */
export interface Laid {
  readonly points: Polygon;
  readonly fabric: string;
}
