// What every search for strips reports, step after step, until its caller has enough.
import type { StripUse } from './pattern.ts';

export type BoundKind = 'area' | 'linear' | 'integer';

/** The best so far. */
export interface StripsFound {
  /** At least the demand of every kind; strips may hold more. */
  readonly strips: readonly StripUse[];
  readonly length: number;
  /** Proven: no layout of the task is shorter. */
  readonly bound: number;
  readonly boundKind: BoundKind;
}

/**
 * A search as a row of steps, each short and always the same for the same task. The first gives a whole valid layout; later ones
 * the best so far, whether or not it changed. It ends when the best is proven least, or when it knows nothing more to try.
 */
export type StripSearch = Generator<StripsFound, StripsFound, void>;
