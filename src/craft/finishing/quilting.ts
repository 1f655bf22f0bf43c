// How are straight quilting lines spread so that no part of the batting lies free further than its maker allows? Evenly, from
// edge to edge; says nothing of patterns.
import { type Length, length } from '#craft/measure';

/** Lines that part a width evenly. */
export interface EvenLines {
  /** Between the edges. */
  readonly count: number;
  /** From one to the next, and from the outer ones to the edge; at most what was asked for. */
  readonly apart: Length;
}

/** @param most distance that may lie between two lines, above zero; all in one unit */
export const evenLines = (width: Length, most: Length): EvenLines => {
  const spans = Math.max(1, Math.ceil(width / most - 1e-9));
  return { count: spans - 1, apart: length(width / spans) };
};
