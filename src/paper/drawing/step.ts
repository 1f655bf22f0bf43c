// One step as it lies on the board: the unit so far and the next part a little apart, with the thread
// outline, the press arrow across the seam, and the size to measure after pressing.

import type { BlockPlan, PlannedStep } from '#craft';
import type { Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import type { Ruler } from '#paper/lengths';
import { checkLength } from '#paper/lengths';
import { arrow, dimension } from './arrow.ts';
import { textWidthPt, thread } from './ink.ts';
import { drawLabels, type Lettered, labelsInside } from './label.ts';
import type { LaidPatch } from './patches.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { awayFrom, awayFromLeg, firstLeg, patchAt } from './seam.ts';
import { fitted, framed, pathOf } from './shape.ts';
import { mostStepScale } from './step-scale.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

export interface StepPicture {
  readonly block: BlockPlan;
  readonly step: PlannedStep;
  readonly signs: ClothSigns;
  readonly ruler: Ruler;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

/** How far the next part stands off, in points. */
const standOffPt = 11;
const marginPt = 4;
const dimensionPt = 13;

export const drawStep = (of: StepPicture): Drawing => {
  const { block, step, signs, ruler } = of;
  const across = checkLength(step.unfinished[0], ruler);
  const down = checkLength(step.unfinished[1], ruler);
  const besidePt = textWidthPt(down, 8) + 10;
  const away = awayFrom(block, step);
  const apart = standOff(away);
  const points = [...step.patches[0], ...step.patches[1]].flatMap((i) => patchAt(block, i).points);
  const into = {
    x: marginPt,
    y: marginPt,
    width: of.fitPt[0] - 2 * marginPt - besidePt - Math.abs(apart.x),
    height: of.fitPt[1] - 2 * marginPt - dimensionPt - Math.abs(apart.y),
  };
  const whole = Math.min(into.width / block.finished[0], into.height / block.finished[1]);
  const frame = fitted({ box: boxOf(points), into, most: mostStepScale(of, whole) });
  const shiftFirst = { x: Math.max(0, -apart.x), y: Math.max(0, -apart.y) };
  const first = laidAt(block, step.patches[0], frame, shiftFirst);
  const second = laidAt(block, step.patches[1], frame, { x: shiftFirst.x + apart.x, y: shiftFirst.y + apart.y });
  const laid = [...first, ...second];
  const bounds = boxOf(laid.flatMap(({ outline }) => outline));
  const under = bounds.y + bounds.height + marginPt + 1.5;
  const beside = bounds.x + bounds.width + marginPt + 2.5;
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      ...drawPatches({ laid: first, signs, fill: 'colour' }),
      threadOutline(second),
      ...drawPatches({ laid: second, signs, fill: 'colour' }),
      ...drawLabels({ labels: patchLabels(laid, signs), bounds, tooSmall: 'leave-out' }),
      pressArrow({
        step,
        seam: framed(step.line, frame),
        away: awayFromLeg(block, step),
        apart,
        from: shiftFirst,
        into: step.pressTo === 1 ? second : first,
        letters: labelsInside(patchLabels(laid, signs)),
      }),
      dimension({ from: { x: bounds.x, y: under }, to: { x: bounds.x + bounds.width, y: under }, text: across }),
      dimension({ from: { x: beside, y: bounds.y }, to: { x: beside, y: bounds.y + bounds.height }, text: down }),
    ],
  });
};

const laidAt = (
  block: BlockPlan,
  indexes: readonly number[],
  frame: { readonly scale: number; readonly x: number; readonly y: number },
  shift: Point,
): readonly LaidPatch[] =>
  indexes.map((index) => {
    const patch = patchAt(block, index);
    return { patch, outline: framed(patch.points, { ...frame, x: frame.x + shift.x, y: frame.y + shift.y }) };
  });

const standOff = (away: Point): Point => ({
  x: Math.abs(away.x) < 1e-9 ? 0 : away.x * standOffPt,
  y: Math.abs(away.y) < 1e-9 ? 0 : away.y * standOffPt,
});

/** The outline stands clear of the cloth: a wide thread stroke, a narrower white one over it, the cloth on top. */
const threadOutline = (laid: readonly LaidPatch[]): string => {
  const d = pathOf(laid.map(({ outline }) => outline));
  const stroke = (colour: string, width: number) =>
    element('path', { d, fill: colour, stroke: colour, 'stroke-width': width, 'stroke-linejoin': 'round' });
  return stroke(thread, 5.6) + stroke('#ffffff', 3);
};

/** Places along a seam, as shares of it, in the order they are tried: off its middle first, where labels stand. */
const shares = [0.26, 0.74, 0.38, 0.62, 0.5] as const;
/** Between an arrow and the middle of a letter. */
const clearOfLettersPt = 6;

interface PressArrow {
  readonly step: PlannedStep;
  readonly seam: Polygon;
  readonly away: Point;
  readonly apart: Point;
  readonly from: Point;
  /** The part that the allowances are pressed toward. */
  readonly into: readonly LaidPatch[];
  readonly letters: readonly Lettered[];
}

/** From the seam into the part that the allowances are pressed toward; both ways when pressed open. Where it covers no letter, else where it comes least near to one. */
const pressArrow = (of: PressArrow): string => {
  const tried = shares.map((share) => {
    const ends = arrowAt(of, share);
    return { ends, clear: Math.min(clearOfLettersPt, ...of.letters.map((letter) => fromLine(letter, ends))) };
  });
  const most = Math.max(...tried.map(({ clear }) => clear));
  const [from, to] = (tried.find(({ clear }) => clear === most) as (typeof tried)[number]).ends;
  return arrow({ from, to, heads: of.step.pressTo === 'open' ? 'both' : 'one' });
};

const arrowAt = (of: PressArrow, share: number): readonly [from: Point, to: Point] => {
  const [a, b] = firstLeg(of.seam);
  const on = {
    x: a.x + (b.x - a.x) * share + of.from.x + of.apart.x / 2,
    y: a.y + (b.y - a.y) * share + of.from.y + of.apart.y / 2,
  };
  const reach = standOffPt / 2 + 7;
  const out = (by: number) => ({ x: on.x + of.away.x * by, y: on.y + of.away.y * by });
  if (of.step.pressTo === 'open') return [out(-reach * 0.8), out(reach * 0.8)];
  const toward = of.step.pressTo === 1 ? 1 : -1;
  // the tip stays in the part, however narrow that is
  const far = Math.max(
    ...of.into.flatMap(({ outline }) =>
      outline.map(({ x, y }) => toward * ((x - on.x) * of.away.x + (y - on.y) * of.away.y)),
    ),
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
