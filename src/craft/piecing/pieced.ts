// A block in sewing order: kinds of piece with their labels, and the steps that join them.

import type { Side } from '#craft/design';
import type { Length } from '#craft/measure';
import type { Arc } from '#ground/arc';
import type { Point, Polygon } from '#ground/plane';
import type { Lying } from './machine.ts';

export interface PiecedBlock {
  /** Kinds of piece in the order of their labels. */
  readonly kinds: readonly PieceKind[];
  /** For each patch of the drafted block, the index of its kind. */
  readonly kindOf: readonly number[];
  readonly joining: 'straight' | 'curved' | 'partial' | 'set-in';
  readonly steps: readonly SewingStep[];
  /** Every seam of one block where it lies, those of a unit's parts before its own. */
  readonly seams: readonly SeamInPlace[];
  /** Whether the number of different units is proven least, or the best of a search. */
  readonly leastUnits: 'proven' | 'searched';
}

/** Congruent patches of one fabric; a mirror image is another kind. */
export interface PieceKind {
  readonly label: string;
  readonly fabric: string;
  readonly tone: string;
  /** A representative patch: index into the block's patches. */
  readonly patch: number;
  readonly perBlock: number;
}

export interface SewingStep {
  readonly number: number;
  /** What is joined: a kind of piece, or the unit made by an earlier step (both by index). The second goes onto the first. */
  readonly join: readonly [Part, Part];
  /**
   * Straight; curved, along arcs in one smooth run; a ring's first seam sewn part-way, and closed at the end; set in, round `corners`
   * inside corners; or along a line of a printed foundation, where the second is a single piece.
   * A seam to close joins the unit of the step before and the part that hangs on it already.
   */
  readonly kind: 'straight' | 'curved' | 'partial-begin' | 'partial-close' | 'set-in' | 'foundation';
  readonly corners: number;
  /** Where the second lies, seen from the first, on the board. */
  readonly side: Side;
  /** The same square to the seam: degrees clockwise, 0 to the right. */
  readonly heading: number;
  /** Clockwise turn of the first part, in degrees, from how it last lay at the machine, that brings the new seam to the right hand. */
  readonly machineTurn: number;
  /** How the first part lies before it is turned. */
  readonly lying: Lying;
  /** Finished length of the seam. */
  readonly seam: Length;
  /** The part that the allowances would be pressed toward if no other seam met this one. */
  readonly wish: PressWish;
  /** Patches of the representative unit this step makes: the first part's, then the second's. */
  readonly patches: readonly [readonly number[], readonly number[]];
  /** The seam on the board, finished, from end to end, in the block's frame; chords stand for arcs. */
  readonly line: Polygon;
  /** The parts of it that are arcs, as they are walked along it; none where missing. */
  readonly arcs?: readonly Arc[];
  /** Ends of the seam where sewing stops on the mark, an allowance from the edge: a piece is set in there later. */
  readonly stopsAt: readonly Point[];
  /** Unfinished size to measure after pressing, across and down. */
  readonly unfinished: readonly [Length, Length];
  /** How many of this unit one block takes. */
  readonly perBlock: number;
}

/** One seam as it lies in the block. */
export interface SeamInPlace {
  /** Index of its step. */
  readonly step: number;
  /** From end to end, in the block's frame. */
  readonly path: Polygon;
  /** Where the second part lies, square to the seam: degrees clockwise, 0 to the right. */
  readonly heading: number;
}

/** Index into the step's `join`. */
export interface PressWish {
  readonly toward: 0 | 1;
  /** Outward, and to the hollow side of a curve, is kept whatever meets; the rest gives way to seams that nest. */
  readonly why: 'outward' | 'hollow' | 'darker' | 'flatter';
  /** By how much the cloth along the seam is darker there, in L*. */
  readonly darker: number;
}

export type Part = { readonly piece: number } | { readonly unit: number };
