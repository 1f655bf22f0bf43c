// What the workroom asks of a document, and what comes back: plain values, so that a worker can send them.
import type { Note, ValuesNear } from '#craft';
import type { ToneFabric } from '#craft/design';
import type { Unit } from '#craft/measure';
import type { StripRole } from '#craft/setting';
import type { Arc } from '#ground/arc';
import type { JsonObject } from '#workroom/editing';

export interface WorkroomProblem {
  /** A pointer into the document. */
  readonly where: string;
  readonly what: string;
  readonly mend: string;
}

export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly WorkroomProblem[]; readonly more: number };

/** A document from a text: one that is sound in form opens with its problems, to be mended here. */
export type TextReply =
  | {
      readonly ok: true;
      readonly value: JsonObject;
      readonly problems: readonly WorkroomProblem[];
      readonly more: number;
    }
  | Extract<Reply<never>, { readonly ok: false }>;

/** How far a plan is taken: its first good layouts, or the best that the search finds. */
export type Care = 'first' | 'best';

export interface QuiltAnswer {
  readonly care: Care;
  readonly unit: Unit;
  readonly figures: JobFigures;
  readonly picture: QuiltPicture;
  /** Used cloths. */
  readonly cloths: readonly ClothAnswer[];
  /** Where light and dark do not read apart: in which colourway, for which eyes. */
  readonly values: readonly ValuesNear[];
  readonly notes: readonly WorkroomNote[];
}

/** What a search changes of an answer: all else stays as the first layouts had it. */
export type FoundAnswer = Pick<QuiltAnswer, 'care' | 'figures' | 'cloths' | 'notes'>;

/** Lengths in the document's unit. */
export interface JobFigures {
  readonly blocks: number;
  readonly top: readonly [width: number, height: number];
  readonly cloths: number;
  /** Whether light and dark read apart in every block. */
  readonly values: 'apart' | 'near';
  /** What is bought, by unit. */
  readonly buy: readonly { readonly amount: number; readonly unit: 'yd' | 'm' | 'sheets' }[];
  /** Of the cloth that is laid out, the share that no piece is cut from. */
  readonly leftOver: number;
  readonly seams: number;
  /** In all, and of them what is sewn before the top is done. */
  readonly minutes: number;
  readonly sewing: number;
  readonly finishing: number;
  readonly cutting: number;
  /** What goes round the quilt, and what lies under it; null where the document has none. */
  readonly binding: number | null;
  readonly backing: readonly [width: number, height: number] | null;
}

export interface WorkroomNote {
  readonly code: Note['code'];
  readonly level: 'note' | 'warning';
  readonly path: string;
  readonly text: string;
}

export interface ClothAnswer {
  readonly id: string;
  readonly buy: { readonly amount: number; readonly unit: 'yd' | 'm' | 'sheets' };
}

export interface QuiltPicture {
  readonly width: number;
  readonly height: number;
  readonly entries: readonly BlockPicture[];
  readonly placed: readonly PlacedPicture[];
  readonly strips: readonly StripPicture[];
  readonly cloths: readonly { readonly id: string; readonly name: string; readonly colour: string }[];
}

/** A block as it is made: in one colouring, mirrored or not, from its upper left corner. */
export interface BlockPicture {
  readonly id: string;
  readonly title: string;
  readonly colouring: string;
  readonly mirror: boolean;
  readonly size: readonly [width: number, height: number];
  readonly patches: readonly PatchPicture[];
}

export interface PatchPicture {
  /** x, y, x, y …, clockwise. */
  readonly points: readonly number[];
  readonly fabric: string;
  readonly tone: string;
  readonly label: string;
  /** Cut size. */
  readonly cut: readonly [number, number];
}

export interface PlacedPicture {
  /** Index into the entries. */
  readonly entry: number;
  readonly at: readonly [x: number, y: number];
  /** Of the box round the turned outline. */
  readonly size: readonly [width: number, height: number];
  readonly turn: number;
  /** Where tones are drawn from lists: the cloth of each patch here; else null. */
  readonly fabrics: readonly string[] | null;
  /** Its place in the document: a cell, also where a rule makes the rows; a part of a section; or its border. */
  readonly path: string;
}

export interface StripPicture {
  readonly points: readonly number[];
  readonly fabric: string;
  readonly role: StripRole;
  readonly path: string;
  /** "C" where the plan calls it piece C of the top. */
  readonly label: string;
  /** Cut size, of the square where triangles are cut from one. */
  readonly cut: readonly [number, number];
}

/** One block of a document by itself, whether the top uses it or not. */
export interface BlockAnswer {
  readonly unit: Unit;
  readonly picture: BlockPicture;
  readonly cloths: QuiltPicture['cloths'];
  readonly unfinished: readonly [number, number];
  /** How few foundations it can be pieced on; null where it cannot, or has too many patches. */
  readonly foundations: number | null;
  readonly joining: 'straight' | 'curved' | 'partial' | 'set-in';
  /** Lines to add so that straight seams, and curves each in one run, join it; null where they do already, and where none are found. */
  readonly advice: BlockAdvice | null;
  readonly pieces: number;
  /** Seams of one block, those of units that are alike counted each. */
  readonly steps: number;
  readonly notes: readonly WorkroomNote[];
  /** Widths without the frame, near its own, at which every cut falls on a mark, itself among them if it is one. */
  readonly friendly: readonly (readonly [number, number])[];
}

export interface BlockAdvice {
  /** Each from edge to edge, in the block without its frame: x, y, x, y in the document's unit. */
  readonly seams: readonly (readonly [number, number, number, number])[];
  readonly lines: number;
  /** Pieces more; inside corners and partial seams gone. */
  readonly more: number;
  readonly corners: number;
  readonly partial: number;
  /** What joins it then: straight seams alone, or those and curves in one run. */
  readonly joins: 'straight' | 'curved';
}

/** A block as patches on its grid. Outlines are x, y, x, y …, clockwise, in squares of the grid. */
export interface DrawnAnswer {
  /** What the block is called, as the collection calls it where the document does not. */
  readonly title: string;
  /** Finished, without a frame, in the document's unit. */
  readonly size: readonly [width: number, height: number];
  readonly grid: readonly [across: number, down: number];
  readonly patches: readonly {
    /** Chords stand for arcs. */
    readonly points: readonly number[];
    readonly tone: string;
    /** As they are walked along the points; none where missing. */
    readonly arcs?: readonly Arc[];
  }[];
  /** Where the block is given in another form: the cloth of each of these tones, by colouring. */
  readonly colourings: Readonly<Record<string, Readonly<Record<string, ToneFabric>>>>;
  readonly bare: readonly (readonly number[])[];
  readonly double: readonly (readonly number[])[];
}
