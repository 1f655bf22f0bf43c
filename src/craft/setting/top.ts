// A top that has been set: where every block and every plain piece lies, and in what order of runs and
// rounds they can be joined. Frames and places only; cutting and pressing come later.
import type { Length } from '#craft/measure';
import type { Polygon } from '#ground/plane';

export interface SetTop {
  /** Finished, borders included. */
  readonly width: Length;
  readonly height: Length;
  /** The middle, without borders. */
  readonly middle: Rect;
  readonly placed: readonly PlacedBlock[];
  readonly strips: readonly PlacedStrip[];
  /**
   * The middle by rows, for pictures, each row's parts from left to right: from the top down, or on point
   * the slanted rows from the upper left corner. None in a set of sections.
   */
  readonly rows: readonly TopRow[];
  /** How the middle is joined. */
  readonly assembly: Assembly;
  /** From the inside outward. */
  readonly borders: readonly BorderRing[];
}

export interface Rect {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
}

/** Clockwise, in degrees: quarter turns, and odd eighths for blocks on point. */
export type EighthTurn = 0 | 45 | 90 | 135 | 180 | 225 | 270 | 315;

/**
 * A block instance: mirrored left to right, then turned about its own middle, the box round its turned outline
 * with the upper left corner at `at`.
 */
export interface PlacedBlock {
  readonly block: string;
  readonly colouring: string;
  readonly mirror: boolean;
  /** On point 45 and the cell's own turn: a block of turn 0 has its upper left corner at the top. */
  readonly turn: EighthTurn;
  readonly at: readonly [x: Length, y: Length];
  /** Of the box round the turned outline. */
  readonly size: readonly [width: Length, height: Length];
  /** Its place in the document: a cell, a part of a section, or the border that it is one of. */
  readonly path: string;
}

export type StripRole =
  | 'sash'
  | 'cornerstone'
  | 'plain'
  | 'strip'
  | 'fill'
  | 'side-triangle'
  | 'corner-triangle'
  | 'border'
  | 'spacer'
  | 'border-corner';

/** A plain piece of the top: a rectangle that may lie slanted, a triangle, or a border with mitred ends. */
export interface PlacedStrip {
  readonly role: StripRole;
  readonly fabric: string;
  /** The finished outline in the top's frame, clockwise. */
  readonly points: Polygon;
  /** The box round it. */
  readonly rect: Rect;
  /** For border strips and spacers: how they may lie on the cloth. */
  readonly grain: 'lengthwise' | 'crosswise' | 'least' | null;
  /** 0-based border ring, else null. */
  readonly border: number | null;
  readonly path: string;
}

export interface TopRow {
  readonly kind: 'blocks' | 'sashes';
  readonly parts: readonly TopThing[];
}

/** A placed block (index into `placed`) or a plain piece (index into `strips`). */
export type TopThing = { readonly block: number } | { readonly strip: number };

/**
 * What is joined to what. A run is joined from its first part to its last, side by side or one under the other in
 * its own frame; a round lays its parts one after another against the sides of a core.
 */
export type Assembly =
  | { readonly thing: TopThing }
  | {
      readonly run: 'across' | 'down';
      /** The run's frame, clockwise from the top's: 0 upright, 315 for rows on point, quarter turns in borders. */
      readonly angle: EighthTurn;
      readonly stage: RunStage;
      /** 0-based: the row, the section or the border ring. */
      readonly of: number;
      readonly parts: readonly Assembly[];
    }
  | { readonly core: Assembly; readonly round: Round };

export type RunStage = 'row' | 'rows' | 'section' | 'border';

export interface Round {
  readonly angle: EighthTurn;
  readonly parts: readonly RoundPart[];
}

/** The side is seen in the round's frame. */
export interface RoundPart {
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  readonly assembly: Assembly;
}

export interface BorderRing extends Round {
  /** Spacers are plain strips that bring the middle to a size that the units of a pieced border divide. */
  readonly kind: 'butted' | 'squares' | 'mitred' | 'spacer' | 'pieced';
  /** 0-based place of its border in the document: a pieced border and its spacers share one. */
  readonly border: number;
}
