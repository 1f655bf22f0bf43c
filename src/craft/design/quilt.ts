// The quilt in normal form: what the document says, with every default filled in, every length exact
// and every name checked. Rooms behind this door trust it.

import type { Print, PrintRuns } from '#craft/fabric';
import type { BedName } from '#craft/finishing';
import type { Unit } from '#craft/measure';
import type { MinutesTable } from '#craft/minutes';
import type { Rational } from '#ground/exact';
import type { Method } from './methods.ts';

export interface Quilt {
  readonly title: string;
  readonly designer: string;
  readonly notes: string;
  readonly edition: string;
  /** Of the edition, as written. */
  readonly date: string;
  /** What later editions have put right. */
  readonly corrections: readonly { readonly edition: string; readonly text: string }[];
  /** What prices are in, as written; "" where none is named. */
  readonly currency: string;
  readonly unit: Unit;
  /** Seam allowance, in the document's unit. */
  readonly seam: Rational;
  /** The finest mark that cut sizes fall on. */
  readonly ruler: Rational;
  readonly buying: Buying;
  /** What is asked of layouts on cloth: the least length, or the least work that one more step of the shop holds. */
  readonly layout: 'least' | 'easy';
  /** Cloth is cut folded selvage to selvage, two layers at a time. */
  readonly onFold: boolean;
  readonly fabrics: readonly Fabric[];
  readonly blocks: readonly BlockDesign[];
  readonly top: TopDesign;
  readonly finish: FinishDesign;
  /** Which draw of the scrappy cloths, from 1. */
  readonly draw: number;
  /** The same quilt in other cloths. */
  readonly colourways: readonly Colourway[];
  /** The same blocks and cloths in other tops. */
  readonly sizes: readonly SizeDesign[];
  /** Ways to make that are chosen for units of the whole quilt; missing for none. */
  readonly methods?: readonly Method[];
  /** Of the table of minutes what a shop has measured; missing for none of it. */
  readonly minutes?: Partial<MinutesTable>;
}

export interface Colourway {
  readonly id: string;
  readonly title: string;
  /** By id of the cloth that each stands for; null: as it is. */
  readonly fabrics: readonly {
    readonly id: string;
    readonly name: string | null;
    readonly colour: string | null;
    readonly photo: ClothPhoto | null;
    readonly price: Rational | null;
  }[];
  readonly path: string;
}

export interface ClothPhoto {
  /** A whole data address: the picture is in the document. */
  readonly image: string;
  /** Of cloth, from the picture's left edge to its right. */
  readonly width: Rational;
}

export interface SizeDesign {
  readonly id: string;
  readonly title: string;
  readonly top: TopDesign;
  readonly finish: FinishDesign;
  /** Place in the document. */
  readonly path: string;
}

export interface Buying {
  /** Lost at each end of a bought length. */
  readonly squaring: Rational;
  /** Share of the length, 0 to 1. */
  readonly shrinkage: Rational;
  /** The shop's step: an amount of yards or metres. */
  readonly step: { readonly amount: Rational; readonly unit: 'yd' | 'm' };
}

export interface Fabric {
  readonly id: string;
  readonly name: string;
  /** Lower-case #rrggbb. */
  readonly colour: string;
  /** What the cloth looks like near by; its colour says what it reads as. */
  readonly photo: ClothPhoto | null;
  /** From selvage to selvage; of sheets across; of several kinds that of the one that strips are joined from. */
  readonly usableWidth: Rational;
  readonly bought: Bought;
  /** At hand beside what is bought by the length, used first. */
  readonly ends: readonly ClothEnd[];
  readonly repeat: PrintRepeat | null;
  readonly print: Print;
  readonly printRuns: PrintRuns;
  /** It has no right side. */
  readonly reversible: boolean;
  /** None: every piece lies as its list has it, none the other way round. */
  readonly turning: 'as-they-may' | 'none';
  /** Of one yard, metre or sheet, in the document's currency; null in sheets of several kinds, which have their own. */
  readonly price: Rational | null;
}

/**
 * By the length, as much as is needed; in sheets of one size, as named, and as usable across and along; in sheets of several
 * kinds; or in given lengths of the cloth's usable width.
 */
export type Bought =
  | { readonly kind: 'yardage' }
  | {
      readonly kind: 'sheets';
      readonly name: 'fat-quarter' | 'fat-eighth' | 'sheet';
      readonly size: readonly [across: Rational, along: Rational];
    }
  | { readonly kind: 'stock'; readonly sheets: readonly SheetKind[] }
  | { readonly kind: 'lengths'; readonly lengths: readonly LengthKind[] };

/** One kind of sheet out of several. */
export interface SheetKind {
  /** As the maker calls it; null where the document does not say. */
  readonly name: string | null;
  /** Usable. */
  readonly size: readonly [across: Rational, along: Rational];
  /** How many there are; null: as many as are needed. */
  readonly count: number | null;
  /** Of one, in the document's currency; null where the document has none. */
  readonly price: Rational | null;
}

/** A length that a cloth is bought in, as sold: squaring and shrinkage are still in it. */
export interface LengthKind {
  readonly length: Rational;
  readonly count: number | null;
  /** Of one; null where the document has none: then that of the cloth by the yard or metre holds. */
  readonly price: Rational | null;
}

/** An end of the cloth that is at hand already, usable size. */
export interface ClothEnd {
  readonly name: string | null;
  readonly size: readonly [across: Rational, along: Rational];
  readonly count: number;
}

/** Where the motifs lie that pieces may be cut round: the centre of one from the squared cloth's corner, and the way to the next. */
export interface PrintRepeat {
  readonly along: Rational;
  /** Null: the motif runs on across the cloth, so that a piece may lie anywhere across. */
  readonly across: Rational | null;
  readonly motif: readonly [across: Rational, along: Rational];
}

/** A list is drawn from at random: at least two fabrics, none of them twice. */
export type ToneFabric = string | readonly string[];

/** Which fabric each tone of a block stands for; every tone the block uses has its entry. */
export type Colouring = Readonly<Record<string, ToneFabric>>;

export interface BlockDesign {
  readonly id: string;
  readonly title: string;
  /** Index in the document, for the paths of problems found further on. */
  readonly path: string;
  readonly shape: BlockShape;
  /** As named in the document; "default" where it names none. Every colouring that the top uses is here. */
  readonly colourings: Readonly<Record<string, Colouring>>;
  /** Sewn along printed lines, its pieces cut with room; missing where seams alone join it. */
  readonly piecing?: 'foundation';
  /** Tones whose pieces are cut round a motif, where their cloth has a repeat; missing for none. */
  readonly motifs?: readonly string[];
  /** Ways to make that are chosen for units of this block, before those of the quilt; missing for none. */
  readonly methods?: readonly Method[];
}

export type BlockShape = BareShape | FramedDesign;

/** A shape without a frame. */
export type BareShape =
  | LogCabinDesign
  | PatchesDesign
  | UnitsDesign
  | DrawingDesign
  | CollectionDesign
  | ElsewhereDesign;

export type Side = 'left' | 'top' | 'right' | 'bottom';

export interface LogCabinDesign {
  readonly kind: 'log-cabin';
  /** Its size, whether it is one patch or a block. */
  readonly centre: readonly [width: Rational, height: Rational];
  /** "" where a pieced centre names none. */
  readonly centreTone: string;
  readonly centreLetter?: string;
  /** A pieced centre: another block of the document, at its own size. */
  readonly centreBlock: CentreBlock | null;
  /** One entry a log, in sewing order; the cycle of sides is already laid out. */
  readonly logs: readonly LogDesign[];
}

export interface CentreBlock {
  readonly block: string;
  /** Of that block in the document. */
  readonly path: string;
  readonly shape: BlockShape;
}

export interface LogDesign {
  readonly side: Side;
  readonly width: Rational;
  readonly tone: string;
  readonly letter?: string;
  /** 0-based round and place in it, for pictures and paths. */
  readonly round: number;
  readonly place: number;
}

export interface PatchesDesign {
  readonly kind: 'patches';
  readonly size: readonly [width: Rational, height: Rational];
  readonly grid: readonly [across: Rational, down: Rational];
  readonly patches: readonly GridPatch[];
}

export interface GridPatch extends GridRun {
  readonly tone: string;
  /** In the collection's blocks: which of the tone's cloths, for a colouring that tells them apart. */
  readonly letter?: string;
}

/** Corners one after another, and the edges between them that are arcs. */
export interface GridRun {
  readonly corners: readonly GridPoint[];
  /** None where missing. */
  readonly arcs?: readonly GridArc[];
}

export interface GridArc {
  /** The corner that it begins at, by index; it ends at the next. */
  readonly edge: number;
  /** Equally far from both ends, but for the tolerance of corners. */
  readonly centre: GridPoint;
  readonly clockwise: boolean;
}

export type GridPoint = readonly [x: Rational, y: Rational];

export interface UnitsDesign {
  readonly kind: 'units';
  readonly size: readonly [width: Rational, height: Rational];
  readonly grid: readonly [across: Rational, down: Rational];
  readonly units: readonly UnitDesign[];
}

export type UnitName =
  | 'square'
  | 'half-square'
  | 'quarter-square'
  | 'flying-geese'
  | 'square-in-square'
  | 'four-patch'
  | 'rails';

export interface UnitDesign {
  readonly unit: UnitName;
  /** Upper left corner on the grid, as the unit lies in the block. */
  readonly at: GridPoint;
  /** Across and down on the grid, as the unit lies in the block, after its turn. */
  readonly span: readonly [across: Rational, down: Rational];
  readonly turn: QuarterTurn;
  /** In the order that the unit's name gives them at turn 0. */
  readonly tones: readonly string[];
}

export interface DrawingDesign {
  readonly kind: 'drawing';
  readonly size: readonly [width: Rational, height: Rational];
  readonly grid: readonly [across: Rational, down: Rational];
  /** From point to point, straight or along arcs. */
  readonly seams: readonly GridRun[];
  readonly tonesAt: readonly { readonly at: GridPoint; readonly tone: string }[];
}

export interface CollectionDesign {
  readonly kind: 'collection';
  /** Id in the collection. */
  readonly from: string;
  readonly size: readonly [width: Rational, height: Rational];
  /** The collection's block brought to that size. */
  readonly shape: PatchesDesign | LogCabinDesign;
}

/** A place kept for a block that is made elsewhere: no patches, no pieces, no steps. */
export interface ElsewhereDesign {
  readonly kind: 'elsewhere';
  readonly size: readonly [width: Rational, height: Rational];
}

export interface FramedDesign {
  readonly kind: 'framed';
  readonly inner: Exclude<BareShape, ElsewhereDesign>;
  /** From the inside outward. */
  readonly frames: readonly { readonly width: Rational; readonly fabric: string }[];
}

export type TopDesign = StraightTop | OnPointTop | SectionsTop;

interface Bordered {
  /** From the inside outward. */
  readonly borders: readonly BorderDesign[];
}

export interface StraightTop extends Bordered {
  readonly set: 'straight';
  /** In an arrangement every cell holds its block unturned; setting turns it. */
  readonly rows: CellRows;
  readonly arrangement: ArrangementDesign | null;
  readonly sashing: SashingDesign | null;
}

export interface OnPointTop extends Bordered {
  readonly set: 'on-point';
  readonly rows: CellRows;
  /** The cells between the main ones: a row and a column fewer. */
  readonly between: CellRows;
  readonly sashing: SashingDesign | null;
  /** Cloth of the setting triangles. */
  readonly settingFabric: string;
  /** How much larger than needed the squares are cut that the setting triangles come from. */
  readonly float: Rational;
}

/** A tree of straight seams. */
export interface SectionsTop extends Bordered {
  readonly set: 'sections';
  readonly sections: SectionDesign;
}

export type SectionDesign =
  | { readonly kind: 'run'; readonly run: 'across' | 'down'; readonly parts: readonly SectionDesign[] }
  | { readonly kind: 'strip'; readonly fabric: string; readonly width: Rational }
  | { readonly kind: 'fill'; readonly fabric: string }
  | BlockCell;

export type CellRows = readonly (readonly CellDesign[])[];

export type ArrangementKind =
  | 'barn-raising'
  | 'straight-furrow'
  | 'sunshine-and-shadow'
  | 'streak-of-lightning'
  | 'fields-and-furrows'
  | 'pinwheel';

export type Corner = 'upper-left' | 'upper-right' | 'lower-right' | 'lower-left';

export interface ArrangementDesign {
  readonly kind: ArrangementKind;
  readonly block: string;
  readonly colouring: string;
  readonly rows: number;
  readonly columns: number;
  /** Light and dark change places. */
  readonly swap: boolean;
  /** Of the block as drafted; null: found by measured value. */
  readonly darkCorner: Corner | null;
}

export type QuarterTurn = 0 | 90 | 180 | 270;

export type CellDesign = BlockCell | { readonly kind: 'plain'; readonly fabric: string };

export interface BlockCell {
  readonly kind: 'block';
  readonly block: string;
  readonly colouring: string;
  readonly turn: QuarterTurn;
  /** Mirrored left to right before it is turned. */
  readonly mirror: boolean;
}

export interface SashingDesign {
  /** Width of the upright sashes (between columns). */
  readonly across: Rational;
  /** Width of the level sashes (between rows). */
  readonly down: Rational;
  readonly fabric: string;
  /** Fabric of the cornerstones; null: level sashes run through in one piece. */
  readonly cornerstones: string | null;
  readonly outer: boolean;
}

export type BorderDesign = StripBorderDesign | PiecedBorderDesign;

export interface StripBorderDesign {
  readonly kind: 'strip';
  readonly width: Rational;
  readonly fabric: string;
  readonly corners: 'butted' | 'squares' | 'mitred';
  /** Of corner squares; null: the border's own. */
  readonly cornerFabric: string | null;
  readonly grain: 'lengthwise' | 'crosswise' | 'least';
}

/** Blocks side by side, upper edges outward. */
export interface PiecedBorderDesign {
  readonly kind: 'pieced';
  readonly block: string;
  /** Cloth of the strips that make whole blocks fit, and of the corners of blocks that are not square. */
  readonly spacer: string | null;
}

export interface FinishDesign {
  readonly binding: { readonly fabric: string; readonly cut: Rational; readonly grain: 'straight' | 'bias' } | null;
  readonly backing: {
    readonly fabric: string;
    readonly overage: Rational;
    /** How the seams between its panels run, where no print decides it; null: the way that takes less cloth. */
    readonly run: 'upright' | 'level' | null;
  } | null;
  readonly batting: {
    readonly overage: Rational;
    /** Quilting lines may lie so far apart at most. */
    readonly spacing: Rational;
    /** Of what is bought, package or length. */
    readonly price: Rational | null;
  } | null;
  readonly sleeve: { readonly fabric: string } | null;
  /** Finished size. */
  readonly label: { readonly fabric: string; readonly size: readonly [width: Rational, height: Rational] } | null;
  /** The bed that the quilt is for, how far it hangs down, and what goes under the pillow. */
  readonly bed: { readonly size: BedName; readonly drop: Rational; readonly tuck: Rational } | null;
}
