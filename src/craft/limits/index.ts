// How large a document may be, and how fine. Our own figures: several times the largest quilt that anyone sews, and
// small enough that every check stays well under a second.

import type { Unit } from '#craft/measure';
import { type Rational, rational } from '#ground/exact';

export const limits = {
  /** Characters of text, before it is parsed. */
  characters: 8 * 1024 * 1024,
  /** Lists and objects inside each other. */
  depth: 60,
  /** Values of every kind in the whole document. */
  values: 2_000_000,
  fabrics: 200,
  blocks: 500,
  colourings: 100,
  tones: 500,
  rounds: 100,
  /** Logs of one round. */
  logs: 16,
  patches: 2_000,
  corners: 100,
  /** Straight lines of a drawing. */
  seams: 500,
  rows: 300,
  columns: 300,
  cells: 40_000,
  borders: 50,
  /** Patches of all blocks in the top. */
  pieces: 500_000,
  frames: 20,
  /** Ways to make, chosen at one place. */
  methods: 200,
  /** Cloths of one unit. */
  methodFabrics: 5,
  /** Kinds of sheet, length or end that one cloth comes in. */
  sheetKinds: 40,
  /** Sheets, lengths or ends of one kind. */
  sheetsAtHand: 10_000,
  /** Entries of any list or object that has no figure of its own. */
  entries: 40_000,
  idCharacters: 60,
  titleCharacters: 200,
  notesCharacters: 20_000,
  corrections: 100,
  /** Of a photograph of cloth, as it is written: some 300 kB. */
  photoCharacters: 400_000,
  /** Draws of the scrappy cloths. */
  draws: 1_000_000,
  /** Our own figure: an hour for any one movement of the hands. */
  minutes: 60,
  colourways: 24,
  sizes: 12,
  /** Problems told one by one; the rest are counted. */
  problems: 200,
} as const;

/** What a limit counts. */
export type Counted =
  | 'fabrics'
  | 'blocks'
  | 'colourings'
  | 'tones'
  | 'rounds'
  | 'logs'
  | 'patches'
  | 'corners'
  | 'seams'
  | 'colourways'
  | 'sizes'
  | 'rows'
  | 'columns'
  | 'cells'
  | 'borders'
  | 'pieces'
  | 'frames'
  | 'methods'
  | 'sheetKinds'
  | 'entries';

/** No seam allowance and no ruler's mark is wider: common practice, no source. */
export const widest: Readonly<Record<Unit, Rational>> = { in: rational(1), cm: rational(5, 2) };

/** Narrower cloth is ribbon; joins of the widest seam still leave half of it. Our own figure. */
export const narrowestCloth: Readonly<Record<Unit, Rational>> = { in: rational(4), cm: rational(10) };

/** Either side of a finished top, borders included: a hundred metres. Our own figure. */
export const largestTop: Readonly<Record<Unit, Rational>> = { in: rational(4_000), cm: rational(10_000) };

/**
 * The common denominator of all lengths in a document. Sums of lengths then stay exact and quick;
 * sixteen decimals next to 64ths, thirds, sevenths and converted centimetres all fit.
 */
export const finestCommonDenominator = 10n ** 30n;

/** Corners nearer than this share of the larger side, of a grid or a block, are one (docs/document.md). Our own figure. */
export const cornerTolerance = 1e-6;

/**
 * Chords that stand for an arc lie no further from it than this share of the block's larger side: about a tenth of a
 * thousandth of an inch in a block of twelve. Our own figure.
 */
export const chordTolerance = 1e-5;
