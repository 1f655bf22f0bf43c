// What of a planned block says how its check sizes come about: patches as they lie, how each is cut, and the seams.
import type { Cut } from '#craft/cutting';
import type { Length } from '#craft/measure';
import type { Arc } from '#ground/arc';
import type { Polygon } from '#ground/plane';

/** An entry of a plan is one. */
export interface SewnBlock {
  readonly finished: readonly [Length, Length];
  readonly patches: readonly SewnPatch[];
  readonly pieces: readonly { readonly label: string; readonly cut: Cut }[];
  readonly steps: readonly SewnStep[];
}

export interface SewnPatch {
  readonly piece: string;
  readonly points: Polygon;
  /** The parts of its outline that are arcs; none where missing. */
  readonly arcs?: readonly Arc[];
}

export interface SewnStep {
  readonly join: readonly [string, string];
  readonly patches: readonly [readonly number[], readonly number[]];
  readonly unfinished: readonly [Length, Length];
  /** Along a line of a printed sheet, which keeps it true. */
  readonly onPaper?: unknown;
  /** A stage of making units together; only at the last is there a unit to measure. */
  readonly made?: { readonly way: { readonly trimmed: boolean }; readonly isLast: boolean };
}

/** Whatever was sewn before, what comes of the step has its size: a sheet keeps it, or it is trimmed to it. */
export const isKeptTrue = ({ onPaper, made }: SewnStep): boolean => onPaper !== undefined || made?.way.trimmed === true;

/** Patches of the unit that a step makes, in rising order. */
export const unitOf = ({ patches: [first, second] }: SewnStep): readonly number[] =>
  [...new Set([...first, ...second])].sort((a, b) => a - b);
