// What a picture of a step says beyond its parts: the next one stands a little apart with the thread outline, an arrow
// crosses the seam the way that it is pressed, and the size to measure stands under and beside them.

import type { PlannedStep } from '#craft';
import { isSpun } from '#craft/pressing';
import { turnedBy } from '#craft/setting';
import type { Box, Point, Polygon } from '#ground/plane';
import { arrow, dimension, spunArrows } from './arrow.ts';
import { textWidthPt, thread } from './ink.ts';
import type { Lettered } from './label.ts';
import type { Crossing } from './seam.ts';
import { pathOf } from './shape.ts';
import { element } from './svg.ts';

/** How far the next part stands off, in points. */
const standOffPt = 11;

export const standOff = (away: Point): Point => ({
  x: Math.abs(away.x) < 1e-9 ? 0 : away.x * standOffPt,
  y: Math.abs(away.y) < 1e-9 ? 0 : away.y * standOffPt,
});

const marginPt = 4;
const dimensionPt = 13;

/** Room for the parts, the next one standing off, above and beside what is measured. */
export const boardRoom = (of: {
  readonly fitPt: readonly [width: number, height: number];
  readonly apart: Point;
  /** What is measured from top to bottom; null where nothing is. */
  readonly down: string | null;
}): Box => {
  const { fitPt, apart, down } = of;
  const besidePt = down === null ? 0 : textWidthPt(down, 8) + 10;
  const underPt = down === null ? 0 : dimensionPt;
  return {
    x: marginPt,
    y: marginPt,
    width: fitPt[0] - 2 * marginPt - besidePt - Math.abs(apart.x),
    height: fitPt[1] - 2 * marginPt - underPt - Math.abs(apart.y),
  };
};

/** What to measure after pressing, under the parts and beside them. */
export const checkSizes = (bounds: Box, [across, down]: readonly [across: string, down: string]): readonly string[] => {
  const under = bounds.y + bounds.height + marginPt + 1.5;
  const beside = bounds.x + bounds.width + marginPt + 2.5;
  return [
    dimension({ from: { x: bounds.x, y: under }, to: { x: bounds.x + bounds.width, y: under }, text: across }),
    dimension({ from: { x: beside, y: bounds.y }, to: { x: beside, y: bounds.y + bounds.height }, text: down }),
  ];
};

interface Slanted {
  readonly outlines: readonly Polygon[];
  /** Of the row's frame, clockwise. */
  readonly angle: Parameters<typeof turnedBy>[1];
}

/** How wide a row is that runs slantwise, at its right end. */
export const slantedSize = (of: Slanted & { readonly text: string }): string => {
  const [from, to] = rightEnd(of, marginPt + 2.5);
  return dimension({ from, to, text: of.text });
};

/** The edge beyond a row's right end, as wide as the row. */
export const rightEnd = ({ outlines, angle }: Slanted, gap = 0): readonly [Point, Point] => {
  const [right, down] = [turnedBy({ x: 1, y: 0 }, angle), turnedBy({ x: 0, y: 1 }, angle)];
  const points = outlines.flat();
  const places = (way: Point): readonly number[] => points.map(({ x, y }) => x * way.x + y * way.y);
  const beyond = Math.max(...places(right)) + gap;
  const across = places(down);
  const at = (u: number): Point => ({ x: right.x * beyond + down.x * u, y: right.y * beyond + down.y * u });
  return [at(Math.min(...across)), at(Math.max(...across))];
};

/** The outline stands clear of the cloth: a wide thread stroke, a narrower white one over it, the cloth on top. */
export const threadOutline = (outlines: readonly Polygon[]): string => {
  const d = pathOf(outlines);
  const stroke = (colour: string, width: number) =>
    element('path', { d, fill: colour, stroke: colour, 'stroke-width': width, 'stroke-linejoin': 'round' });
  return stroke(thread, 5.6) + stroke('#ffffff', 3);
};

/** A ring on each mark at which sewing stops, to be seen on any cloth. */
export const stopMarks = (points: Polygon): readonly string[] =>
  points.map(({ x, y }) =>
    element('circle', { cx: x, cy: y, r: 2.4, fill: '#ffffff', stroke: thread, 'stroke-width': 1 }),
  );

/** Places along a seam, as shares of it, in the order they are tried: off its middle first, where labels stand. */
const shares = [0.26, 0.74, 0.38, 0.62, 0.5] as const;
/** Between an arrow and the middle of a letter. */
const clearOfLettersPt = 6;

interface PressArrow {
  readonly pressTo: PlannedStep['pressTo'];
  /** Where the seam is crossed, at a share of it, and the way square to it into the second part there. */
  readonly crossing: (share: number) => Crossing;
  readonly apart: Point;
  readonly from: Point;
  /** The part that the allowances are pressed toward. */
  readonly into: readonly Polygon[];
  readonly letters: readonly Lettered[];
}

/** From the seam into the part that the allowances are pressed toward; both ways when pressed open. Where it covers no letter, else where it comes least near to one. */
export const pressArrow = (of: PressArrow): string => {
  const { pressTo } = of;
  if (isSpun(pressTo)) {
    const halves = [onSeam(of, 0.26).on, onSeam(of, 0.74).on] as const;
    return spunArrows({ halves, press: pressTo, reach: standOffPt / 2 + 4 }).join('');
  }
  const tried = shares.map((share) => {
    const ends = arrowAt(of, share);
    return { ends, clear: Math.min(clearOfLettersPt, ...of.letters.map((letter) => fromLine(letter, ends))) };
  });
  const most = Math.max(...tried.map(({ clear }) => clear));
  const [from, to] = (tried.find(({ clear }) => clear === most) as (typeof tried)[number]).ends;
  return arrow({ from, to, heads: pressTo === 'open' ? 'both' : 'one' });
};

/** Half-way between the edges of both parts as they lie apart. */
const onSeam = ({ crossing, from, apart }: PressArrow, share: number): { readonly on: Point; readonly away: Point } => {
  const { at, away } = crossing(share);
  return { on: { x: at.x + from.x + apart.x / 2, y: at.y + from.y + apart.y / 2 }, away };
};

const arrowAt = (of: PressArrow, share: number): readonly [from: Point, to: Point] => {
  const { on, away } = onSeam(of, share);
  const reach = standOffPt / 2 + 7;
  const out = (by: number) => ({ x: on.x + away.x * by, y: on.y + away.y * by });
  if (of.pressTo === 'open') return [out(-reach * 0.8), out(reach * 0.8)];
  const toward = of.pressTo === 1 ? 1 : -1;
  // the tip stays in the part, however narrow that is
  const far = Math.max(
    ...of.into.flatMap((outline) => outline.map(({ x, y }) => toward * ((x - on.x) * away.x + (y - on.y) * away.y))),
  );
  return [out(-toward * (standOffPt / 2 - 1)), out(toward * Math.min(reach, far))];
};

/** How far a point is from a line between two others. */
const fromLine = (p: Point, [from, to]: readonly [Point, Point]): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = ((p.x - from.x) * dx + (p.y - from.y) * dy) / (dx * dx + dy * dy);
  const nearest = Math.min(1, Math.max(0, share));
  return Math.hypot(p.x - from.x - dx * nearest, p.y - from.y - dy * nearest);
};
