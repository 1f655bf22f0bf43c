// A unit taken apart: in two by one seam, or into a centre and the arms of a ring.
import type { Chord, SeamLine } from '#craft/chords';
import type { Arc } from '#ground/arc';
import type { Polygon } from '#ground/plane';

export type Division = SeamDivision | RingDivision;

export interface SeamDivision {
  readonly kind: 'seam';
  /** Inside corners to set in. */
  readonly bends: number;
  /** The seam's longest straight run, or from end to end where it has none: what lies above or left of it is the first part. */
  readonly line: SeamLine;
  /** The seam itself where it bends or runs through a unit that is not convex; null: all of the line. */
  readonly path: Polygon | null;
  /** Where the path runs over arcs, as they are walked along it. */
  readonly arcs: readonly Arc[];
  /** Of the path; null where that is. */
  readonly length: number | null;
  readonly parts: readonly [readonly number[], readonly number[]];
}

export interface RingDivision {
  readonly kind: 'ring';
  /** The centre, then the arms in sewing order: the first is sewn part-way, every other whole, then the first is closed. */
  readonly parts: readonly [readonly number[], ...(readonly (readonly number[])[])];
  /** By arm: its whole seam, and how much of it lies on the centre and on the arm before it. */
  readonly seams: readonly RingSeam[];
}

export interface RingSeam {
  readonly line: SeamLine;
  readonly onCentre: number;
  readonly onNeighbour: number;
}

export const alongChord = ({ line, first, second }: Pick<Chord, 'line' | 'first' | 'second'>): SeamDivision => ({
  kind: 'seam',
  bends: 0,
  line,
  path: null,
  arcs: [],
  length: null,
  parts: [first, second],
});
