// The quilt in normal form: what the document says, with every default filled in, every length exact
// and every name checked. Rooms behind this door trust it.

import type { Unit } from '#craft/measure';
import type { Rational } from '#ground/exact';

export interface Quilt {
  readonly title: string;
  readonly designer: string;
  readonly notes: string;
  readonly edition: string;
  /** What prices are in, as written; "" where none is named. */
  readonly currency: string;
  readonly unit: Unit;
  /** Seam allowance, in the document's unit. */
  readonly seam: Rational;
  /** The finest mark that cut sizes fall on. */
  readonly ruler: Rational;
  readonly buying: Buying;
  readonly fabrics: readonly Fabric[];
  readonly blocks: readonly BlockDesign[];
  readonly top: TopDesign;
  readonly finish: FinishDesign;
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
  readonly usableWidth: Rational;
  /** Of one yard or metre, in the document's currency. */
  readonly price: Rational | null;
}

/** Which fabric each tone of a block stands for; every tone the block uses has its entry. */
export type Colouring = Readonly<Record<string, string>>;

export interface BlockDesign {
  readonly id: string;
  readonly title: string;
  /** Index in the document, for the paths of problems found further on. */
  readonly path: string;
  readonly shape: LogCabinDesign | PatchesDesign;
  /** As named in the document; "default" where it names none. Every colouring that the top uses is here. */
  readonly colourings: Readonly<Record<string, Colouring>>;
}

export type Side = 'left' | 'top' | 'right' | 'bottom';

export interface LogCabinDesign {
  readonly kind: 'log-cabin';
  readonly centre: readonly [width: Rational, height: Rational];
  readonly centreTone: string;
  /** One entry a log, in sewing order; the cycle of sides is already laid out. */
  readonly logs: readonly LogDesign[];
}

export interface LogDesign {
  readonly side: Side;
  readonly width: Rational;
  readonly tone: string;
  /** 0-based round and place in it, for pictures and paths. */
  readonly round: number;
  readonly place: number;
}

export interface PatchesDesign {
  readonly kind: 'patches';
  readonly size: readonly [width: Rational, height: Rational];
  readonly grid: readonly [across: Rational, down: Rational];
  readonly patches: readonly { readonly corners: readonly GridPoint[]; readonly tone: string }[];
}

export type GridPoint = readonly [x: Rational, y: Rational];

export interface TopDesign {
  readonly set: 'straight';
  readonly rows: readonly (readonly CellDesign[])[];
  readonly sashing: SashingDesign | null;
  /** From the inside outward. */
  readonly borders: readonly BorderDesign[];
}

export type QuarterTurn = 0 | 90 | 180 | 270;

export type CellDesign =
  | {
      readonly kind: 'block';
      readonly block: string;
      readonly colouring: string;
      readonly turn: QuarterTurn;
      /** Mirrored left to right before it is turned. */
      readonly mirror: boolean;
    }
  | { readonly kind: 'plain'; readonly fabric: string };

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

export interface BorderDesign {
  readonly width: Rational;
  readonly fabric: string;
  readonly corners: 'butted';
  readonly grain: 'lengthwise' | 'crosswise' | 'least';
}

export interface FinishDesign {
  readonly binding: { readonly fabric: string; readonly cut: Rational; readonly grain: 'straight' } | null;
  readonly backing: { readonly fabric: string; readonly overage: Rational } | null;
  readonly batting: { readonly overage: Rational } | null;
}
