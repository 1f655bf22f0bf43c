// A drafted block: its finished size and the patches that tile it, at turn 0 and not mirrored.

import type { Side } from '#craft/design';
import type { Length } from '#craft/measure';
import type { Rational } from '#ground/exact';
import type { Point } from '#ground/plane';

export interface DraftedBlock {
  readonly id: string;
  readonly title: string;
  readonly path: string;
  readonly exactSize: readonly [width: Rational, height: Rational];
  readonly size: readonly [width: Length, height: Length];
  readonly patches: readonly Patch[];
  /** For a recipe that fixes the order of sewing: the sides on which patches 1, 2, 3, … are added to patch 0. */
  readonly added: readonly Side[] | null;
}

/** A shape in a drawing. Corners run clockwise on screen, in the document's unit, from the block's upper left corner. */
export interface Patch {
  readonly tone: string;
  readonly points: readonly Point[];
  /** The place in the document that it comes from. */
  readonly path: string;
}
