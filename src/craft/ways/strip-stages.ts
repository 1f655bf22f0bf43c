// Stages at which strips are sewn along their long sides, and slices cut from them.
import { at, boxOf } from '#ground/plane';
import { type Face, type Line, pressedOpen, trimmedTo } from './face.ts';
import type { Joined } from './joins.ts';
import { asUnit, type Making, rectangle, type Stage } from './stage.ts';
import { lookOf, rowsIn } from './ways.ts';

/** Strips sewn along their long sides; the seam that ends a row is followed by cutting slices. Null where rows are joined. */
export const joinedStrips = (making: Making, parts: Joined): Stage | null => {
  const { unit, way, seam } = making;
  const rows = rowsIn(unit);
  const row = rows.find((places) => parts.flat().every((place) => places.includes(place)));
  if (row === undefined) return null;
  const [long = 0] = way.cuts[row[0] as number]?.size ?? [];
  const order = parts.map((places) => places.toSorted((a, b) => a - b)).toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
  const [under, below] = order.map((places) => stackOf(making, places)) as [Face, Face];
  const edge = boxOf(under.flatMap(({ outline }) => outline)).height;
  const over = below.map(({ place, outline }) => ({
    place,
    outline: outline.map((p) => at(p.x, edge - p.y)).toReversed(),
  }));
  const line: Line = [at(long, edge - seam), at(0, edge - seam)];
  const whole = pressedOpen(under, over, line);
  const isRow = parts[0].length + parts[1].length === row.length;
  const each = way.cuts[row[0] as number]?.gives ?? 1;
  const slice = long / each;
  const height = boxOf(whole.flatMap(({ outline }) => outline)).height;
  const sliceAt = (i: number): Face => trimmedTo(whole, { x: i * slice, y: 0, width: slice, height });
  const isUnit = isRow && rows.length === 1;
  return {
    under,
    over,
    drawn: [],
    sewn: [line],
    cut: isRow ? Array.from({ length: each }, (_, i): Line => [at((i + 1) * slice, 0), at((i + 1) * slice, edge)]) : [],
    pressed: [whole],
    trimmed: isUnit ? Array.from({ length: each }, (_, i) => asUnit(making, sliceAt(i))) : null,
    perSet: 1,
    slices: { each, perUnit: rows.filter((one) => lookOf(unit, one) === lookOf(unit, row)).length },
  };
};

/** Strips one below another, sewn. */
const stackOf = ({ way, seam }: Making, places: readonly number[]): Face =>
  places.reduce<Face>((stack, place) => {
    const [long, wide] = way.cuts[place]?.size ?? [0, 0];
    if (stack.length === 0) return [{ place, outline: rectangle(long, wide) }];
    const edge = boxOf(stack.flatMap(({ outline }) => outline)).height;
    const over: Face = [{ place, outline: rectangle(long, wide, 0, edge - wide) }];
    return pressedOpen(stack, over, [at(long, edge - seam), at(0, edge - seam)]);
  }, []);
