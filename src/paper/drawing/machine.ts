// The same step as it lies at the machine: the unit turned so that the new seam (of a set-in seam the first leg) is at the
// right hand, the next part on top wrong side up, right edges together, the seam line dashed.

import type { Side } from '#craft/design';
import type { Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import { signOf } from '#paper/cloth';
import { hairlinePt, ink, lettering, paler, patchEdgePt, softInk } from './ink.ts';
import { drawLabels } from './label.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { awayFromLeg, firstLeg, patchAt, sewnOf, stopsOf } from './seam.ts';
import { framed, pathOf } from './shape.ts';
import type { StepPicture } from './step.ts';
import { stopMarks } from './step-marks.ts';
import { mostStepScale } from './step-scale.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';

const edgePt = 6;
const turnRoomPt = 16;

/** @param of.seam the allowance, in the document's unit */
export const drawMachine = (of: StepPicture & { readonly seam: number }): Drawing => {
  const { block, step, signs } = of;
  const away = awayFromLeg(block, step);
  const [start] = firstLeg(step.line);
  // turned so that `away` points right; the seam becomes the upright line x = 0
  const turned = (p: Point): Point => ({
    x: (p.x - start.x) * away.x + (p.y - start.y) * away.y,
    y: -(p.x - start.x) * away.y + (p.y - start.y) * away.x,
  });
  const folded = (p: Point): Point => ({ x: -turned(p).x, y: turned(p).y });
  // of a seam that goes round corners the first leg alone lies at the right hand
  const isOnLeg = (p: Point): boolean => Math.abs(turned(p).x) < 1e-6 * Math.max(...block.finished);
  const first = step.patches[0].map((i) => patchAt(block, i));
  const second = step.patches[1].map((i) => patchAt(block, i));
  const unitShapes = first.map((patch) => patch.points.map(turned));
  const topShapes = second.map((patch) => patch.points.map(folded));
  const seamShape = firstLeg(step.line).map(turned);
  const box = boxOf([...unitShapes.flat(), ...topShapes.flat()]);
  const roomX = of.fitPt[0] - 2 * edgePt;
  const roomY = of.fitPt[1] - 2 * edgePt - turnRoomPt;
  const scale = Math.min(
    roomX / (box.width + of.seam),
    roomY / (box.height + 2 * of.seam),
    mostStepScale(of, roomX / Math.max(...block.finished)),
  );
  const frame = {
    scale,
    x: edgePt + (roomX - (box.width + of.seam) * scale) / 2 - box.x * scale,
    y: turnRoomPt + edgePt + of.seam * scale - box.y * scale + (roomY - (box.height + 2 * of.seam) * scale) / 2,
  };
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
        allowance(seam, of.seam * scale, signsOnTop[0]?.colour),
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
      group({ class: 'step-stops' }, stopMarks(framed(stopsOf(step).filter(isOnLeg).map(turned), frame))),
      group({ class: 'step-turn' }, [turnMark(step, edgePt + roomX / 2)]),
    ],
  });
};

const wrongSideId = 'wrong-side';
export const wrongSide = element(
  'defs',
  {},
  element(
    'pattern',
    { id: wrongSideId, patternUnits: 'userSpaceOnUse', width: 5, height: 5, patternTransform: 'rotate(135)' },
    element('path', { d: 'M0 2.5H5', stroke: softInk, 'stroke-width': 0.35, 'stroke-opacity': 0.5, fill: 'none' }),
  ),
);

/** @param colour null where the cloths lie drawn already */
export const wrongSideUp = (outlines: readonly Polygon[], colour: string | null = '#ffffff'): string => {
  const d = pathOf(outlines);
  const cloth = element('path', {
    d,
    fill: colour === null ? 'none' : paler(colour, wrongShare),
    stroke: ink,
    'stroke-width': patchEdgePt,
    'stroke-linejoin': 'round',
  });
  return cloth + element('path', { d, fill: `url(#${wrongSideId})` });
};

/** Of a cloth's colour on its wrong side; the rest is white. */
export const wrongShare = 0.3;

/** The band right of the seam line, out to the raw edges. */
export const allowance = (seam: Polygon, width: number, colour = '#ffffff'): string => {
  const box = boxOf(seam);
  return element('rect', {
    x: box.x,
    y: box.y - width,
    width,
    height: box.height + 2 * width,
    fill: paler(colour, 0.16),
    stroke: softInk,
    'stroke-width': hairlinePt,
  });
};

/** Dashes on white, or they would be lost on the edge of the patch that lies under them. */
export const seamLine = (seam: Polygon): string => {
  const box = boxOf(seam);
  const d = `M${numberText(box.x)} ${numberText(box.y - 3)}V${numberText(box.y + box.height + 3)}`;
  return (
    element('path', { d, stroke: '#ffffff', 'stroke-width': 1.3, fill: 'none' }) +
    element('path', { d, stroke: ink, 'stroke-width': 0.9, 'stroke-dasharray': '3 1.5', fill: 'none' })
  );
};

/** What of a patch lies left of the part on top, where this lies on it: room for its label. Nothing, where all is covered. */
const uncovered = (outline: Polygon, by: readonly Polygon[]): Polygon => {
  const box = boxOf(outline);
  const covers = boxOf(by.flat());
  const isUnder =
    box.x + box.width > covers.x + 0.5 && box.y < covers.y + covers.height - 0.5 && box.y + box.height > covers.y + 0.5;
  return isUnder ? leftOf(covers.x, outline) : outline;
};

const leftOf = (edge: number, outline: Polygon): Polygon =>
  outline.flatMap((to, i): Polygon => {
    const from = outline.at(i - 1) as Point;
    const crosses = from.x <= edge !== to.x <= edge;
    const crossing = () => ({ x: edge, y: from.y + ((edge - from.x) / (to.x - from.x)) * (to.y - from.y) });
    return [...(crosses ? [crossing()] : []), ...(to.x <= edge ? [to] : [])];
  });

const turnTexts: ReadonlyMap<number, string> = new Map([
  [45, '⅛ turn'],
  [90, '¼ turn'],
  [135, '⅜ turn'],
  [180, '½ turn'],
  [225, '⅜ turn'],
  [270, '¼ turn'],
  [315, '⅛ turn'],
]);

interface Turned {
  readonly join: readonly [string, string];
  readonly side: Side;
  readonly machineTurn: number;
}

/** A single square looks the same from every side, so it is laid as it is taken up, whatever side the next piece goes to. */
export const isAnyEdge = ({ join, side, machineTurn }: Turned): boolean =>
  machineTurn === 0 && side !== 'right' && !join[0].startsWith('#');

/** A small arc with its head, and how far; more than half a turn clockwise is drawn as less the other way. */
export const turnMark = (step: Turned, middle: number): string => {
  const { machineTurn: turn } = step;
  const y = 7;
  if (turn === 0) {
    const text = isAnyEdge(step) ? 'any edge' : 'no turn';
    return lettering({ text, x: middle, y, sizePt: 7, fill: softInk });
  }
  const x = middle - 14;
  const arc =
    element('path', {
      d: `M${numberText(x - 4.2)} ${numberText(y + 1)}A4.3 4.3 0 1 1 ${numberText(x + 3)} ${numberText(y + 3.2)}`,
      stroke: softInk,
      'stroke-width': 0.9,
      fill: 'none',
    }) +
    element('path', {
      d: `M${numberText(x + 0.4)} ${numberText(y + 5.2)}L${numberText(x + 5)} ${numberText(y + 4.6)}L${numberText(x + 2)} ${numberText(y + 0.9)}Z`,
      fill: softInk,
    });
  const mirrored = `translate(${numberText(2 * x)} 0) scale(-1 1)`;
  return (
    (turn > 180 ? element('g', { transform: mirrored }, arc) : arc) +
    lettering({ text: turnTexts.get(turn) ?? 'turn', x: x + 9, y, sizePt: 7, fill: softInk, anchor: 'start' })
  );
};
