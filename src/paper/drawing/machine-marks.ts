// What lies at the machine, whatever the parts are: the unit turned until the new seam is at the right hand, the part on top wrong side up, the
// allowance, the line of sewing, and how far the unit was turned.

import type { Side } from '#craft/design';
import type { Box, Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import { hairlinePt, ink, lettering, paler, patchEdgePt, softInk } from './ink.ts';
import { stitches } from './machine-lines.ts';
import { type Frame, pathOf } from './shape.ts';
import { element, numberText } from './svg.ts';

/** Turned so that `away` points right, and the seam is the upright line x = 0; what goes on top is folded over that line. */
export const turnedToMachine = (
  start: Point,
  away: Point,
): { readonly turned: (p: Point) => Point; readonly folded: (p: Point) => Point } => {
  const turned = (p: Point): Point => ({
    x: (p.x - start.x) * away.x + (p.y - start.y) * away.y,
    y: -(p.x - start.x) * away.y + (p.y - start.y) * away.x,
  });
  return { turned, folded: (p) => ({ x: -turned(p).x, y: turned(p).y }) };
};

const edgePt = 6;
const turnRoomPt = 16;

/** Below the mark of the turn. */
export const machineRoom = ([width, height]: readonly [width: number, height: number]): Box => ({
  x: edgePt,
  y: edgePt + turnRoomPt,
  width: width - 2 * edgePt,
  height: height - 2 * edgePt - turnRoomPt,
});

/** In the middle of the room, with the allowance at the right and beyond both ends of the seam. */
export const machineFrame = (of: {
  readonly box: Box;
  /** The allowance, in the document's unit. */
  readonly seam: number;
  readonly room: Box;
  readonly most: number;
}): Frame => {
  const { box, seam, room, most } = of;
  const [width, height] = [box.width + seam, box.height + 2 * seam];
  const scale = Math.min(room.width / width, room.height / height, most);
  return {
    scale,
    x: room.x + (room.width - width * scale) / 2 - box.x * scale,
    y: room.y + (room.height - height * scale) / 2 - (box.y - seam) * scale,
  };
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

/** Of an upright seam, run past both ends. */
export const seamLine = (seam: Polygon): string => {
  const box = boxOf(seam);
  return stitches(`M${numberText(box.x)} ${numberText(box.y - 3)}V${numberText(box.y + box.height + 3)}`);
};

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
