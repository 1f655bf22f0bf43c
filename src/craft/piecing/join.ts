// The order of joining as it is planned: what is to be joined, the ways there are, and the tree that is chosen.
import type { Drawing } from '#craft/chords';
import type { Arc } from '#ground/arc';
import type { Point } from '#ground/plane';
import type { UnitForm } from './congruence.ts';
import type { RingSeam, SeamDivision } from './division.ts';
import type { PatchGraph } from './graph.ts';

/** A part of a join: a single patch, or a unit of a form. */
export type Branch =
  | { readonly patch: number }
  | { readonly form: number; readonly turn: number; readonly patches: readonly number[] };

export type Join = SeamJoin | RingJoin;

/** A seam with, for each side of it, how its part is made. */
export interface SeamJoin extends Omit<SeamDivision, 'parts'> {
  /** Above or left of the seam, then below or right of it, as they lie in the form's first unit. */
  readonly branches: readonly [Branch, Branch];
  /** The second is a single patch, sewn on along a line of a foundation. */
  readonly onPaper?: true;
}

export interface RingJoin {
  readonly kind: 'ring';
  /** The centre, then the arms in sewing order. */
  readonly branches: readonly [Branch, ...(readonly Branch[])];
  readonly seams: readonly RingSeam[];
}

export interface JoinTree {
  /** How each form in the tree is made, told of the unit that is met first from the whole block down. */
  readonly joins: ReadonlyMap<number, Join>;
  readonly root: number;
  readonly leastUnits: 'proven' | 'searched';
}

/**
 * What a seam over arcs costs: as often as it has arcs, times their number, so that several short curves are preferred to one long
 * one. All arcs of a drawing are sewn in any order. Our own measure.
 */
export const curveCost = (arcs: readonly Arc[]): number => arcs.length ** 2;

export const curvesOf = (join: Join): number => (join.kind === 'seam' ? curveCost(join.arcs) : 0);

export const patchesOf = (branch: Branch): readonly number[] => ('patch' in branch ? [branch.patch] : branch.patches);

export const formsIn = ({ branches }: Join): readonly number[] => {
  const forms: number[] = [];
  for (const branch of branches) if ('form' in branch) forms.push(branch.form);
  return forms;
};

/** What is to be joined. The graph is asked for only where no plain chord divides a unit. */
export interface JoinTask {
  readonly drawing: Drawing;
  readonly graph: () => PatchGraph;
  readonly formOf: (unit: readonly number[]) => UnitForm;
  readonly kindOf: readonly number[];
  readonly isConvex: (unit: readonly number[]) => boolean;
  /** Middle of each patch. */
  readonly centres: readonly Point[];
  /** Whether any patch has a curved edge. */
  readonly isCurved: boolean;
  /** Patches that are a unit of their own: no seam divides them before it is all that is left. Missing for none. */
  readonly whole?: readonly (readonly number[])[];
}

export interface Ways {
  readonly root: number;
  readonly joins: ReadonlyMap<number, readonly Join[]>;
  /** The unit that each form's joins are told of: turns of branches are counted from it. */
  readonly firstUnits: ReadonlyMap<number, readonly number[]>;
}

/** How each form is made. */
export type Choice = ReadonlyMap<number, Join>;
