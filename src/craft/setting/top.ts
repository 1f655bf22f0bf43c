// A top that has been set: where every block, sash, cornerstone, plain square and border lies.
import type { QuarterTurn } from '#craft/design';
import type { Length } from '#craft/measure';

export interface SetTop {
  /** Finished, borders included. */
  readonly width: Length;
  readonly height: Length;
  /** The middle, without borders. */
  readonly middle: Rect;
  readonly placed: readonly PlacedBlock[];
  readonly strips: readonly PlacedStrip[];
  /** The middle from top to bottom: each row's parts from left to right. */
  readonly rows: readonly TopRow[];
  /** From the inside outward: indexes into `strips`, in sewing order. */
  readonly borders: readonly { readonly sides: readonly [number, number]; readonly ends: readonly [number, number] }[];
}

export interface Rect {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
}

/** A block instance: turned and mirrored about its own middle, its turned outline's upper left corner at x, y. */
export interface PlacedBlock {
  readonly block: string;
  readonly colouring: string;
  readonly mirror: boolean;
  readonly turn: QuarterTurn;
  readonly at: readonly [x: Length, y: Length];
  /** Of the turned outline. */
  readonly size: readonly [width: Length, height: Length];
}

export type StripRole = 'sash' | 'cornerstone' | 'plain' | 'border';

/** A plain rectangle of the top. */
export interface PlacedStrip {
  readonly role: StripRole;
  readonly fabric: string;
  readonly rect: Rect;
  /** For borders: how it may lie on the cloth. */
  readonly grain: 'lengthwise' | 'crosswise' | 'least' | null;
  /** 0-based border ring, else null. */
  readonly border: number | null;
  readonly path: string;
}

export interface TopRow {
  readonly kind: 'blocks' | 'sashes';
  readonly parts: readonly ({ readonly block: number } | { readonly strip: number })[];
}
