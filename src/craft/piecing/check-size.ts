// The size to measure after a seam: the unit with its outer allowances, across and down.

import { type Length, length } from '#craft/measure';
import { type Arc, edgesOf, type Outline, outlineBox } from '#ground/arc';
import { type Box, distance, grown, type Point, type Polygon, turned } from '#ground/plane';

/**
 * Across and down of the unit as it lies on the board, allowances included. A unit that lies slanted (a
 * square on its point) is measured along its own sides: the frame of least area counts, upright if equal.
 *
 * @param outline of the unit, finished, clockwise, without corners on straight sides
 * @param slack  differences below it are none
 * @source docs/formulas.md#check-size
 */
export const checkSize = (unit: MeasuredUnit): readonly [Length, Length] => {
  if (isCurved(unit)) {
    const { width, height } = curvedFrame(unit).box;
    return [length(width + 2 * unit.seam), length(height + 2 * unit.seam)];
  }
  const [across, down] = spanOf(grown(unit.outline, unit.seam), checkTurn(unit));
  return [length(across), length(down)];
};

export interface MeasuredUnit {
  readonly outline: Polygon;
  /** Of the outline; none where missing. */
  readonly arcs?: readonly Arc[];
  readonly seam: Length;
  readonly slack: number;
}

/** The turn, in radians, that brings a unit upright as it is measured: less than an eighth turn either way. */
export const checkTurn = (unit: MeasuredUnit): number => {
  if (isCurved(unit)) return curvedFrame(unit).turn;
  const { outline } = unit;
  const cut = grown(outline, unit.seam);
  let best = spanOf(cut, 0);
  let bestTurn = 0;
  for (let i = 0; i < outline.length; i++) {
    const a = outline[i] as Point;
    const b = outline[(i + 1) % outline.length] as Point;
    if (distance(a, b) < unit.slack) continue;
    const turn = nearestToUpright(Math.atan2(b.y - a.y, b.x - a.x));
    if (Math.abs(turn) < 1e-9) continue;
    const span = spanOf(cut, -turn);
    if (span[0] * span[1] >= best[0] * best[1] * (1 - 1e-6)) continue;
    best = span;
    bestTurn = -turn;
  }
  return bestTurn;
};

const isCurved = ({ arcs = [] }: MeasuredUnit): boolean => arcs.length > 0;

/**
 * Of a unit with a curved edge: the box round it, an allowance of which lies on every side, those at its tips not counted. Where it
 * has straight sides the box lies along one of them.
 */
const curvedFrame = ({ outline, arcs = [] }: MeasuredUnit): { readonly turn: number; readonly box: Box } => {
  const whole: Outline = { points: outline, arcs };
  const frames = edgesOf(whole)
    .filter(({ arc }) => arc === null)
    .map(({ from, to }) => -nearestToUpright(Math.atan2(to.y - from.y, to.x - from.x)))
    .map((turn) => ({ turn, box: outlineBox(turnedOutline(whole, turn)) }));
  const areaOf = ({ box }: { readonly box: Box }): number => box.width * box.height;
  const upright = { turn: 0, box: outlineBox(whole) };
  return frames.reduce((a, b) => (areaOf(b) < areaOf(a) * (1 - 1e-6) ? b : a), upright);
};

const turnedOutline = ({ points, arcs }: Outline, radians: number): Outline => {
  const turn = (p: Point): Point => turned(p, radians);
  return {
    points: points.map(turn),
    arcs: arcs.map((arc) => ({ ...arc, from: turn(arc.from), to: turn(arc.to), centre: turn(arc.centre) })),
  };
};

/** Brings a direction within an eighth turn of the axes. */
const nearestToUpright = (radians: number): number => radians - Math.round(radians / (Math.PI / 2)) * (Math.PI / 2);

const spanOf = (points: readonly Point[], turn: number): readonly [number, number] => {
  const seen = turn === 0 ? points : points.map((p) => turned(p, turn));
  const xs = seen.map((p) => p.x);
  const ys = seen.map((p) => p.y);
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
};
