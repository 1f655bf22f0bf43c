// What one stage of making a unit is, and what its drawing is made with: squares and strips, lines at both hands of a diagonal, a face
// brought to size. All in true sizes, cloth with its allowances.
import { at, boxOf, centroid, isInside, type Point, type Polygon, unitVector } from '#ground/plane';
import { type Face, keptBeside, type Line, movedLeft, reversed, trimmedTo, turnedFace } from './face.ts';
import { outlinesOf } from './outlines.ts';
import type { Unit } from './unit.ts';
import type { Way } from './ways.ts';

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

export interface Making {
  readonly unit: Unit;
  readonly way: Way;
  readonly seam: number;
}

export type Sewing = Omit<Stage, 'trimmed' | 'perSet'>;

export const sideOf = (way: Way, place: number): number => way.cuts[place]?.size[0] ?? 0;

export const rectangle = (width: number, height = width, x = 0, y = 0): Polygon => [
  at(x, y),
  at(x + width, y),
  at(x + width, y + height),
  at(x, y + height),
];

/** A unit with its allowances. */
export const wholeOf = ({ unit, seam }: Making): readonly [number, number] => [
  unit.size[0] + 2 * seam,
  unit.size[1] + 2 * seam,
];

/** Of a diagonal with a seam at either hand: the seam at its right hand, then that at its left, each with what it keeps. */
export const bothSides = (line: Line, seam: number): readonly [Line, Line] => [
  movedLeft(line, -seam),
  movedLeft(reversed(line), -seam),
];

/** As much of a line as lies on a face. */
export const within = ([from, to]: Line, face: Face): Line => {
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
export const fromMiddle = (making: Making, face: Face): Face => {
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
export const asUnit = ({ unit, seam }: Making, face: Face): Face => {
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
