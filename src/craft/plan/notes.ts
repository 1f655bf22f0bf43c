// What the maker should know of a plan that could be made all the same: facts with a code and a place.
// Wording is paper's.
import type { AddedLine } from '#craft/advice';
import type { UnitKind, WayName } from '#craft/design';
import type { Length } from '#craft/measure';
import type { StripRole } from '#craft/setting';
import type { WayRefusal } from '#craft/ways';

/** Why the way that a document chooses for a unit is not gone. */
export type NotMade = WayRefusal | 'print' | 'motif' | 'drawn' | 'too-large' | 'not-a-unit' | 'on-paper';

export type Note =
  | {
      /** A way that the document chooses is not open to these units: they are cut singly. */
      readonly code: 'ways/not-taken';
      readonly level: 'warning';
      readonly path: string;
      readonly unit: UnitKind;
      readonly size: readonly [Length, Length];
      readonly fabrics: readonly string[];
      readonly way: WayName;
      readonly why: NotMade;
    }
  | {
      /** A way is chosen for units that no block of the top has. */
      readonly code: 'ways/no-such-unit';
      readonly level: 'warning';
      readonly path: string;
      readonly unit: UnitKind;
      readonly way: WayName;
    }
  | {
      /** A cut fell between two marks and the piece cannot be trimmed after sewing. */
      readonly code: 'cutting/off-marks';
      readonly level: 'warning';
      readonly path: string;
      readonly block: string;
      readonly label: string;
      readonly exact: Length;
      readonly size: Length;
      /** The nearest finished size of the block, without its frame, at which every cut falls on a mark; null: none is near. */
      readonly friendly: readonly [Length, Length] | null;
    }
  | {
      /** A strip at an angle, or what is measured along it from cut to cut, fell between two marks. */
      readonly code: 'cutting/strip-off-marks';
      readonly level: 'warning';
      readonly path: string;
      readonly block: string;
      readonly label: string;
      readonly cuts: 'parallel' | 'alternate';
      /** Width of the strip, then the distance of its cuts, or the longer edge where they lean by turns. */
      readonly exact: readonly [Length, Length];
      readonly size: readonly [Length, Length];
    }
  | {
      /** Cuts off the marks add up over the block. */
      readonly code: 'accuracy/drift';
      readonly level: 'warning';
      readonly path: string;
      readonly block: string;
      /** Above zero: too large. */
      readonly across: Length;
      readonly down: Length;
    }
  | {
      /** The top keeps a place for it; nothing is cut or sewn for it here. */
      readonly code: 'design/made-elsewhere';
      readonly level: 'note';
      readonly path: string;
      readonly block: string;
      /** Finished, then with its allowances: what it must measure when it comes. */
      readonly finished: readonly [Length, Length];
      readonly unfinished: readonly [Length, Length];
    }
  | {
      /** Lengths of the layout with the print upright in the quilt, and as if it might lie any way. */
      readonly code: 'cutting/print-upright';
      readonly level: 'note';
      readonly path: string;
      readonly fabric: string;
      /** What the two figures are: lengths in the document's unit, or numbers of sheets. */
      readonly of: 'length' | 'sheets';
      readonly upright: number;
      /** Some of it lies in blocks set on point: there it follows the block, an eighth of a turn off upright. */
      readonly leans: boolean;
      readonly anyWay: number;
    }
  | {
      /** Ends of a cloth at hand: how many are cut, and what they save of what is bought; none where they save nothing. */
      readonly code: 'cutting/ends-save';
      readonly level: 'note';
      readonly path: string;
      readonly fabric: string;
      readonly used: number;
      readonly saved: number;
      readonly unit: 'yd' | 'm';
    }
  | {
      /** Pieces cut round a motif: lengths of the layout so, and were they anywhere; one repeat more is bought, to find the motifs. */
      readonly code: 'cutting/on-motifs';
      readonly level: 'note';
      readonly path: string;
      readonly fabric: string;
      readonly pieces: number;
      readonly centred: Length;
      readonly anywhere: Length;
      readonly repeat: Length;
    }
  | {
      /** A cloth is cut folded, as the document asks: what that takes more of the layout and of what is bought, and the strokes of the blade that it saves. */
      readonly code: 'cutting/on-fold';
      readonly level: 'note';
      readonly path: string;
      readonly fabric: string;
      readonly more: Length;
      readonly bought: number;
      readonly unit: 'yd' | 'm';
      readonly strokes: number;
    }
  | {
      /** The quilt for the bed named, with its drop and tuck, and what this one lacks of it each way. */
      readonly code: 'finishing/smaller-than-bed';
      readonly level: 'warning';
      readonly path: string;
      readonly wanted: readonly [Length, Length];
      readonly lacks: readonly [Length, Length];
    }
  | {
      /** Patches meant to read apart, in a block and colouring, do not: their mean CIE L* is too near, or the wrong way round. */
      readonly code: 'fabric/values-near';
      /** In one of the other colourways: its name. */
      readonly colourway?: string;
      readonly level: 'warning';
      readonly path: string;
      readonly block: string;
      readonly colouring: string;
      readonly light: ReadingAlike;
      readonly dark: ReadingAlike;
    }
  | {
      /** Scrappy neighbours that are cut from one cloth: the fewest found, of so many pairs. */
      readonly code: 'fabric/equal-neighbours';
      readonly level: 'warning';
      readonly path: string;
      readonly equal: number;
      readonly of: number;
    }
  | {
      /** Cloths of one list of which the quilt takes unequal numbers of patches. */
      readonly code: 'fabric/uneven-scraps';
      readonly level: 'note';
      readonly path: string;
      readonly fabrics: readonly string[];
      readonly least: number;
      readonly most: number;
    }
  | {
      /** Straight seams alone do not join the block. */
      readonly code: 'piecing/not-straight';
      readonly level: 'note';
      readonly path: string;
      readonly block: string;
      readonly joining: 'curved' | 'partial' | 'set-in';
      /** Inside corners to set in, in one block. */
      readonly corners: number;
      /** Seams sewn part-way first and closed later, in one block. */
      readonly partial: number;
      /** Seams along curves, in one block. */
      readonly curved: number;
    }
  | {
      /** Lines to add to a block so that straight seams alone join it; one with curves, those and curves that are sewn in one run. */
      readonly code: 'piecing/lines-to-add';
      readonly level: 'note';
      readonly path: string;
      readonly block: string;
      /** From the block's upper left corner, without a frame that is sewn round it; the new seams of each line by themselves. */
      readonly lines: readonly AddedLine[];
      /** Pieces more than now. */
      readonly more: number;
      /** Inside corners and partial seams that are then gone. */
      readonly corners: number;
      readonly partial: number;
      readonly joins: 'straight' | 'curved';
      /** Whether fewer lines, or shorter ones where there are one or two, are proven not to do. */
      readonly isLeast: boolean;
    }
  | {
      /** A block with curves has seams that cannot be sewn in one run, and no lines were found that would spare them. */
      readonly code: 'piecing/no-lines-to-add';
      readonly level: 'note';
      readonly path: string;
      readonly block: string;
      /** Whether one line and two were all looked at. */
      readonly isProven: boolean;
    }
  | {
      readonly code: 'piecing/searched';
      readonly level: 'note';
      readonly path: string;
      readonly block: string;
      readonly patches: number;
    }
  | {
      /** A colouring names a tone that the block does not have. */
      readonly code: 'design/unused-tone';
      readonly level: 'warning';
      readonly path: string;
      readonly block: string;
      readonly colouring: string;
      readonly tone: string;
    }
  | {
      /** A plain piece of the top fell between two marks; borders are cut to measure and triangles are trimmed. */
      readonly code: 'cutting/top-off-marks';
      readonly level: 'warning';
      readonly path: string;
      readonly label: string;
      readonly role: StripRole;
      readonly exact: Length;
      readonly size: Length;
    }
  | {
      /** On point a print follows its block, an eighth of a turn off upright. */
      readonly code: 'cutting/print-slanted';
      readonly level: 'warning';
      readonly path: string;
      readonly fabric: string;
    }
  | {
      /** On point sashing goes all round every block, whether the document says so or not. */
      readonly code: 'setting/sashing-all-round';
      readonly level: 'note';
      readonly path: string;
    }
  | { readonly code: 'design/unused-block'; readonly level: 'warning'; readonly path: string; readonly block: string };

/** Patches that read as one: a half of a log cabin, or a tone. */
export interface ReadingAlike {
  readonly tones: readonly string[];
  readonly fabrics: readonly string[];
  /** Mean CIE L* by area. */
  readonly lightness: number;
}
