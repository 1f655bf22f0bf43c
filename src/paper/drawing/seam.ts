// Where a step's seam runs, which way the second part lies from it, and how much of it is sewn at once.
import type { BlockPlan, PlannedPatch, PlannedStep } from '#craft';
import type { Side } from '#craft/design';
import type { Point, Polygon } from '#ground/plane';
import { centroid } from '#ground/plane';
import { isInside } from './shape.ts';

export type Leg = readonly [Point, Point];

export const sideWays: Record<Side, Point> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  top: { x: 0, y: -1 },
  bottom: { x: 0, y: 1 },
};

export const patchAt = (block: BlockPlan, index: number): PlannedPatch => {
  const patch = block.patches[index];
  if (patch === undefined) throw new Error(`block ${block.id} has no patch ${index}`);
  return patch;
};

/** The stretch of a seam up to its first corner: all of it, unless it is set in. */
export const firstLeg = (line: Polygon): Leg => {
  const [a, b] = line;
  if (a === undefined || b === undefined || (a.x === b.x && a.y === b.y)) throw new Error('a seam without length');
  return [a, b];
};

/** Unit vector along which the second part stands off on the board: square to the seam from end to end. */
export const awayFrom = (block: BlockPlan, step: PlannedStep): Point => {
  const [a, b] = [step.line[0], step.line.at(-1)];
  if (a === undefined || b === undefined) throw new Error('a seam without ends');
  // a seam that comes back to its start has no direction of its own
  if (a.x === b.x && a.y === b.y) return sideWays[step.side];
  const square = squareOf([a, b]);
  return mean(block, step.patches[1], a, square) >= mean(block, step.patches[0], a, square) ? square : reversed(square);
};

/** Unit vector square to the seam's first leg, into the second part. */
export const awayFromLeg = (block: BlockPlan, step: PlannedStep): Point => {
  const leg = firstLeg(step.line);
  const square = squareOf(leg);
  const size = Math.hypot(...block.finished);
  const beside = (way: Point): Point => ({
    x: (leg[0].x + leg[1].x) / 2 + way.x * size * 1e-4,
    y: (leg[0].y + leg[1].y) / 2 + way.y * size * 1e-4,
  });
  const isSecond = (p: Point) => step.patches[1].some((index) => isInside(patchAt(block, index).points, p));
  if (isSecond(beside(square))) return square;
  return isSecond(beside(reversed(square))) ? reversed(square) : awayFrom(block, step);
};

export interface Crossing {
  readonly at: Point;
  /** Unit vector square to the seam, into the second part. */
  readonly away: Point;
}

/** Where a seam, of a set-in one its first leg, is crossed at a share of it: square to it there, also along a curve. */
export const crossingOf = (
  block: BlockPlan,
  step: PlannedStep,
  /** Where a place of the block lies in the picture; it does not turn. */
  framed: (p: Point) => Point,
): ((share: number) => Crossing) => {
  const away = awayFromLeg(block, step);
  const run = step.kind === 'curved' ? step.line : firstLeg(step.line);
  const [a, b] = run as readonly [Point, Point];
  const hand = (b.x - a.x) * away.y - (b.y - a.y) * away.x < 0 ? -1 : 1;
  return (share) => {
    const { at, along } = placeOn(run, share);
    return { at: framed(at), away: { x: -along.y * hand, y: along.x * hand } };
  };
};

/** Of a straight seam that lies in the picture already. */
export const straightCrossing =
  (seam: Polygon, away: Point): ((share: number) => Crossing) =>
  (share) => ({ at: placeOn(seam, share).at, away });

/** A place at a share of a run's length, and the unit vector along it there. */
const placeOn = (run: Polygon, share: number): { readonly at: Point; readonly along: Point } => {
  const legs = run.slice(1).map((to, i): Leg => [run[i] as Point, to]);
  const lengths = legs.map(([from, to]) => Math.hypot(to.x - from.x, to.y - from.y));
  let left = lengths.reduce((all, length) => all + length, 0) * share;
  let on = 0;
  while (on < legs.length - 1 && left > (lengths[on] as number)) left -= lengths[on++] as number;
  const [from, to] = legs[on] as Leg;
  const length = lengths[on] as number;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return { at: { x: from.x + along.x * left, y: from.y + along.y * left }, along };
};

/**
 * What is sewn of a leg in this step: half of a seam that is begun and left open, from the end where both parts have a
 * corner; else all of it.
 */
export const sewnOf = (block: BlockPlan, step: PlannedStep): Leg => {
  const leg = firstLeg(step.line);
  if (step.kind !== 'partial-begin') return leg;
  const isEven = (end: Point) =>
    step.patches.every((part) =>
      part.some((index) => patchAt(block, index).points.some((p) => Math.hypot(p.x - end.x, p.y - end.y) < 1e-6)),
    );
  const middle = { x: (leg[0].x + leg[1].x) / 2, y: (leg[0].y + leg[1].y) / 2 };
  return isEven(leg[0]) ? [leg[0], middle] : [middle, leg[1]];
};

/** Where sewing stops on a mark: at inside corners that a piece is set into later, and at all corners and ends of a seam that is set in. */
export const stopsOf = ({ kind, line, stopsAt }: PlannedStep): Polygon => (kind === 'set-in' ? line : stopsAt);

/** Where a seam that is left open part-way stops, within it. */
export const openEnd = (block: BlockPlan, step: PlannedStep): Polygon => {
  if (step.kind !== 'partial-begin') return [];
  const whole = firstLeg(step.line);
  return sewnOf(block, step).filter((end) => !whole.includes(end));
};

/** Unit vector square to a line, at the right hand of one who goes along it, in the picture, where y runs down. */
export const squareOf = ([a, b]: Leg): Point => {
  const whole = Math.hypot(b.x - a.x, b.y - a.y);
  return { x: -(b.y - a.y) / whole, y: (b.x - a.x) / whole };
};

const reversed = (way: Point): Point => ({ x: -way.x, y: -way.y });

/** How far the middles of the patches lie along a direction, from `a`. */
const mean = (block: BlockPlan, patches: readonly number[], a: Point, way: Point): number =>
  patches.reduce((sum, index) => {
    const middle = centroid(patchAt(block, index).points);
    return sum + (middle.x - a.x) * way.x + (middle.y - a.y) * way.y;
  }, 0) / Math.max(1, patches.length);

/**
 * Whether a unit can be measured after this step: on a foundation when the sheet is cut out, of units made together or with room when
 * they are whole. What is flipped keeps the size of its base, and of strips slices are cut when all are sewn side by side.
 */
export const isTrimmed = ({ onPaper, made }: Pick<PlannedStep, 'onPaper' | 'made'>): boolean =>
  (onPaper === undefined || onPaper.laid === onPaper.order.length) &&
  (made === undefined ||
    made.isLast ||
    made.way.name === 'sew-and-flip' ||
    made.unit.strips?.widths.length === made.parts.flat().length);
