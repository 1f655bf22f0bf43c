// Everything that is computed from one quilt document: facts and codes, no wording. Paper writes the
// plan file, pictures and pages from this alone.

import type { Allowances, ClothPurchase, Cut, EaseRung, LaidOut, LaidSheets, Layout, StripWay } from '#craft/cutting';
import type { QuarterTurn, Quilt, Side } from '#craft/design';
import type { ClothDirections } from '#craft/directions';
import type { Value } from '#craft/fabric';
import type { BattingPackage, BedName, EvenLines, Thread } from '#craft/finishing';
import type { OnPaper, Sections } from '#craft/foundation';
import type { Length } from '#craft/measure';
import type { PressWish, SeamInPlace, TopJoin } from '#craft/piecing';
import type { Press, SidePress, TopPressing, WhyLoose } from '#craft/pressing';
import type { SetTop, StripRole } from '#craft/setting';
import type { Unit, Way } from '#craft/ways';
import type { Arc } from '#ground/arc';
import type { Point, Polygon } from '#ground/plane';
import type { Note } from './notes.ts';

export type { OnPaper };

export interface QuiltPlan {
  /** The document in normal form. */
  readonly quilt: Quilt;
  readonly top: TopPlan;
  /** One entry per block × colouring × mirror that the top uses, in the order of first use. */
  readonly blocks: readonly BlockPlan[];
  /** Used cloths only, in the document's order. */
  readonly fabrics: readonly FabricPlan[];
  readonly finish: FinishPlan;
  readonly cost: CostPlan;
  /** Minutes in all, and of them what cutting, sewing and finishing take; an estimate, by the table of the document. */
  readonly time: {
    readonly seams: number;
    readonly minutes: number;
    readonly cutting: number;
    /** Of blocks and top. */
    readonly sewing: number;
    readonly finishing: number;
  };
  /** For the seams of blocks and top. */
  readonly thread: Thread;
  readonly notes: readonly Note[];
}

export interface BlockPlan {
  readonly id: string;
  readonly title: string;
  readonly colouring: string;
  readonly mirror: boolean;
  readonly count: number;
  readonly finished: readonly [Length, Length];
  readonly unfinished: readonly [Length, Length];
  readonly joining: 'straight' | 'curved' | 'partial' | 'set-in';
  readonly leastUnits: 'proven' | 'searched';
  /** The sheets of a block that is pieced on foundations; null where seams alone join it. */
  readonly foundations: Sections | null;
  readonly patches: readonly PlannedPatch[];
  /** The first patches, so many, are joined among themselves; those after them are logs and frames, sewn round them one by one. */
  readonly core: number;
  readonly pieces: readonly PlannedPiece[];
  readonly steps: readonly PlannedStep[];
  readonly pressing: BlockNesting;
  /** Every seam where it lies (mirrored already when the entry is); `step` is an index. */
  readonly seams: readonly SeamInPlace[];
}

/** How the seams inside one block nest. */
export interface BlockNesting {
  readonly meetings: number;
  readonly nested: number;
  /** Blocks of this entry that are pressed the other way at some seams. */
  readonly otherWay: number;
  /** Blocks of this entry that are turned further than they are set, so that their seams nest: they look the same so. */
  readonly turned: number;
  /** Meetings that do not nest: where, of which two steps, under the seam of which, by their numbers. */
  readonly loose: readonly {
    readonly at: Point;
    readonly steps: readonly [number, number];
    readonly over: number;
    readonly why: WhyLoose;
  }[];
}

/** A patch as it lies in the block (mirrored already when the entry is), with its piece's label. */
export interface PlannedPatch {
  readonly piece: string;
  /** The first of the tone's list, where it is drawn from one: `TopPlan.drawn` has what is drawn. */
  readonly fabric: string;
  readonly points: Polygon;
  /** The parts of its outline that are arcs; chords stand for them in `points`. None where missing. */
  readonly arcs?: readonly Arc[];
}

export interface PlannedPiece {
  readonly label: string;
  /** The first of the tone's list, where it is drawn from one. */
  readonly fabric: string;
  /** What is cut of each cloth for all blocks of this entry, in the order of the tone's list. Counts patches. */
  readonly fabrics: readonly { readonly fabric: string; readonly count: number }[];
  readonly tone: string;
  /** Counts patches. */
  readonly perBlock: number;
  readonly cut: Cut;
}

export interface PlannedStep {
  readonly id: string;
  readonly number: number;
  /** A piece's label or "#n"; the second goes onto the first. */
  readonly join: readonly [string, string];
  readonly makes: string;
  /** Where the second lies, seen from the first. */
  readonly side: Side;
  /** Clockwise, in degrees, from how the first part lay: brings the new seam to the right hand. */
  readonly machineTurn: number;
  /** A seam to close joins the unit of the step before and the part that hangs on it already. */
  readonly kind: 'straight' | 'curved' | 'partial-begin' | 'partial-close' | 'set-in' | 'foundation';
  /** Inside corners that the seam goes round. */
  readonly corners: number;
  readonly seam: Length;
  /** A name out of `join`, "open" or "spin". */
  readonly press: string;
  /** Which of the two parts `press` means: needed where both have one name. */
  readonly pressTo: Press;
  /** Where the seam would go if no other met it. */
  readonly wish: PressWish;
  /** Where some blocks of the entry are pressed another way: that way; null where all are pressed alike here. */
  readonly otherWay: Press | null;
  readonly unfinished: readonly [Length, Length];
  readonly perBlock: number;
  readonly total: number;
  /** Patches (indexes into the block's) of the first part and of the second, for pictures. */
  readonly patches: readonly [readonly number[], readonly number[]];
  /** Ends of the seam where sewing stops on the mark, an allowance from the edge: a piece is set in there later. */
  readonly stopsAt: Polygon;
  /** The seam as it lies in the block, from end to end; chords stand for arcs. */
  readonly line: Polygon;
  /** The parts of it that are arcs, as they are walked along it; none where missing. */
  readonly arcs?: readonly Arc[];
  /** Where it belongs to a unit that is made in a way of its own; missing where pieces are joined one by one. */
  readonly made?: StepWay;
  /** The sheet that it is sewn on; of kind "foundation" alone. */
  readonly onPaper?: OnPaper;
}

/** A stage of making units together. */
export interface StepWay {
  readonly unit: Unit;
  readonly way: Way;
  /** What the step joins, by places of the unit. */
  readonly parts: readonly [readonly number[], readonly number[]];
  /** Units that the step is for, in all blocks of the entry: of those that lie otherwise in an upright print other steps make as many. */
  readonly units: number;
  /** The entries that have such units, this one among them, and how many each: all are made at once, of the same sets. */
  readonly among: readonly (Pick<BlockPlan, 'id' | 'colouring' | 'mirror'> & { readonly units: number })[];
  /** Sets of pieces that give all of them. */
  readonly sets: number;
  /** The unit is done, and brought to size. */
  readonly isLast: boolean;
}

export interface TopPlan {
  readonly set: SetTop;
  /**
   * By placed block: the cloth of each of its patches, in the order of its entry's; null where no tone of the block is
   * drawn from a list, and the entry says it all.
   */
  readonly drawn: readonly (readonly string[] | null)[];
  readonly pressing: TopPressing;
  /** Sashes, cornerstones, setting triangles, fills, borders and other plain pieces by kind. */
  readonly pieces: readonly TopPiece[];
  readonly steps: readonly TopStep[];
}

export interface TopPiece {
  readonly label: string;
  readonly role: StripRole;
  readonly fabric: string;
  readonly count: number;
  readonly finished: readonly [Length, Length];
  readonly cut: Cut;
  /** Pieces of cloth joined end to end to make one (1: in one piece), each [across the cloth, along it]. */
  readonly joinedFrom: readonly (readonly [Length, Length])[];
  /** Indexes into `set.strips`. */
  readonly strips: readonly number[];
}

/** A join in the top. Names are a block's entry ("cabin"), a piece's label, or "#n". */
export interface TopStep extends Omit<TopJoin, 'join' | 'press'> {
  readonly id: string;
  readonly number: number;
  readonly join: readonly [string, string];
  readonly makes: string;
  readonly press: string;
  readonly pressTo: SidePress;
  readonly total: number;
}

export interface FabricPlan {
  readonly id: string;
  /** CIE L* of its colour. */
  readonly lightness: number;
  /** Among the cloths of this quilt. */
  readonly value: Value;
  readonly pieces: readonly ClothPiece[];
  /** On cloth by the length, on sheets, or on what the document says the cloth comes in. */
  readonly laid: LaidOut | LaidSheets;
  readonly buy: ClothPurchase;
  /** What it is bought in, where the document names several kinds of sheet or several lengths; else null. */
  readonly parts: readonly BoughtPart[] | null;
  /** What lies on ends of the cloth that are at hand, and so not in `laid`; null where the document has none. */
  readonly ends: EndsPlan | null;
  /**
   * Pieces with their middle on a motif, and lengths of the layout so and were they anywhere, with nothing on ends at hand; null where
   * none is.
   */
  readonly motifs: { readonly pieces: number; readonly centred: Length; readonly anywhere: Length } | null;
  /** What cutting on the fold costs and saves; null for sheets, and where nothing can be cut so. */
  readonly fold: FoldPlan | null;
  /** Where the bought length goes; null for sheets. */
  readonly allowances: Allowances | null;
  /** What less work costs, from the least length on; the one that is cut among them. Empty for sheets. */
  readonly ladder: readonly LadderRung[];
  /** Step by step, and what is left. */
  readonly directions: ClothDirections;
  /** Of all that is bought, in the document's currency; null where the document has no price for it. */
  readonly cost: number | null;
}

/** Ends at hand: used where they save a step of the shop. */
export interface EndsPlan {
  /** Each end that is cut: its place in the document's list, its name there, and its pieces. */
  readonly used: readonly { readonly kind: number; readonly name: string | null; readonly layout: Layout }[];
  /** How they are cut; null where none is. */
  readonly directions: ClothDirections | null;
  /** Of the layout, of what is bought (in the unit of `buy`), and of its cost; null without a price. */
  readonly saves: { readonly length: Length; readonly amount: number; readonly cost: number | null };
}

/** Cloth cut folded selvage to selvage. */
export interface FoldPlan {
  /**
   * Where the document asks for it: the strips cut in two layers as they lie folded (half the cloth's width, the selvages at
   * 0), how, and the strips that are opened first. `laid` has both opened, and `directions` the latter. Null where it does not ask.
   */
  readonly chosen: { readonly folded: Layout; readonly open: Layout; readonly directions: ClothDirections } | null;
  /** From the least cloth to the least work. */
  readonly ways: readonly FoldWay[];
  /** The same figures of the cloth cut opened. */
  readonly opened: FoldWay;
}

export interface FoldWay {
  /** Of the layout. */
  readonly length: Length;
  /** Of what is bought, in the unit of `buy`. */
  readonly amount: number;
  /** Null without a price. */
  readonly cost: number | null;
  /** Of the blade, by docs/formulas.md#effort; one through two layers is one. */
  readonly strokes: number;
}

/** So many sheets or lengths of one kind. */
export interface BoughtPart {
  /** As the document calls it; null for lengths, and where it has no name. */
  readonly name: string | null;
  /** Of a sheet usable; of a length its usable width, and its length as sold. */
  readonly size: readonly [across: Length, along: Length];
  readonly count: number;
  /** Of all of them; null without a price. */
  readonly cost: number | null;
}

/** A layout of one cloth that is less work than all shorter ones of its ladder, and what it is bought for. */
export interface LadderRung extends EaseRung {
  readonly buy: { readonly amount: number; readonly unit: 'yd' | 'm' };
  readonly cost: number | null;
}

/** What the cloth costs, as far as the document has prices. */
export interface CostPlan {
  /** Of the cloths with a price; null where none has one. */
  readonly total: number | null;
  /** As the document writes it; "" where it names none. */
  readonly currency: string;
  /** Used cloths without a price: ids. */
  readonly unpriced: readonly string[];
}

/** Rectangles of one size from one cloth. Squares and strips are counted, not the pieces they give. */
export interface ClothPiece {
  readonly cut: readonly [across: Length, along: Length];
  readonly shape: Cut['shape'];
  readonly count: number;
  /** Whether it may lie the other way as well. */
  readonly mayTurn: boolean;
  /**
   * Pieces that one rectangle gives: 2 for half-squares, 4 for quarter-squares, as many as lie in a strip at an angle, 2 for
   * templates in pairs.
   */
  readonly gives: number;
  /** Of half-squares in a cloth whose print stands upright: which diagonal to cut along, as the square lies; else null. */
  readonly diagonal: 'rising' | 'falling' | null;
  /** Strips at an angle: how the pieces lie in them; else null. */
  readonly way: StripWay | null;
  /** Where pieces nest in the rectangle: as they are cut, from its upper left corner; else none. */
  readonly outlines: readonly Polygon[];
  /** Only of pieces that are cut with their middle on a motif. */
  readonly motif?: true;
  readonly for: readonly PieceUse[];
}

export type UseRole = 'block' | StripRole | 'binding' | 'backing' | 'sleeve' | 'label';

/** Where pieces of one size go. For the top, the binding and the backing `block` is null. */
export interface PieceUse {
  readonly role: UseRole;
  readonly block: string | null;
  readonly colouring: string | null;
  readonly mirror: boolean;
  /** How the block is turned in the quilt, where the cloth's print makes that matter; else null. */
  readonly turn: QuarterTurn | null;
  readonly label: string;
  /** Pieces (triangles, not squares). */
  readonly count: number;
}

export interface FinishPlan {
  readonly binding: {
    readonly fabric: string;
    /** Needed: perimeter and the tail. */
    readonly length: Length;
    readonly grain: 'straight' | 'bias';
    /** Cut across the cloth; 0 on the bias. */
    readonly strips: number;
    /** Of strips, or on the bias of what the squares give. */
    readonly joins: number;
    readonly cut: Length;
    /** What the joined strips, or the squares, give. */
    readonly gives: Length;
    /** On the bias: squares from each of which one strip is cut; else null. */
    readonly bias: { readonly side: Length; readonly squares: number } | null;
  } | null;
  readonly backing: {
    readonly fabric: string;
    readonly width: Length;
    readonly height: Length;
    readonly panels: number;
    readonly run: 'upright' | 'level';
    /** Each panel as cut, [across the cloth, along it]. */
    readonly cuts: readonly (readonly [Length, Length])[];
  } | null;
  readonly batting: {
    readonly width: Length;
    readonly height: Length;
    /** The smallest package commonly sold that it can be cut from; null where none is large enough. */
    readonly package: BattingPackage | null;
    /** Straight quilting lines spread evenly over the top, none further apart than the document allows. */
    readonly lines: { readonly upright: EvenLines; readonly level: EvenLines };
    /** As it is bought; only where the document has its price. It is not in the cost of the cloths. */
    readonly cost?: number;
  } | null;
  readonly sleeve: {
    readonly fabric: string;
    readonly finished: readonly [long: Length, high: Length];
    readonly cut: readonly [long: Length, high: Length];
    /** Pieces joined end to end to make it, [across the cloth, along it]. */
    readonly cuts: readonly (readonly [Length, Length])[];
  } | null;
  readonly label: {
    readonly fabric: string;
    readonly finished: readonly [width: Length, height: Length];
    readonly cut: readonly [width: Length, height: Length];
  } | null;
  readonly bed: {
    readonly size: BedName;
    readonly mattress: readonly [width: Length, height: Length];
    /** A quilt with the drop and tuck asked for. */
    readonly wanted: readonly [width: Length, height: Length];
    /** What this quilt lacks of it, each way; 0 where it is large enough. */
    readonly lacks: readonly [Length, Length];
  } | null;
}
