// Stages at which squares are sewn before they are cut apart: half-squares two and eight at a time, quarter-squares of them, and geese four
// at a time.
import { at } from '#ground/plane';
import { type Face, type Line, pressedOpen, shifted, trimmedTo } from './face.ts';
import {
  asUnit,
  bothSides,
  fromMiddle,
  type Making,
  rectangle,
  type Sewing,
  type Stage,
  sideOf,
  wholeOf,
  within,
} from './stage.ts';

const halfSquares = ({ seam, way }: Making, places: readonly [number, number]): Sewing => {
  // the line is drawn on the upper one
  const side = sideOf(way, places[1]);
  const under: Face = [{ place: places[0], outline: rectangle(sideOf(way, places[0])) }];
  const over: Face = [{ place: places[1], outline: rectangle(side) }];
  const diagonal: Line = [at(side, 0), at(0, side)];
  const sewn = bothSides(diagonal, seam);
  const pressed = sewn.map((line) => pressedOpen(under, over, line));
  return { under, over, drawn: [diagonal], sewn: sewn.map((line) => within(line, under)), cut: [diagonal], pressed };
};

/** Of which each laying gives two units. */
export const twoHalfSquares = (making: Making): Stage => ({
  ...halfSquares(making, [0, 1]),
  ...trimmedHalves(making),
  perSet: 1,
});

const trimmedHalves = (making: Making): { readonly trimmed: readonly Face[] } => {
  const { pressed } = halfSquares(making, [0, 1]);
  return { trimmed: pressed.map((face) => asUnit(making, fromMiddle(making, face))) };
};

export const eightHalfSquares = (making: Making): Stage => {
  const side = sideOf(making.way, 1);
  const half = side / 2;
  const under: Face = [{ place: 0, outline: rectangle(sideOf(making.way, 0)) }];
  const over: Face = [{ place: 1, outline: rectangle(side) }];
  const diagonals: readonly Line[] = [
    [at(side, 0), at(0, side)],
    [at(0, 0), at(side, side)],
  ];
  const middles: readonly Line[] = [
    [at(half, 0), at(half, side)],
    [at(0, half), at(side, half)],
  ];
  const pressed = [0, 1, 2, 3].flatMap((quarter) => {
    const square = { x: (quarter % 2) * half, y: Math.floor(quarter / 2) * half, width: half, height: half };
    const diagonal = (quarter === 1 || quarter === 2 ? diagonals[0] : diagonals[1]) as Line;
    const cutOut = (face: Face): Face => shifted(trimmedTo(face, square), square.x, square.y);
    return bothSides(diagonal, making.seam).map((line) => pressedOpen(cutOut(under), cutOut(over), line));
  });
  const sewn = diagonals.flatMap((line) => bothSides(line, making.seam));
  return {
    under,
    over,
    drawn: diagonals,
    sewn: sewn.map((line) => within(line, under)),
    cut: [...middles, ...diagonals],
    pressed,
    trimmed: pressed.map((face) => asUnit(making, fromMiddle(making, face))),
    perSet: 1,
  };
};

/** Two squares become two half-squares, of which each gives two halves of the unit. */
export const firstPairs = (making: Making, parts: readonly [readonly number[], readonly number[]]): Stage => {
  const places = parts.flat().toSorted((a, b) => a - b) as unknown as readonly [number, number];
  return { ...halfSquares(making, places), trimmed: null, perSet: 1 };
};

export const crossedPairs = (making: Making): Stage => {
  const { seam, way } = making;
  const side = sideOf(way, 0) - Math.SQRT2 * seam;
  const [upper, lower] = [
    [at(0, 0), at(side, 0), at(0, side)],
    [at(side, 0), at(side, side), at(0, side)],
  ] as const;
  const under: Face = [
    { place: 0, outline: upper },
    { place: 1, outline: lower },
  ];
  const over: Face = [
    { place: 3, outline: upper },
    { place: 2, outline: lower },
  ];
  const diagonal: Line = [at(side, side), at(0, 0)];
  const sewn = bothSides(diagonal, seam);
  const whole: Face = [{ place: 0, outline: rectangle(side) }];
  const pressed = sewn.map((line) => pressedOpen(under, over, line));
  return {
    under,
    over,
    drawn: [diagonal],
    sewn: sewn.map((line) => within(line, whole)),
    cut: [diagonal],
    pressed,
    trimmed: pressed.map((face) => asUnit(making, fromMiddle(making, face))),
    perSet: way.gives / 2,
  };
};

/** Two small squares on opposite corners of the large one. */
export const firstSkies = (making: Making): Stage => {
  const { seam, way } = making;
  const [large, small] = [sideOf(way, 0), sideOf(way, 1)];
  const under: Face = [{ place: 0, outline: rectangle(large) }];
  const over: Face = [
    { place: 1, outline: rectangle(small, small, large - small, 0) },
    { place: 2, outline: rectangle(small, small, 0, large - small) },
  ];
  const diagonal: Line = [at(large, 0), at(0, large)];
  const sewn = bothSides(diagonal, seam);
  return {
    under,
    over,
    drawn: [diagonal],
    sewn: sewn.map((line) => within(line, under)),
    cut: [diagonal],
    pressed: sewn.map((line) => pressedOpen(under, over, line)),
    trimmed: null,
    perSet: 1,
  };
};

/** The third and fourth square, each on the corner that is left of one half. */
export const secondSky = (making: Making): Stage => {
  const { seam, way } = making;
  const [large, small] = [sideOf(way, 0), sideOf(way, 1)];
  const under = firstSkies(making).pressed[0] as Face;
  const over: Face = [{ place: 2, outline: rectangle(small) }];
  const line: Line = [at(large, large), at(0, 0)];
  const sewn = bothSides(line, seam);
  const pressed = sewn.map((side) => pressedOpen(under, over, side));
  // where the seams of both skies meet: their lines are x + y = large − s√2 and y = x ∓ s√2
  const sum = large - Math.SQRT2 * seam;
  const off = Math.SQRT2 * seam;
  const [wide, high] = wholeOf(making);
  const trimmed = pressed.map((face, i) => {
    const point = i === 0 ? at((sum + off) / 2, (sum - off) / 2) : at((sum - off) / 2, (sum + off) / 2);
    const box =
      i === 0
        ? { x: point.x - wide / 2, y: point.y + seam - high, width: wide, height: high }
        : { x: point.x + seam - high, y: point.y - wide / 2, width: high, height: wide };
    return asUnit(making, trimmedTo(face, box));
  });
  const drawn: Line = [at(small, small), at(0, 0)];
  const onSquare = sewn.map((side) => within(side, [{ place: 0, outline: rectangle(small) }]));
  return { under, over, drawn: [drawn], sewn: onSquare, cut: [drawn], pressed, trimmed, perSet: 2 };
};
