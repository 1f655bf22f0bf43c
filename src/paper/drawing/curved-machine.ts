// A curved seam as it lies at the machine: the rounded part below, the hollow one on top wrong side up, their middles on each
// other. They touch there alone until the ends are brought together: both edges are shown as they lie, and what meets what.
import type { Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import { signOf } from '#paper/cloth';
import { hairlinePt, ink, paler, softInk } from './ink.ts';
import { clearOf, drawLabels, labelsInside } from './label.ts';
import { sewnLine } from './machine-lines.ts';
import { turnMark, wrongSide, wrongSideUp } from './machine-marks.ts';
import { machineParts } from './machine-parts.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { awayFrom, crossingOf } from './seam.ts';
import { framed, leftOf, lineOf, pathOf } from './shape.ts';
import type { StepPicture } from './step.ts';
import { stopMarks } from './step-marks.ts';
import type { Drawing } from './svg.ts';
import { element, group, picture } from './svg.ts';

/** @param of.seam the allowance, in the document's unit */
export const drawCurvedMachine = (of: StepPicture & { readonly seam: number }): Drawing => {
  const { block, step, signs, seam } = of;
  const middle = crossingOf(block, step, (p) => p)(0.5).at;
  const { turned, folded, frame, unit, top } = machineParts(of, { start: middle, away: awayFrom(block, step) });
  const [line, edge] = [framed(step.line.map(turned), frame), framed(step.line.map(folded), frame)];
  const mark = framed([turned(middle)], frame)[0] as Point;
  const topColours = top.map(({ patch }) => signOf(signs, patch.fabric).colour);
  const labelsOnTop = top
    .map(({ patch, outline }) => ({ text: patch.piece, outline: leftOf(mark.x - clearPt, outline), fill: ink }))
    .filter(({ outline }) => outline.length > 0);
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      wrongSide,
      group({ class: 'step-unit' }, [
        allowanceBand(line, seam * frame.scale, topColours[0]),
        ...drawPatches({ laid: unit, signs, fill: 'colour' }),
        ...drawLabels({
          labels: clearOf(patchLabels(unit, signs), labelsInside(labelsOnTop)),
          bounds: boxOf(line),
          tooSmall: 'leave-out',
        }),
      ]),
      group({ class: 'step-next' }, [
        ...top.map(({ outline }, i) => wrongSideUp([outline], topColours[i])),
        ...drawLabels({
          labels: labelsOnTop,
          bounds: boxOf(line),
          tooSmall: 'leave-out',
        }),
      ]),
      group({ class: 'step-seam' }, [sewnLine(line), ...[0, -1].map((end) => meeting(edge.at(end), line.at(end)))]),
      group({ class: 'step-stops' }, stopMarks([mark])),
      group({ class: 'step-turn' }, [turnMark(step, of.fitPt[0] / 2)]),
    ],
  });
};

/** How near to the mark of the middle no letter stands, in points. */
const clearPt = 5;

/** Right of the seam line, out to the raw edge of the part below. */
const allowanceBand = (line: Polygon, width: number, colour = '#ffffff'): string => {
  const runsDown = (line.at(-1) as Point).y > (line[0] as Point).y ? 1 : -1;
  const raw = line.map((p, i) => {
    const [before, after] = [line[i - 1] ?? p, line[i + 1] ?? p];
    const long = Math.hypot(after.x - before.x, after.y - before.y);
    const out = { x: ((after.y - before.y) / long) * runsDown, y: (-(after.x - before.x) / long) * runsDown };
    return { x: p.x + out.x * width, y: p.y + out.y * width };
  });
  return element('path', {
    d: pathOf([[...line, ...raw.toReversed()]]),
    fill: paler(colour, 0.16),
    stroke: softInk,
    'stroke-width': hairlinePt,
  });
};

/** From an end of the hollow edge to the end of the rounded one that it is brought to. */
const meeting = (from: Point | undefined, to: Point | undefined): string => {
  if (from === undefined || to === undefined) return '';
  return (
    element('path', {
      d: lineOf([from, to]),
      stroke: softInk,
      'stroke-width': 0.7,
      'stroke-dasharray': '1 1.5',
      fill: 'none',
    }) + stopMarks([from, to]).join('')
  );
};
