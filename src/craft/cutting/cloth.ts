// Cut pieces and layouts on cloth. x runs across the cloth from selvage to selvage, y along its length.

import type { QuarterTurn } from '#craft/design';
import type { Print, PrintRuns } from '#craft/fabric';
import type { Length } from '#craft/measure';
import type { Holding } from '#craft/sheets';
import type { BoundKind } from '#craft/strips';
import type { Arc } from '#ground/arc';
import type { Point, Polygon } from '#ground/plane';
import type { StripWay } from './angled.ts';
import type { TemplatePair } from './template-pairs.ts';

/** Angled: from strips, side by side with its like. */
export type CutShape = 'square' | 'rectangle' | 'half-square' | 'quarter-square' | 'angled' | 'template';

/** How one kind of piece is cut. */
export interface Cut {
  readonly shape: CutShape;
  /**
   * Finished, along the patch's own sides: half-square its two legs, quarter-square its long side and height, angled as its
   * `size`.
   */
  readonly finished: readonly [Length, Length];
  /**
   * On marks. For a template the box round its cut outline; for triangles the square that is cut apart; angled: the
   * strip's width, then the distance from cut to cut, or the longer edge (`StripWay.size`).
   */
  readonly size: readonly [Length, Length];
  readonly exact: readonly [Length, Length];
  /**
   * Pieces that one such square or rectangle gives: 1, 2 (half-square) or 4 (quarter-square); angled: pieces that a strip
   * over the whole width of its cloth gives.
   */
  readonly gives: number;
  /**
   * Of a way to make units: so many are cut for each set, and whole sets only; `gives` then counts the patches that come of one
   * when it is sewn. Missing where pieces are cut one by one.
   */
  readonly perSet?: number;
  /** Pieces of one name here share their sets, wherever in the quilt they go; with `perSet` alone. */
  readonly setOf?: string;
  /**
   * Triangles only: how it lies in its block, as a clockwise turn. At 0 a half-square has its right angle at the upper
   * left, a quarter-square its long side on top.
   */
  readonly stand?: QuarterTurn;
  /**
   * Cut outline with trimmed tips and seam line, from the box's upper left corner, lengthwise grain upright: of a template,
   * and, as it lies in its strip, of an angled piece that no ruler shows.
   */
  readonly template: Template | null;
  /** Templates only: two in one box, where that is smaller than two boxes. */
  readonly pair?: TemplatePair | null;
  /** Templates only: the strips at an angle that it may be cut from, while none is chosen. */
  readonly ways?: readonly StripWay[];
  /** Angled only: how it lies in its strip. */
  readonly way?: StripWay;
  /** Angled only: the template that it would be cut by otherwise, with all its ways. */
  readonly alone?: Cut;
}

export interface Template {
  /** The cut edge; chords stand for arcs, here and in the seam line. */
  readonly points: Polygon;
  readonly seamLine: Polygon;
  /** Of both; none where missing. */
  readonly arcs?: readonly Arc[];
  /** Where it is laid on its neighbours along curved seams; none where missing. */
  readonly marks?: readonly TemplateMark[];
}

/** A notch, from the seam line square to it out to the cut edge. */
export interface TemplateMark {
  readonly on: Point;
  readonly out: Point;
}

/** What of a cloth decides how pieces lie on it. */
export interface ClothNature {
  /** Usable, from selvage to selvage; of sheets across. */
  readonly width: Length;
  /** Usable, of sheets along; null for cloth by the length, in one length or several. */
  readonly length: Length | null;
  /** What it comes in, where that is several kinds of sheet, or given lengths; missing for cloth as long as is needed and for sheets of one kind. */
  readonly stock?: readonly ClothSheet[];
  /** Usable size of the sheet that longer strips are joined from; missing for cloth by the length, in one length or several. */
  readonly joining?: readonly [across: Length, along: Length];
  readonly print: Print;
  readonly printRuns: PrintRuns;
  readonly reversible: boolean;
  /** Missing where no piece is cut round a motif. */
  readonly repeat?: MotifRepeat;
}

/** Where the motifs of a print lie: the middle of the first from the squared cloth's corner, and the way to the next. */
export interface MotifRepeat {
  readonly along: Length;
  /** Null: it runs on across the cloth. */
  readonly across: Length | null;
  readonly motif: readonly [across: Length, along: Length];
}

/** So many rectangles of one size to be cut from one cloth. */
export interface Demand {
  readonly across: Length;
  readonly along: Length;
  readonly count: number;
  readonly mayTurn: boolean;
  /** Its middle must lie on a motif; it does not turn. */
  readonly motif?: boolean;
}

/** A three-stage layout: strips across the cloth, parts along a strip, pieces down a part. */
export interface Layout {
  readonly width: Length;
  readonly length: Length;
  readonly strips: readonly Strip[];
}

export interface Strip {
  readonly at: Length;
  readonly height: Length;
  readonly parts: readonly StripPart[];
}

export interface StripPart {
  readonly at: Length;
  readonly width: Length;
  readonly pieces: readonly LaidPiece[];
}

export interface LaidPiece {
  readonly at: Length;
  /** As it lies: across, along. */
  readonly cut: readonly [Length, Length];
  /** True when that is the demand's size the other way round. */
  readonly turned: boolean;
  /** Index of the demand. */
  readonly of: number;
}

export interface LaidOut {
  readonly layout: Layout;
  /** No layout of these pieces on this width can be shorter. */
  readonly bound: Length;
  readonly boundKind: 'area' | 'linear' | 'integer';
  /** Layouts that are ever longer and ever less work, this one among them, where they were asked for. */
  readonly ladder?: readonly EaseRung[];
  /**
   * Where pieces must lie on a motif: how many, and the way along from one motif to the next. The layout then counts from the
   * motifs' corner, and has cloth between its strips.
   */
  readonly motifs?: { readonly pieces: number; readonly repeat: Length };
}

/** What a layout asks of a person with a rotary cutter. */
export interface EaseRung {
  readonly length: Length;
  /** Different strip heights. */
  readonly heights: number;
  /** Different measures that the ruler is set to. */
  readonly settings: number;
  /** Different ways to fill a strip. */
  readonly patterns: number;
  /** Strokes of the blade, without those that cut squares apart. */
  readonly strokes: number;
  /** Each size lies on strips of its own. */
  readonly own: boolean;
  /** It is the one that is cut. */
  readonly chosen: boolean;
}

/** Sheets of one size that can be had: fat quarters, squares, remnants, or lengths of cloth bought apart. */
export interface ClothSheet {
  /** Usable, across and along. */
  readonly size: readonly [Length, Length];
  /** Of one, in any money or measure; not below 0. Remnants at hand may cost nothing. */
  readonly cost: number;
  /** How many there are, whole; null for as many as one likes. */
  readonly stock: number | null;
}

/** `width` across and `length` along, whether filled or not. */
export interface LaidSheet extends Layout {
  /** Index of the kind of sheet, as they were given. */
  readonly kind: number;
}

/** Pieces laid on sheets of one or several kinds. */
export interface LaidSheets {
  readonly sheets: readonly LaidSheet[];
  /** The strips of all sheets one below another, as if they were one cloth as wide as the widest: for lists of strips. */
  readonly layout: Layout;
  /** Of all sheets taken. */
  readonly cost: number;
  /** No layout of all these pieces takes fewer sheets. */
  readonly bound: number;
  /** What was kept least: the number of sheets, where all cost the same; else the cost, of equal cost the number. */
  readonly kept: 'sheets' | 'cost';
  /** No layout of all these pieces costs less. */
  readonly costBound: number;
  readonly boundKind: BoundKind;
  /** Pieces that found no place, by index of the demand; none where the sheets hold everything. */
  readonly left: readonly { readonly of: number; readonly count: number }[];
  /** Whether they hold everything: as laid here; proven that they do not; or nothing found that does. */
  readonly holds: Holding;
}
