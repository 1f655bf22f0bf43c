// The stage at which a square is sewn on a corner and flipped over it.
import { at, type Polygon } from '#ground/plane';
import { type Face, type Line, movedLeft, pressedOpen } from './face.ts';
import { type Making, rectangle, type Stage, sideOf, within } from './stage.ts';

/** A square on a corner, sewn from corner to corner; what lies outside is cut off, and the square flipped over the corner. */
export const flippedCorner = (making: Making, parts: readonly [readonly number[], readonly number[]]): Stage => {
  const { seam, unit, way } = making;
  const [first, second] = parts[0].includes(0) ? parts : [parts[1], parts[0]];
  const before = first.filter((place) => place > 0);
  const place = second[0] as number;
  const base: Face = [{ place: 0, outline: rectangle(way.cuts[0]?.size[0] ?? 0, way.cuts[0]?.size[1] ?? 0) }];
  const flip = (face: Face, corner: number) => {
    const { square, line } = cornerOf(making, corner);
    return pressedOpen(face, [{ place: corner, outline: square }], line);
  };
  const under = before.reduce(flip, base);
  const { square, line } = cornerOf(making, place);
  const done = flip(under, place);
  const isLast = before.length + 2 === unit.patches.length;
  return {
    under,
    over: [{ place, outline: square }],
    drawn: [line],
    sewn: [line],
    cut: [within(movedLeft(line, seam), [{ place, outline: square }])],
    pressed: [done],
    trimmed: isLast ? [done] : null,
    perSet: 1,
  };
};

const cornerOf = ({ unit, way }: Making, place: number): { readonly square: Polygon; readonly line: Line } => {
  const standing = unit.legs.flatMap((leg, corner) => (leg > 0 ? [corner] : []));
  const corner = standing[place - 1] as number;
  const [w, h] = way.cuts[0]?.size ?? [0, 0];
  const side = sideOf(way, place);
  switch (corner) {
    case 0:
      return { square: rectangle(side), line: [at(0, side), at(side, 0)] };
    case 1:
      return { square: rectangle(side, side, w - side, 0), line: [at(w - side, 0), at(w, side)] };
    case 2:
      return { square: rectangle(side, side, w - side, h - side), line: [at(w, h - side), at(w - side, h)] };
    default:
      return { square: rectangle(side, side, 0, h - side), line: [at(side, h), at(0, h - side)] };
  }
};
