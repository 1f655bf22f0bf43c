// The same step as it lies at the machine: the unit turned so that the new seam (of a set-in seam the first leg) is at the
// right hand, the next part on top wrong side up, right edges together, the seam line dashed.

import type { Box, Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import { signOf } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { drawCurvedMachine } from './curved-machine.ts';
import { drawFoundationStep } from './foundation-step.ts';
import { ink } from './ink.ts';
import { drawLabels } from './label.ts';
import { allowance, seamLine, turnMark, wrongSide, wrongSideUp } from './machine-marks.ts';
import { machineParts } from './machine-parts.ts';
import { drawMadeStage } from './made-stage.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { awayFromLeg, firstLeg, openEnd, sewnOf, stopsOf } from './seam.ts';
import { framed, leftOf } from './shape.ts';
import type { StepPicture } from './step.ts';
import { stopMarks } from './step-marks.ts';
import type { Drawing } from './svg.ts';
import { group, picture } from './svg.ts';

/**
 * A machine is the same for either hand; what is cut apart there is drawn for the one that cuts.
 *
 * @param of.seam the allowance, in the document's unit
 */
export const drawMachine = (of: StepPicture & { readonly seam: number; readonly hand: Hand }): Drawing => {
  const { kind, made, onPaper } = of.step;
  if (kind === 'curved') return drawCurvedMachine(of);
  if (onPaper) return drawFoundationStep({ ...of, ...onPaper });
  return (made && drawMadeStage({ ...of, made })) ?? drawStraightMachine(of);
};

const drawStraightMachine = (of: StepPicture & { readonly seam: number }): Drawing => {
  const { block, step, signs } = of;
  const [start] = firstLeg(step.line);
  const { turned, frame, unit, top } = machineParts(of, { start, away: awayFromLeg(block, step) });
  // of a seam that goes round corners the first leg alone lies at the right hand
  const isOnLeg = (p: Point): boolean => Math.abs(turned(p).x) < 1e-6 * Math.max(...block.finished);
  const seam = framed(firstLeg(step.line).map(turned), frame);
  const covers = boxOf(top.flatMap(({ outline }) => outline));
  const signsOnTop = top.map(({ patch }) => signOf(signs, patch.fabric));
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
            .map((label) => ({ ...label, outline: uncovered(label.outline, covers) }))
            .filter(({ outline }) => outline.length > 0),
          bounds: boxOf(seam),
          tooSmall: 'leave-out',
        }),
      ]),
      group({ class: 'step-next' }, [
        ...top.map(({ outline }, i) => wrongSideUp([outline], signsOnTop[i]?.colour)),
        ...drawLabels({
          labels: top.map(({ patch, outline }) => ({ text: patch.piece, outline, fill: ink })),
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
const uncovered = (outline: Polygon, covers: Box): Polygon => {
  const box = boxOf(outline);
  const isUnder =
    box.x + box.width > covers.x + 0.5 && box.y < covers.y + covers.height - 0.5 && box.y + box.height > covers.y + 0.5;
  return isUnder ? leftOf(covers.x, outline) : outline;
};
