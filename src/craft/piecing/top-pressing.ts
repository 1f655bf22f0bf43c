// Which way would the seams of the top be pressed if nothing met them? Toward sashing and plain pieces; edge to edge, rows
// by turns to the right and to the left; borders outward. Seams that are told in one word are pressed one way.
import type { PlacedStrip, SetTop, StripRole, TopThing } from '#craft/setting';

type Role = StripRole | 'block';

export const roleOf = (set: Pick<SetTop, 'strips'>, thing: TopThing): Role =>
  'strip' in thing ? (set.strips[thing.strip] as PlacedStrip).role : 'block';

export interface TopWish {
  /** Seams of one run are pressed one way: all those of a row to its right, say. */
  readonly run: string;
  /** The part that such a seam is then pressed toward. */
  readonly along: 0 | 1;
  /** Whether that way is wished for, or the other. */
  readonly wished: boolean;
  /** How much: toward cloth that lies flat, or one way because some way it must be. Kept: whatever meets. */
  readonly weight: 'kept' | 'flat' | 'some';
}

export interface Neighbours {
  /** What lies next to the seam on either side. */
  readonly first: TopThing;
  readonly second: TopThing;
}

/** In a row of the middle: toward the sash, else by the row's own direction. */
export const pressInRow = (
  set: SetTop,
  seam: Neighbours & { readonly row: number; readonly sashed: boolean },
): TopWish => {
  const [first, second] = [roleOf(set, seam.first), roleOf(set, seam.second)];
  if (first === 'sash' || second === 'sash') {
    return { run: `row ${seam.row}, sashes`, along: first === 'sash' ? 0 : 1, wished: true, weight: 'flat' };
  }
  const row = set.rows[seam.row];
  const right = seam.sashed || (row?.kind === 'blocks' && seam.row % 2 === 0);
  return { run: `row ${seam.row}`, along: 1, wished: right, weight: 'some' };
};

/** Toward the sashes, else downward. @param row that is added */
export const pressBetweenRows = (set: SetTop, row: number): TopWish => {
  const isAfterSashes = set.rows[row]?.kind !== 'sashes' && set.rows[row - 1]?.kind === 'sashes';
  const isSash = isAfterSashes || set.rows[row]?.kind === 'sashes';
  return { run: `rows ${row}`, along: 1, wished: !isAfterSashes, weight: isSash ? 'flat' : 'some' };
};

/** Toward the strip or fill, else toward what is added. @param name of the seam */
export const pressInSection = (set: SetTop, seam: Neighbours, name: string): TopWish => {
  const [first, second] = [roleOf(set, seam.first), roleOf(set, seam.second)];
  const isBack = second === 'block' && first !== 'block';
  const isFlat = (first === 'block') !== (second === 'block');
  return { run: name, along: 1, wished: !isBack, weight: isFlat ? 'flat' : 'some' };
};

/** A corner square is pressed toward its border strip, a pieced border toward its plain corner, its blocks all one way. */
export const pressInBorder = (
  set: SetTop,
  seam: Neighbours & { readonly ring: number; readonly name: string },
): TopWish => {
  const [first, second] = [roleOf(set, seam.first), roleOf(set, seam.second)];
  if (first === 'block' && second === 'block') {
    return { run: `border ${seam.ring}`, along: 1, wished: true, weight: 'some' };
  }
  const isBack = second === 'border-corner' ? first !== 'block' : first === 'border-corner' && second === 'block';
  const isFlat = first === 'border-corner' || second === 'border-corner';
  return { run: seam.name, along: 1, wished: !isBack, weight: isFlat ? 'flat' : 'some' };
};

/** Corners of a set on point and borders that are sewn on: toward the second part or the first, whatever meets. */
export const pressKept = (toward: 0 | 1): TopWish => ({ run: '', along: toward, wished: true, weight: 'kept' });
