// How far a curve in hand rises: where the pointer or a key takes it, and what its radius is. In squares of the grid.
import { quarterRise } from '#craft/redrawing';
import { distance, type Point } from '#ground/plane';
import type { Arrow } from './snap.ts';

export interface Ends {
  readonly from: Point;
  readonly to: Point;
}

/** A square is divided into so many steps of the rise, over the parts that the hand goes by; our own figure. */
const stepsInPart = 8;

export const mostRise = ({ from, to }: Ends): number => distance(from, to) / 2;

/** Straight, a quarter round, half round: to either hand. */
const marked = (ends: Ends): readonly number[] => {
  const chord = distance(ends.from, ends.to);
  return [-chord / 2, -quarterRise(chord), 0, quarterRise(chord), chord / 2];
};

/** Where a place lies beside the way from end to end: along it, and to its left hand. */
const beside = ({ from, to }: Ends, p: Point): { readonly along: number; readonly aside: number } => {
  const chord = distance(from, to);
  const [ux, uy] = [(to.x - from.x) / chord, (to.y - from.y) / chord];
  const [dx, dy] = [p.x - from.x, p.y - from.y];
  return { along: dx * ux + dy * uy, aside: dx * uy - dy * ux };
};

/** So that the curve goes through a place, or as near as it can; drawn to what is marked, and else to steps. */
export const riseThrough = (ends: Ends, p: Point, of: { readonly parts: number; readonly reach: number }): number => {
  const { along, aside } = beside(ends, p);
  const chord = distance(ends.from, ends.to);
  const most = chord / 2;
  const isOver = along > chord / 8 && along < (chord * 7) / 8 && Math.abs(aside) > 1e-9;
  const deep = ((along - most) ** 2 + aside ** 2 - most ** 2) / (2 * aside);
  const through = isOver ? deep + Math.sign(aside) * Math.hypot(deep, most) : aside;
  const rise = Math.min(most, Math.max(-most, through));
  const near = marked(ends).find((one) => Math.abs(one - rise) < of.reach / 2);
  const steps = of.parts * stepsInPart;
  return near ?? Math.round(rise * steps) / steps;
};

const ways: Readonly<Record<Arrow, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The next step of the rise, or what is marked on the way, as an arrow takes the middle of the curve; itself where the arrow leads along it. */
export const riseStepped = (
  ends: Ends,
  rise: number,
  { arrow, parts }: { readonly arrow: Arrow; readonly parts: number },
): number => {
  const [dx, dy] = ways[arrow];
  const { aside } = beside(ends, { x: ends.from.x + dx, y: ends.from.y + dy });
  // an arrow within a quarter of a right angle of the way along does nothing
  if (Math.abs(aside) < 0.38) return rise;
  const ahead = Math.sign(aside);
  const steps = parts * stepsInPart;
  const stepped = ahead > 0 ? Math.floor(rise * steps + 1e-6) + 1 : Math.ceil(rise * steps - 1e-6) - 1;
  const most = mostRise(ends);
  return [stepped / steps, ...marked(ends)]
    .filter((one) => (one - rise) * ahead > 1e-6 && Math.abs(one) < most + 1e-9)
    .reduce((best, one) => ((one - best) * ahead < 0 ? one : best), most * ahead);
};

/** @returns null for what is straight */
export const radiusFor = (ends: Ends, rise: number): number | null => {
  const chord = distance(ends.from, ends.to);
  return Math.abs(rise) < 1e-9 ? null : (chord ** 2 / 4 + rise ** 2) / (2 * Math.abs(rise));
};

/** @returns null where so small a radius does not reach from end to end */
export const riseFor = (ends: Ends, radius: number): number | null => {
  const most = mostRise(ends);
  if (radius < most - 1e-9) return null;
  return radius - Math.sqrt(Math.max(0, radius ** 2 - most ** 2));
};
