// A drafted block: its finished size and the patches that tile it, at turn 0 and not mirrored.

import type { Colouring, Side, ToneFabric } from '#craft/design';
import type { Length } from '#craft/measure';
import type { Arc } from '#ground/arc';
import type { Rational } from '#ground/exact';
import type { Point } from '#ground/plane';

export interface DraftedBlock {
  readonly id: string;
  readonly title: string;
  readonly path: string;
  readonly exactSize: readonly [width: Rational, height: Rational];
  readonly size: readonly [width: Length, height: Length];
  /** None: the block is made elsewhere. */
  readonly patches: readonly Patch[];
  /**
   * Where the order of sewing is given: the sides on which the last patches, as many as there are sides, are
   * added in order to the core, the patches before them. A plain log cabin's core is patch 0.
   */
  readonly added: readonly Side[] | null;
}

/** A shape in a drawing. Corners run clockwise on screen, in the document's unit, from the block's upper left corner. */
export interface Patch {
  readonly tone: string;
  /** Which of the tone's cloths, where the collection tells them apart. */
  readonly letter?: string;
  /** A frame's cloth: no colouring changes it. */
  readonly fabric?: string;
  readonly points: readonly Point[];
  /** The parts of its outline that are arcs, between corners of the drawing; chords stand for them in `points`. None where missing. */
  readonly arcs?: readonly Arc[];
  /** The place in the document that it comes from. */
  readonly path: string;
}

/** The cloths that a patch may be cut from: its own, its letter's, or its tone's; several where they are drawn at random. */
export const fabricsOf = ({ fabric, letter, tone }: Patch, colouring: Colouring): readonly string[] => {
  const named = fabric ?? (letter === undefined ? undefined : colouring[letter]) ?? (colouring[tone] as ToneFabric);
  return typeof named === 'string' ? [named] : named;
};
