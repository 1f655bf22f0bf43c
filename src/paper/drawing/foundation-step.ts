// A step on a foundation, as one sees it at the machine: the printed side up and so in mirror image, the line to sew dashed, what lies
// under the sheet already and what goes on next told apart, every patch with its number.
import { at, boxOf, grown, hullOf, type Point, type Polygon } from '#ground/plane';
import { signOf } from '#paper/cloth';
import { hairlinePt, ink, paler, patchEdgePt, softInk } from './ink.ts';
import { drawLabels } from './label.ts';
import { sewnLine } from './machine-lines.ts';
import { wrongShare, wrongSide, wrongSideUp } from './machine-marks.ts';
import { patchAt } from './seam.ts';
import { fitted, framed, pathOf } from './shape.ts';
import type { StepPicture } from './step.ts';
import type { Drawing } from './svg.ts';
import { element, group, picture } from './svg.ts';

const edgePt = 6;
/** Sewn past both ends of the line. */
const pastPt = 6;

/** @param of.seam the allowance, in the document's unit; `of.order` and `of.laid` of the step's sheet */
export const drawFoundationStep = (
  of: StepPicture & { readonly seam: number; readonly order: readonly number[]; readonly laid: number },
): Drawing => {
  const { block, step, signs, order, laid } = of;
  const mirrored = (points: Polygon): Polygon => points.map(({ x, y }) => at(-x, y)).toReversed();
  const sheet = order.map((patch) => mirrored(patchAt(block, patch).points));
  const edge = grown(hullOf(sheet.flat(), 1e-6), of.seam);
  const frame = fitted({
    box: boxOf(edge),
    into: { x: edgePt, y: edgePt, width: of.fitPt[0] - 2 * edgePt, height: of.fitPt[1] - 2 * edgePt },
  });
  const lines = sheet.map((outline) => framed(outline, frame));
  const [from, to] = framed(mirrored([step.line[0] as Point, step.line.at(-1) as Point]), frame) as [Point, Point];
  const colourOf = (place: number): string => signOf(signs, patchAt(block, order[place] as number).fabric).colour;
  const plain = (outline: Polygon, fill: string): string =>
    element('path', {
      d: pathOf([outline]),
      fill,
      stroke: softInk,
      'stroke-width': hairlinePt,
      'stroke-linejoin': 'round',
    });
  const next = laid - 1;
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      wrongSide,
      element('path', {
        d: pathOf([framed(edge, frame)]),
        fill: '#ffffff',
        stroke: softInk,
        'stroke-width': patchEdgePt,
        'stroke-dasharray': '4 2',
      }),
      group(
        { class: 'step-unit' },
        lines.map((outline, place) =>
          place === next ? '' : plain(outline, place < next ? paler(colourOf(place), wrongShare) : 'none'),
        ),
      ),
      group({ class: 'step-next' }, [wrongSideUp([lines[next] as Polygon], colourOf(next))]),
      ...drawLabels({
        labels: lines.map((outline, place) => ({ text: String(place + 1), outline, fill: ink })),
        bounds: boxOf(lines.flat()),
        tooSmall: 'leave-out',
      }),
      group({ class: 'step-seam' }, [sewnAlong(from, to)]),
    ],
  });
};

const sewnAlong = (from: Point, to: Point): string => {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [((to.x - from.x) * pastPt) / long, ((to.y - from.y) * pastPt) / long];
  return sewnLine([at(from.x - dx, from.y - dy), at(to.x + dx, to.y + dy)]);
};
