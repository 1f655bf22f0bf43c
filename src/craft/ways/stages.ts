// How a unit is made, seam by seam: what lies on what, where it is marked, sewn and cut, and what has come of it when it is
// pressed and trimmed. All in true sizes, cloth with its allowances.
import type { Length } from '#craft/measure';
import { at, boxOf, centroid, isInside, type Point, type Polygon, unitVector } from '#ground/plane';
import {
  type Face,
  keptBeside,
  type Line,
  movedLeft,
  pressedOpen,
  reversed,
  shifted,
  trimmedTo,
  turnedFace,
} from './face.ts';
import { outlinesOf } from './outlines.ts';
import type { Unit } from './unit.ts';
import { rowsIn, type Way } from './ways.ts';

export interface Stage {
  readonly under: Face;
  /** As it lies on top, wrong side up. */
  readonly over: Face;
  readonly drawn: readonly Line[];
  readonly sewn: readonly Line[];
  readonly cut: readonly Line[];
  /** What one laying gives, pressed, before it is trimmed. */
  readonly pressed: readonly Face[];
  /** The same brought to size, each as the unit lies at turn 0 with its allowances; null before the last stage. */
  readonly trimmed: readonly Face[] | null;
  /** Layings in one set of pieces. */
  readonly perSet: number;
  /** Of the seam that ends a strip set: slices that are cut from it, and slices of its sort in one unit; missing for others. */
  readonly slices?: { readonly each: number; readonly perUnit: number };
}

/** How often a stage is laid for so many units. */
export const layingsOf = (stage: Stage, { way, units }: { readonly way: Way; readonly units: number }): number =>
  stage.slices
    ? Math.ceil((units * stage.slices.perUnit) / stage.slices.each)
    : stage.perSet * Math.ceil(units / way.gives);

/** Sets of pieces that so many units take: of strips those that are sewn together. */
export const setsOf = (stage: Stage | null, { way, units }: { readonly way: Way; readonly units: number }): number =>
  stage?.slices ? layingsOf(stage, { way, units }) : Math.ceil(units / way.gives);

/**
 * The stage at which two parts of a unit are joined.
 *
 * @param parts places of the unit, by part
 */
export const stageFor = (of: {
  readonly unit: Unit;
  readonly way: Way;
  /** The allowance. */
  readonly seam: Length;
  readonly parts: readonly [readonly number[], readonly number[]];
}): Stage | null => {
  const { unit, way, parts } = of;
  const making: Making = { unit, way, seam: of.seam };
  switch (way.name) {
    case 'singly':
      return null;
    case 'two-at-a-time':
      return { ...halfSquares(making, [0, 1]), ...last(making), perSet: 1 };
    case 'eight-at-a-time':
      return eightHalfSquares(making);
    case 'from-half-squares':
      return parts[0].length + parts[1].length < 4 ? firstPairs(making, parts) : crossedPairs(making);
    case 'four-at-a-time':
      return parts[0].length + parts[1].length < 3 ? firstSkies(making) : secondSky(making);
    case 'sew-and-flip':
      return flippedCorner(making, parts);
    case 'strip-sets':
      return joinedStrips(making, parts);
  }
};

/** The joins of a unit in an order of sewing, those that come out alike once: two halves of two cloths are made in one. */
export const joinsOf = (unit: Unit, { name, roles }: Pick<Way, 'name' | 'roles'>): readonly Joined[] => {
  const { kind, patches } = unit;
  if (kind === 'half-square') return [[[0], [1]]];
  if (name === 'strip-sets') return stripJoins(unit);
  if (kind !== 'quarter-square')
    return patches.slice(1).map((_, i): Joined => [patches.slice(0, i + 1).map((_p, place) => place), [i + 1]]);
  const isOnePair = name === 'from-half-squares' && new Set(roles).size === 2;
  const halves: readonly Joined[] = [
    [[0], [1]],
    [[2], [3]],
  ];
  return [
    ...(isOnePair ? halves.slice(0, 1) : halves),
    [
      [0, 1],
      [2, 3],
    ],
  ];
};

/** Within rows, each sort of row once; rows are then joined as any units are. */
const stripJoins = (unit: Unit): readonly Joined[] => {
  const rows = rowsIn(unit);
  const seen = rows.filter((row, i) => rows.findIndex((one) => isLikeRow(unit, one, row)) === i);
  return seen.flatMap((row) => row.slice(1).map((place, i): Joined => [row.slice(0, i + 1), [place]]));
};

const isLikeRow = ({ fabrics }: Unit, one: readonly number[], other: readonly number[]): boolean => {
  const cloths = (row: readonly number[]): string => row.map((place) => fabrics[place]).join('|');
  return cloths(one) === cloths(other) || cloths(one.toReversed()) === cloths(other);
};

/** Places of a unit, by part. */
export type Joined = readonly [readonly number[], readonly number[]];

interface Making {
  readonly unit: Unit;
  readonly way: Way;
  readonly seam: number;
}

type Sewing = Omit<Stage, 'trimmed' | 'perSet'>;

const sideOf = (way: Way, place: number): number => way.cuts[place]?.size[0] ?? 0;

const rectangle = (width: number, height = width, x = 0, y = 0): Polygon => [
  at(x, y),
  at(x + width, y),
  at(x + width, y + height),
  at(x, y + height),
];

/** A unit with its allowances. */
const wholeOf = ({ unit, seam }: Making): readonly [number, number] => [
  unit.size[0] + 2 * seam,
  unit.size[1] + 2 * seam,
];

/** Of a diagonal with a seam at either hand: the seam at its right hand, then that at its left, each with what it keeps. */
const bothSides = (line: Line, seam: number): readonly [Line, Line] => [
  movedLeft(line, -seam),
  movedLeft(reversed(line), -seam),
];

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

const last = (making: Making): { readonly trimmed: readonly Face[] } => {
  const { pressed } = halfSquares(making, [0, 1]);
  return { trimmed: pressed.map((face) => asUnit(making, fromMiddle(making, face))) };
};

const eightHalfSquares = (making: Making): Stage => {
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
const firstPairs = (making: Making, parts: readonly [readonly number[], readonly number[]]): Stage => {
  const places = parts.flat().toSorted((a, b) => a - b) as unknown as readonly [number, number];
  return { ...halfSquares(making, places), trimmed: null, perSet: 1 };
};

const crossedPairs = (making: Making): Stage => {
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
const firstSkies = (making: Making): Stage => {
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
const secondSky = (making: Making): Stage => {
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

/** A square on a corner, sewn from corner to corner; what lies outside is cut off, and the square flipped over the corner. */
const flippedCorner = (making: Making, parts: readonly [readonly number[], readonly number[]]): Stage => {
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

/** Strips sewn along their long sides; the seam that ends a row is followed by cutting slices. Null where rows are joined. */
const joinedStrips = (making: Making, parts: Joined): Stage | null => {
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
    slices: { each, perUnit: rows.filter((one) => isLikeRow(unit, one, row)).length },
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

/** As much of a line as lies on a face. */
const within = ([from, to]: Line, face: Face): Line => {
  const points = face.flatMap(({ outline }) =>
    [[from, to] as Line, [to, from] as Line].flatMap((line) =>
      keptBeside([{ place: 0, outline }], line).flatMap((part) => part.outline),
    ),
  );
  const { x: dx, y: dy } = unitVector(from, to);
  const onLine = points.filter((p) => Math.abs((p.x - from.x) * dy - (p.y - from.y) * dx) < 1e-7);
  const along = onLine.map((p) => (p.x - from.x) * dx + (p.y - from.y) * dy);
  const [start, end] = [Math.min(...along), Math.max(...along)];
  return [at(from.x + start * dx, from.y + start * dy), at(from.x + end * dx, from.y + end * dy)];
};

/** Trimmed from its middle to the unit's size. */
const fromMiddle = (making: Making, face: Face): Face => {
  const [wide, high] = wholeOf(making);
  const box = boxOf(face.flatMap(({ outline }) => outline));
  return trimmedTo(face, {
    x: box.x + (box.width - wide) / 2,
    y: box.y + (box.height - high) / 2,
    width: wide,
    height: high,
  });
};

/** Turned so that its cloths lie as the unit has them at turn 0. */
const asUnit = ({ unit, seam }: Making, face: Face): Face => {
  const wanted = outlinesOf(unit).map(nearCorners);
  const lies = (turned: Face): boolean =>
    wanted.every((points, place) =>
      points.every((p) => showsAt(turned, at(p.x + seam, p.y + seam), unit) === unit.fabrics[place]),
    );
  return [0, 1, 2, 3].map((quarters) => turnedFace(face, quarters)).find(lies) ?? face;
};

/** Well inside an outline, one point for each corner. */
const nearCorners = (outline: Polygon): Polygon => {
  const middle = centroid(outline);
  return outline.map((p) => at(p.x + 0.15 * (middle.x - p.x), p.y + 0.15 * (middle.y - p.y)));
};

const showsAt = (face: Face, point: Point, { fabrics }: Unit): string | undefined => {
  const shown = face.findLast(({ outline }) => isInside(point, outline));
  return shown && fabrics[shown.place];
};
