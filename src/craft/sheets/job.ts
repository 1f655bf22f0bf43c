// What is to be cut from which sheets, and what a search for few or cheap sheets reports. Whole units, like all layouts;
// knows nothing of fabric or shops.
import type { BoundKind, Cutting, IntegerSolver, Kind, StripUse } from '#craft/strips';

/** Sheets of one size: width across, height along. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Of one; not below 0, whole. */
  readonly cost: number;
  /** How many there are; null for as many as one likes. */
  readonly stock: number | null;
}

export interface SheetJob {
  readonly kinds: readonly Kind[];
  readonly cutting: Cutting;
  readonly sheets: readonly Sheet[];
  /** Null to do without. */
  readonly solver: IntegerSolver | null;
}

/** One way to cut a sheet, and how many sheets are cut so. */
export interface SheetUse {
  /** Index of the job's sheet. */
  readonly sheet: number;
  readonly times: number;
  readonly strips: readonly StripUse[];
}

/**
 * Whether the sheets hold all pieces: 'yes', as laid here; 'no', no layout of this kind of cutting can; 'not-found', none was
 * found that does, and none of the reasons why there can be none applies.
 */
export type Holding = 'yes' | 'no' | 'not-found';

/** The best so far. */
export interface SheetsFound {
  /** Exactly the pieces demanded, less those left. */
  readonly sheets: readonly SheetUse[];
  readonly cost: number;
  /** Sheets taken. */
  readonly count: number;
  /** Pieces of each kind that found no place; all 0 where the sheets hold everything. */
  readonly left: readonly number[];
  readonly holds: Holding;
  /** Proven: no layout of all pieces costs less. */
  readonly bound: number;
  readonly boundKind: BoundKind;
}

/**
 * A search as a row of steps, always the same for the same job. The first gives a whole layout; later ones the best so
 * far, whether or not it changed. It ends when the best is proven cheapest, or when it knows nothing more to try.
 */
export type SheetSearch = Generator<SheetsFound, SheetsFound, void>;
