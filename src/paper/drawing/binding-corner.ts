// How the binding goes round a corner: sewn up to it, folded out over it at 45°, folded back along the next edge. Not to scale.

import type { Point } from '#ground/plane';
import type { ClothSign } from '#paper/cloth';
import { arrow } from './arrow.ts';
import { hush, ink, inkOn, lettering, patchEdgePt, softInk } from './ink.ts';
import { pathOf } from './shape.ts';
import { type Drawing, element, group, numberText, picture } from './svg.ts';

/** In points: one picture of the three with its white, the quilt's lower right corner, the folded binding, its allowance. */
const panel = { width: 148, height: 112 } as const;
const corner: Point = { x: 92, y: 82 };
const bindingPt = 26;
const seamPt = 8;
const edgePt = 8;

export const drawBindingCorner = (sign: ClothSign, alt: string): Drawing =>
  picture({
    widthPt: 3 * panel.width,
    heightPt: panel.height,
    alt,
    parts: [sewnToCorner, foldedOut, foldedBack].map((drawn, i) =>
      group({ transform: `translate(${numberText(i * panel.width)} 0)` }, [
        quilt,
        ...drawn(sign),
        lettering({ text: String(i + 1), x: corner.x + 16, y: edgePt + 6, sizePt: 9, weight: 600 }),
      ]),
    ),
  });

const quilt = element('rect', {
  x: edgePt,
  y: edgePt,
  width: corner.x - edgePt,
  height: corner.y - edgePt,
  fill: hush,
  stroke: softInk,
  'stroke-width': patchEdgePt,
});

const inner: Point = { x: corner.x - bindingPt, y: corner.y - bindingPt };
const seamX = corner.x - seamPt;
const seamY = corner.y - seamPt;

const sewnToCorner = (sign: ClothSign): readonly string[] => [
  strip(sign, [
    at(inner.x, edgePt),
    at(corner.x, edgePt),
    at(corner.x, panel.height - 4),
    at(inner.x, panel.height - 4),
  ]),
  seam(sign, at(seamX, edgePt), at(seamX, seamY)),
  element('circle', { cx: seamX, cy: seamY, r: 1.6, fill: inkOn(sign.colour) }),
];

const foldedOut = (sign: ClothSign): readonly string[] => [
  strip(sign, [at(inner.x, edgePt), at(corner.x, edgePt), corner, inner]),
  seam(sign, at(seamX, edgePt), at(seamX, seamY - seamPt)),
  strip(sign, [inner, at(panel.width - 12, inner.y), at(panel.width - 12, corner.y), corner]),
];

const foldedBack = (sign: ClothSign): readonly string[] => [
  strip(sign, [at(inner.x, edgePt), at(corner.x, edgePt), at(corner.x, inner.y), inner]),
  seam(sign, at(seamX, edgePt), at(seamX, inner.y)),
  strip(sign, [at(edgePt, inner.y), at(corner.x, inner.y), corner, at(edgePt, corner.y)]),
  seam(sign, at(corner.x, seamY), at(edgePt + 6, seamY)),
  arrow({ from: at(corner.x - 4, panel.height - 12), to: at(corner.x - 44, panel.height - 12), heads: 'one' }),
];

const at = (x: number, y: number): Point => ({ x, y });

const strip = (sign: ClothSign, points: readonly Point[]): string =>
  element('path', {
    d: pathOf([points]),
    fill: sign.colour,
    stroke: ink,
    'stroke-width': patchEdgePt,
    'stroke-linejoin': 'round',
  });

const seam = (sign: ClothSign, from: Point, to: Point): string =>
  element('path', {
    d: `M${numberText(from.x)} ${numberText(from.y)}L${numberText(to.x)} ${numberText(to.y)}`,
    stroke: inkOn(sign.colour),
    'stroke-width': 0.9,
    'stroke-dasharray': '3 1.5',
    fill: 'none',
  });
