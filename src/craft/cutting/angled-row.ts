// How do equal pieces lie in a strip tip to tip, and how many fit? Each second one is turned by a half turn about the middle
// of the side that it shares; of a parallelogram that is only a shift. Nothing of cloth or marks.
import { type Length, length } from '#craft/measure';
import { at, type Polygon } from '#ground/plane';

/**
 * A piece between the two edges of its strip: the lower edge from 0 to `bottom`, the upper from `lean` to `lean + top`. All
 * in one unit; `lean` is below zero where the left side leans to the left.
 */
export interface Row {
  readonly height: number;
  readonly bottom: number;
  readonly top: number;
  readonly lean: number;
}

/**
 * The least length of strip that holds so many.
 *
 * @param count above zero
 * @source docs/formulas.md#strips-at-an-angle
 */
export const rowLength = (row: Row, count: number): Length => length(extentOf(startOf(row, count), count));

/** The most that a length of strip holds. */
export const mostInRow = (row: Row, most: Length): number => {
  let count = Math.max(0, Math.ceil((2 * most) / (row.bottom + row.top)));
  while (count > 0 && rowLength(row, count) > most + 1e-9) count--;
  return count;
};

/** The pieces in their strip, clockwise, the leftmost point at 0 and the upper edge at 0. */
export const rowOutlines = (row: Row, count: number): readonly Polygon[] => {
  const start = startOf(row, count);
  const left = -Math.min(0, start.lean);
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [endsAfter(start, i), endsAfter(start, i + 1)];
    return [
      at(left + from.top, 0),
      at(left + to.top, 0),
      at(left + to.bottom, row.height),
      at(left + from.bottom, row.height),
    ];
  });
};

/** The first piece upright or turned, whichever makes the row shorter: its ends are as slanted as its outer sides. */
const startOf = (row: Row, count: number): Row => {
  const turned: Row = { ...row, bottom: row.top, top: row.bottom, lean: row.lean + row.top - row.bottom };
  return extentOf(turned, count) < extentOf(row, count) - 1e-9 ? turned : row;
};

const extentOf = (start: Row, count: number): number => {
  const end = endsAfter(start, count);
  return Math.max(end.bottom, end.top) - Math.min(0, start.lean);
};

/** Where the sides beyond so many pieces stand on the strip's two edges. */
const endsAfter = (start: Row, count: number): { readonly bottom: number; readonly top: number } => {
  const both = Math.floor(count / 2) * (start.bottom + start.top);
  const isOdd = count % 2 === 1;
  return { bottom: both + (isOdd ? start.bottom : 0), top: start.lean + both + (isOdd ? start.top : 0) };
};
