// Which way are the seams of the top pressed? Toward sashing and plain pieces; edge to edge, rows by turns to
// the right and to the left, so that their seams nest.
import type { PlacedStrip, SetTop, StripRole, TopThing } from '#craft/setting';

type Role = StripRole | 'block';

export const roleOf = (set: Pick<SetTop, 'strips'>, thing: TopThing): Role =>
  'strip' in thing ? (set.strips[thing.strip] as PlacedStrip).role : 'block';

export interface Meeting {
  /** What lies next to the seam on either side. */
  readonly first: TopThing;
  readonly second: TopThing;
}

/** In a row of the middle: toward the sash, else by the row's own direction. */
export const pressInRow = (set: SetTop, seam: Meeting & { readonly row: number; readonly sashed: boolean }): 0 | 1 => {
  const [first, second] = [roleOf(set, seam.first), roleOf(set, seam.second)];
  if (first === 'sash') return 0;
  if (second === 'sash' || seam.sashed) return 1;
  const row = set.rows[seam.row];
  return row?.kind === 'blocks' && seam.row % 2 === 0 ? 1 : 0;
};

/** Toward the sashes, else downward. @param row that is added */
export const pressBetweenRows = (set: SetTop, row: number): 0 | 1 =>
  set.rows[row]?.kind === 'sashes' || set.rows[row - 1]?.kind !== 'sashes' ? 1 : 0;

/** Toward the strip or fill, else toward what is added. */
export const pressInSection = (set: SetTop, seam: Meeting): 0 | 1 =>
  roleOf(set, seam.second) === 'block' && roleOf(set, seam.first) !== 'block' ? 0 : 1;

/** A corner square is pressed toward its border strip, a pieced border toward its plain corner. */
export const pressInBorder = (set: SetTop, seam: Meeting): 0 | 1 => {
  const [first, second] = [roleOf(set, seam.first), roleOf(set, seam.second)];
  if (second === 'border-corner') return first === 'block' ? 1 : 0;
  return first === 'border-corner' && second === 'block' ? 0 : 1;
};
