// How many strips of some height or higher: at least, or at most? What the proof divides layouts by.

/** At least or at most so many strips are as high as this or higher. */
export interface Limit {
  readonly height: number;
  readonly way: 'least' | 'most';
  readonly strips: number;
}

/** As a row of a linear program: the least that the row must come to. */
export const leastOf = ({ way, strips }: Limit): number => (way === 'least' ? strips : -strips);

/** Without those that follow from others. */
export const tellingOf = (limits: readonly Limit[]): readonly Limit[] =>
  limits.filter(
    (limit, i) => !limits.some((other, j) => i !== j && saysMore(other, limit) && (j < i || !saysMore(limit, other))),
  );

const saysMore = (a: Limit, b: Limit): boolean =>
  a.way === b.way &&
  (a.way === 'least' ? a.height >= b.height && a.strips >= b.strips : a.height <= b.height && a.strips <= b.strips);
