// The same step as it lies at the machine: the unit turned so that the new seam (of a set-in seam the first leg) is at the
// right hand, the next part on top wrong side up, right edges together, the seam line dashed.

import type { Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import { signOf } from '#paper/cloth';
import { drawCurvedMachine } from './curved-machine.ts';
import { drawFoundationStep } from './foundation-step.ts';
import { ink } from './ink.ts';
import { drawLabels } from './label.ts';
import {
  allowance,
  machineFrame,
  machineRoom,
  seamLine,
  turnedToMachine,
  turnMark,
  wrongSide,
  wrongSideUp,
} from './machine-marks.ts';
import { drawMadeStage } from './made-stage.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { awayFromLeg, firstLeg, openEnd, patchAt, sewnOf, stopsOf } from './seam.ts';
import { framed, leftOf } from './shape.ts';
import type { StepPicture } from './step.ts';
import { stopMarks } from './step-marks.ts';
import { mostStepScale } from './step-scale.ts';
import type { Drawing } from './svg.ts';
import { group, picture } from './svg.ts';

/** @param of.seam the allowance, in the document's unit */
export const drawMachine = (of: StepPicture & { readonly seam: number }): Drawing =>
  of.step.kind === 'curved' ? drawCurvedMachine(of) : drawStraightMachine(of);

const drawStraightMachine = (of: StepPicture & { readonly seam: number }): Drawing => {
  const { block, step, signs } = of;
  const made = step.made ? drawMadeStage({ ...of, made: step.made }) : null;
  if (made !== null) return made;
  if (step.onPaper) return drawFoundationStep({ ...of, ...step.onPaper });
  const away = awayFromLeg(block, step);
  const [start] = firstLeg(step.line);
  const { turned, folded } = turnedToMachine(start, away);
  // of a seam that goes round corners the first leg alone lies at the right hand
  const isOnLeg = (p: Point): boolean => Math.abs(turned(p).x) < 1e-6 * Math.max(...block.finished);
  const first = step.patches[0].map((i) => patchAt(block, i));
  const second = step.patches[1].map((i) => patchAt(block, i));
  const unitShapes = first.map((patch) => patch.points.map(turned));
  const topShapes = second.map((patch) => patch.points.map(folded));
  const seamShape = firstLeg(step.line).map(turned);
  const room = machineRoom(of.fitPt);
  const frame = machineFrame({
    box: boxOf([...unitShapes.flat(), ...topShapes.flat()]),
    seam: of.seam,
    room,
    most: mostStepScale(of, room.width / Math.max(...block.finished)),
  });
  const unit = first.map((patch, i) => ({ patch, outline: framed(unitShapes[i] ?? [], frame) }));
  const top = topShapes.map((shape) => framed(shape, frame));
  const seam = framed(seamShape, frame);
  const signsOnTop = second.map((patch) => signOf(signs, patch.fabric));
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      wrongSide,
      group({ class: 'step-unit' }, [
        ...drawPatches({ laid: unit, signs, fill: 'colour' }),
        allowance(seam, of.seam * frame.scale, signsOnTop[0]?.colour),
        ...drawLabels({
          labels: patchLabels(unit, signs)
            .map((label) => ({ ...label, outline: uncovered(label.outline, top) }))
            .filter(({ outline }) => outline.length > 0),
          bounds: boxOf(seam),
          tooSmall: 'leave-out',
        }),
      ]),
      group({ class: 'step-next' }, [
        ...top.map((outline, i) => wrongSideUp([outline], signsOnTop[i]?.colour)),
        ...drawLabels({
          labels: second.map((patch, i) => ({ text: patch.piece, outline: top[i] ?? [], fill: ink })),
          bounds: boxOf(seam),
          tooSmall: 'leave-out',
        }),
      ]),
      group({ class: 'step-seam' }, [seamLine(framed(sewnOf(block, step).map(turned), frame))]),
      group(
        { class: 'step-stops' },
        stopMarks(framed([...stopsOf(step).filter(isOnLeg), ...openEnd(block, step)].map(turned), frame)),
      ),
      group({ class: 'step-turn' }, [turnMark(step, of.fitPt[0] / 2)]),
    ],
  });
};

/** What of a patch lies left of the part on top, where this lies on it: room for its label. Nothing, where all is covered. */
const uncovered = (outline: Polygon, by: readonly Polygon[]): Polygon => {
  const box = boxOf(outline);
  const covers = boxOf(by.flat());
  const isUnder =
    box.x + box.width > covers.x + 0.5 && box.y < covers.y + covers.height - 0.5 && box.y + box.height > covers.y + 0.5;
  return isUnder ? leftOf(covers.x, outline) : outline;
};
