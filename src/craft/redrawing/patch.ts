// A drawing of patches as it is worked at: outlines on the block's grid, clockwise on screen, each in its tone. Places are doubles; what is
// nearer than the slack is one place, as in every drawing (docs/document.md), and goes back into the document as the fraction it is.
import type { Polygon } from '#ground/plane';

export interface DrawnPatch {
  readonly points: Polygon;
  readonly tone: string;
}

export interface Drawn {
  readonly grid: readonly [across: number, down: number];
  readonly patches: readonly DrawnPatch[];
}

/** Corners nearer than this share of the grid's larger side are one. */
const cornerShare = 1e-6;

export const slackOf = (grid: Drawn['grid']): number => cornerShare * Math.max(...grid);
