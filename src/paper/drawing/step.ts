// One step as it lies on the board: the unit so far and the next part a little apart, with the thread
// outline, the press arrow across the seam, and the size to measure after pressing. Unit, next part, arrow and size are groups
// with a class each, so that a screen can move and light them.

import type { BlockPlan, PlannedStep } from '#craft';
import type { Point } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import type { Ruler } from '#paper/lengths';
import { checkLength } from '#paper/lengths';
import { drawLabels, labelsInside } from './label.ts';
import type { LaidPatch } from './patches.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { awayFrom, crossingOf, isTrimmed, patchAt, stopsOf } from './seam.ts';
import { fitted, framed } from './shape.ts';
import { boardRoom, checkSizes, pressArrow, standOff, stopMarks, threadOutline } from './step-marks.ts';
import { mostStepScale } from './step-scale.ts';
import type { Drawing } from './svg.ts';
import { group, picture } from './svg.ts';

export interface StepPicture {
  readonly block: BlockPlan;
  readonly step: PlannedStep;
  readonly signs: ClothSigns;
  readonly ruler: Ruler;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

export const drawStep = (of: StepPicture): Drawing => {
  const { block, step, signs, ruler } = of;
  const [across, down] = [checkLength(step.unfinished[0], ruler), checkLength(step.unfinished[1], ruler)];
  const away = awayFrom(block, step);
  const apart = standOff(away);
  const points = [...step.patches[0], ...step.patches[1]].flatMap((i) => patchAt(block, i).points);
  const into = boardRoom({ fitPt: of.fitPt, apart, down });
  const whole = Math.min(into.width / block.finished[0], into.height / block.finished[1]);
  const frame = fitted({ box: boxOf(points), into, most: mostStepScale(of, whole) });
  const shiftFirst = { x: Math.max(0, -apart.x), y: Math.max(0, -apart.y) };
  const first = laidAt(block, step.patches[0], frame, shiftFirst);
  const second = laidAt(block, step.patches[1], frame, { x: shiftFirst.x + apart.x, y: shiftFirst.y + apart.y });
  const laid = [...first, ...second];
  const [firstLabels, secondLabels] = [patchLabels(first, signs), patchLabels(second, signs)];
  const bounds = boxOf(laid.flatMap(({ outline }) => outline));
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      group({ class: 'step-unit' }, [
        ...drawPatches({ laid: first, signs, fill: 'colour' }),
        ...drawLabels({ labels: firstLabels, bounds, tooSmall: 'leave-out' }),
      ]),
      group({ class: 'step-next' }, [
        threadOutline(second.map(({ outline }) => outline)),
        ...drawPatches({ laid: second, signs, fill: 'colour' }),
        ...drawLabels({ labels: secondLabels, bounds, tooSmall: 'leave-out' }),
      ]),
      group({ class: 'step-press' }, [
        pressArrow({
          pressTo: step.pressTo,
          crossing: crossingOf(block, step, (p) => framed([p], frame)[0] ?? p),
          apart,
          from: shiftFirst,
          into: (step.pressTo === 1 ? second : first).map(({ outline }) => outline),
          letters: labelsInside([...firstLabels, ...secondLabels]),
        }),
      ]),
      group(
        { class: 'step-stops' },
        stopMarks(
          framed(stopsOf(step), {
            ...frame,
            x: frame.x + shiftFirst.x + apart.x / 2,
            y: frame.y + shiftFirst.y + apart.y / 2,
          }),
        ),
      ),
      group({ class: 'step-size' }, isTrimmed(step) ? checkSizes(bounds, [across, down]) : []),
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
