// What can be wrong with a document: codes and facts, each with its place as a JSON pointer (RFC 6901).
// Wording is paper's.

import type { Counted } from '#craft/limits';
import type { Unit } from '#craft/measure';
import type { Rational } from '#ground/exact';
import type { Expected } from './expected.ts';
import type { Feature } from './feature.ts';
import type { UnitKind, WayName } from './methods.ts';
import type { QuarterTurn, UnitName } from './quilt.ts';

interface At {
  readonly path: string;
}

/** A place in the text, 1-based, in characters. */
interface InText {
  readonly line: number;
  readonly column: number;
}

/** `found` is always JSON text, cut short where it is long. */
export type DesignProblem = TextProblem | FormProblem | LengthFault | NameProblem | BlockProblem | TopProblem;

export type TextProblem =
  | (At & { readonly code: 'design/too-long'; readonly found: number; readonly most: number })
  | (At & InText & { readonly code: 'design/not-json'; readonly found: string | null })
  | (At & { readonly code: 'design/too-deep'; readonly most: number })
  | (At & { readonly code: 'design/too-many-values'; readonly most: number })
  | (At & InText & { readonly code: 'design/key-twice'; readonly key: string })
  | (At & { readonly code: 'design/forbidden-key'; readonly key: string })
  | (At & {
      readonly code: 'design/too-many';
      readonly what: Counted;
      readonly found: number;
      readonly most: number;
    });

export type FormProblem =
  | (At & { readonly code: 'design/format'; readonly found: string; readonly expected: string })
  | (At & { readonly code: 'design/version'; readonly found: string; readonly newest: number })
  | (At & { readonly code: 'design/newer-version'; readonly found: number; readonly newest: number })
  | (At & { readonly code: 'design/unknown-key'; readonly key: string; readonly known: readonly string[] })
  | (At & { readonly code: 'design/missing-key'; readonly key: string })
  | (At & { readonly code: 'design/wrong-type'; readonly found: string; readonly expected: Expected })
  | (At & { readonly code: 'design/not-one-of'; readonly found: string; readonly options: readonly string[] })
  | (At & { readonly code: 'design/too-few'; readonly what: Counted; readonly found: number; readonly least: number })
  | (At & { readonly code: 'design/text-too-long'; readonly found: number; readonly most: number })
  | (At & { readonly code: 'design/control-character'; readonly position: number })
  | (At & {
      readonly code: 'design/out-of-range';
      readonly found: string;
      readonly least: number;
      readonly most: number;
    })
  | (At & { readonly code: 'design/not-a-colour'; readonly found: string })
  | (At & { readonly code: 'design/not-a-picture'; readonly found: string })
  | (At & { readonly code: 'design/not-built'; readonly feature: Feature });

export type LengthFault =
  | (At & { readonly code: 'design/not-a-length'; readonly found: string })
  /** On a block's grid. */
  | (At & { readonly code: 'design/not-a-number'; readonly found: string })
  | (At & { readonly code: 'design/zero-denominator'; readonly found: string })
  | (At & { readonly code: 'design/improper-fraction'; readonly found: string })
  | (At & { readonly code: 'design/length-text-too-long'; readonly found: string; readonly most: number })
  | (At & { readonly code: 'design/not-positive'; readonly found: string })
  | (At & { readonly code: 'design/negative'; readonly found: string })
  | (At & { readonly code: 'design/too-large'; readonly found: string; readonly most: Rational; readonly unit: Unit })
  | (At & { readonly code: 'design/too-small'; readonly found: string; readonly least: Rational; readonly unit: Unit })
  | (At & { readonly code: 'design/too-fine'; readonly found: string })
  | (At & { readonly code: 'design/step-unit'; readonly found: string });

export type NameProblem =
  | (At & { readonly code: 'design/bad-name'; readonly found: string })
  | (At & { readonly code: 'design/unknown-fabric'; readonly found: string; readonly known: readonly string[] })
  | (At & { readonly code: 'design/unknown-block'; readonly found: string; readonly known: readonly string[] })
  | (At & {
      readonly code: 'design/unknown-colouring';
      readonly block: string;
      readonly found: string;
      readonly known: readonly string[];
    })
  /** Sheets have their size; a width between selvages does not apply. */
  | (At & { readonly code: 'design/width-of-sheets'; readonly fabric: string })
  /** Sheets have no ends at hand, and no repeat that runs on from one to the next. */
  | (At & { readonly code: 'design/only-by-length'; readonly key: 'ends' | 'repeat'; readonly fabric: string })
  /** The motif's centre lies beyond one repeat. */
  | (At & {
      readonly code: 'design/motif-beyond-repeat';
      readonly found: Rational;
      readonly most: Rational;
      readonly unit: Unit;
    })
  | (At & {
      readonly code: 'design/unknown-motif-tone';
      readonly block: string;
      readonly found: string;
      readonly known: readonly string[];
    })
  /** In no colouring has the tone a cloth with a repeat. */
  | (At & { readonly code: 'design/motif-without-repeat'; readonly block: string; readonly tone: string })
  | (At & {
      readonly code: 'design/way-not-for-unit';
      readonly unit: UnitKind;
      readonly way: WayName;
      readonly known: readonly WayName[];
    })
  | (At & { readonly code: 'design/way-not-trimmed'; readonly unit: UnitKind; readonly way: WayName })
  /** A fabric stands twice in the list of a tone. */
  | (At & { readonly code: 'design/scrap-twice'; readonly tone: string; readonly found: string })
  | (At & { readonly code: 'design/fabric-twice'; readonly id: string; readonly first: string })
  | (At & { readonly code: 'design/variant-twice'; readonly id: string; readonly first: string })
  | (At & { readonly code: 'design/block-twice'; readonly id: string; readonly first: string })
  | (At & {
      readonly code: 'design/tone-without-fabric';
      readonly block: string;
      readonly colouring: string;
      readonly tone: string;
    });

export type BlockProblem =
  | (At & { readonly code: 'design/no-shape'; readonly block: string })
  | (At & { readonly code: 'design/shape-twice'; readonly block: string; readonly found: readonly string[] })
  | (At & {
      readonly code: 'design/size-disagrees';
      readonly block: string;
      readonly found: readonly [Rational, Rational];
      readonly expected: readonly [Rational, Rational];
      readonly unit: Unit;
    })
  | (At & { readonly code: 'design/unknown-in-collection'; readonly found: string; readonly known: readonly string[] })
  /** Ids from a block to the block in its centre, and so on back to the first. */
  | (At & { readonly code: 'design/centre-circle'; readonly chain: readonly string[] })
  | (At & { readonly code: 'design/elsewhere-has-no-pieces'; readonly block: string; readonly use: 'frame' | 'centre' })
  | (At & {
      readonly code: 'design/unit-tones';
      readonly unit: UnitName;
      readonly found: number;
      /** For rails the least. */
      readonly expected: number;
    })
  | (At & {
      /** Flying geese are twice as wide as high, seen with the point up. */
      readonly code: 'design/unit-span';
      readonly found: readonly [number, number];
      readonly turn: QuarterTurn;
    })
  | (At & { readonly code: 'design/seam-without-length'; readonly block: string })
  | (At & { readonly code: 'design/tones-beyond-cycle'; readonly found: number; readonly most: number })
  | (At & { readonly code: 'design/widths-and-tones'; readonly found: number; readonly expected: number })
  | (At & { readonly code: 'design/part-round'; readonly found: number; readonly expected: number })
  | (At & {
      readonly code: 'design/outside-grid';
      readonly block: string;
      readonly found: readonly [number, number];
      readonly grid: readonly [number, number];
    })
  /** No point comes before it that it could lead on from. */
  | (At & { readonly code: 'design/arc-without-start'; readonly block: string })
  | (At & {
      readonly code: 'design/arc-centre';
      readonly block: string;
      readonly found: readonly [number, number];
      /** From the point before, and from "to", on the grid. */
      readonly far: readonly [number, number];
    })
  | (At & {
      readonly code: 'design/arc-outside';
      readonly block: string;
      /** The place furthest off on one side, on the grid. */
      readonly found: readonly [number, number];
      readonly grid: readonly [number, number];
    })
  | (At & {
      /** A circle on a grid whose cells are not square would be none on the block. */
      readonly code: 'design/arc-stretched';
      readonly block: string;
      /** Of a cell of the grid, across and down. */
      readonly found: readonly [number, number];
      readonly unit: Unit;
    })
  | (At & { readonly code: 'design/corner-twice'; readonly block: string; readonly corners: readonly [number, number] })
  | (At & { readonly code: 'design/no-area'; readonly block: string })
  | (At & {
      readonly code: 'design/crosses-itself';
      readonly block: string;
      /** The first corner of each of the two edges that meet, 0-based. */
      readonly edges: readonly [number, number];
    });

export type TopProblem =
  | (At & { readonly code: 'design/empty-top' })
  /** A key of the top that belongs to another way of setting. */
  | (At & { readonly code: 'design/not-for-set'; readonly key: string; readonly set: string })
  | (At & { readonly code: 'design/filled-twice'; readonly found: readonly string[] })
  | (At & {
      readonly code: 'design/between-size';
      /** Rows and cells of a row. */
      readonly found: readonly [number, number];
      readonly expected: readonly [number, number];
    })
  | (At & { readonly code: 'design/corner-fabric-unused'; readonly corners: string })
  | (At & {
      readonly code: 'design/uneven-rows';
      readonly row: number;
      readonly found: number;
      readonly expected: number;
    })
  | (At & { readonly code: 'design/plain-size-unknown'; readonly line: 'row' | 'column'; readonly index: number })
  | (At & {
      readonly code: 'design/sizes-differ';
      /** Blocks of one row must be of one height, blocks of one column of one width, after turning. */
      readonly line: 'row' | 'column';
      readonly index: number;
      readonly block: string;
      readonly found: Rational;
      readonly other: string;
      readonly expected: Rational;
      readonly unit: Unit;
    })
  | (At & {
      readonly code: 'design/top-too-large';
      /** Finished, borders included. */
      readonly found: readonly [Rational, Rational];
      readonly most: Rational;
      readonly unit: Unit;
    })
  | (At & {
      readonly code: 'design/binding-too-wide';
      readonly cut: Rational;
      readonly fabric: string;
      readonly most: Rational;
      readonly unit: Unit;
    })
  | (At & {
      readonly code: 'design/binding-too-narrow';
      readonly cut: Rational;
      readonly seam: Rational;
      readonly least: Rational;
      readonly unit: Unit;
    });

export type Report = (problem: DesignProblem) => void;
