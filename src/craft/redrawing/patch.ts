// A drawing of patches as it is worked at: outlines on the block's grid, clockwise on screen, each in its tone. Places are doubles; what is
// nearer than the slack is one place, as in every drawing (docs/document.md), and goes back into the document as the fraction it is.
import { chordTolerance, cornerTolerance } from '#craft/limits';
import type { Arc } from '#ground/arc';
import type { Polygon } from '#ground/plane';

export interface DrawnPatch {
  /** Chords stand for arcs. */
  readonly points: Polygon;
  readonly tone: string;
  /** As they are walked along the points (docs/decisions/0009); none where missing. */
  readonly arcs?: readonly Arc[];
}

export interface Drawn {
  readonly grid: readonly [across: number, down: number];
  readonly patches: readonly DrawnPatch[];
}

/** More squares a side than this are too fine to draw on; our own figure. */
export const mostSquares = 96;

export const slackOf = (grid: Drawn['grid']): number => cornerTolerance * Math.max(...grid);

/** How far the chords of an arc may lie from it, where places within `slack` are one. */
export const chordFor = (slack: number): number => (slack * chordTolerance) / cornerTolerance;
