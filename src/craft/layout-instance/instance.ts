// A layout problem as reference collections write them down: pieces, cloth and sheets in whole units, and which problems
// they are used for. Knows nothing of quilts.

/** `size` lies across the cloth and along it, before turning. */
export interface Item {
  readonly size: readonly [width: number, height: number];
  readonly count: number;
}

export interface InstanceSheet {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** Its area where none is written. */
  readonly cost: number;
  /** How many are at hand; null: as many as wanted. */
  readonly stock: number | null;
}

export type FirstCut = 'across' | 'along';

/** A problem that the instance lists, every field that it leaves out filled in. */
export interface ListedProblem {
  readonly id: string;
  readonly kind: 'strip' | 'sheets';
  /** Null: any packing at all. */
  readonly stages: number | null;
  readonly firstCut: FirstCut;
  readonly trim: boolean;
  readonly rotation: boolean;
  readonly stripHeights: 'piece' | 'any';
  /** The best value that the instance knows of, and a bound; null where it does not say. */
  readonly best: number | null;
  readonly lower: number | null;
}

export interface Instance {
  readonly name: string;
  /** Width of the cloth; null where there are sheets alone. */
  readonly width: number | null;
  readonly sheets: readonly InstanceSheet[];
  readonly items: readonly Item[];
  /** Whether pieces may turn where a problem does not say. */
  readonly rotation: boolean;
  readonly problems: readonly ListedProblem[];
}
