// What the steps of a block are made from, and a seam as it lies on the board before it is numbered.
import type { Length } from '#craft/measure';
import type { Arc, Outline } from '#ground/arc';
import type { Polygon } from '#ground/plane';
import type { Branch } from './join.ts';
import type { Heading, Lying } from './machine.ts';
import type { Part, SewingStep } from './pieced.ts';

/** What the steps are made from; outlines without corners on straight sides. */
export interface SewnBlock {
  readonly outlines: readonly Polygon[];
  /** Of each outline; chords stand for them in it. */
  readonly arcs: readonly (readonly Arc[])[];
  readonly kindOf: readonly number[];
  readonly size: readonly [Length, Length];
  readonly seam: Length;
  readonly slack: number;
  readonly lightnessOf: (patch: number) => number;
  /** Whether a square of the patch's cloth may be taken up by any edge: a print that stands upright has a top. */
  readonly looksAlikeTurned: (patch: number) => boolean;
  /** Outline of a unit that is not convex, or that has arcs. */
  readonly outlineOf: (unit: readonly number[]) => Outline;
  /** Outline of a unit that is convex, null of any other. */
  readonly convexOutline: (unit: readonly number[]) => Polygon | null;
}

/** A step before it is numbered, as it lies on the board. */
export interface SeamOnBoard {
  readonly kind: SewingStep['kind'];
  readonly corners: number;
  readonly parts: readonly [Part, Part];
  readonly patches: readonly [readonly number[], readonly number[]];
  readonly heading: Heading;
  readonly lying: Lying;
  readonly path: Polygon;
  /** As they are walked along the path; none where missing. */
  readonly arcs?: readonly Arc[];
  /** Where the shape of the seam says it; else it goes to the darker side. */
  readonly wish?: SewingStep['wish'];
  readonly seam: number;
}

export interface Hands {
  readonly block: SewnBlock;
  readonly partOf: (branch: Branch) => Part;
  readonly lyingOf: (branch: Branch) => Lying;
  /** Index of the next step. */
  readonly next: number;
}
