// A template: cut line, dashed seam line, grain arrow, label.

import type { Polygon } from '#ground/plane';
import { boxOf, centroid } from '#ground/plane';
import { arrow } from './arrow.ts';
import { cutEdgePt, ink, lettering, softInk } from './ink.ts';
import { type Lettered, labelsInside } from './label.ts';
import { framed, pathOf } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

const padPt = 4;

interface TemplatePicture {
  readonly template: { readonly points: Polygon; readonly seamLine: Polygon };
  readonly label: string;
  /** Points a unit; 72 for inches at true scale. */
  readonly scale: number;
  readonly alt: string;
}

export const drawTemplate = (of: TemplatePicture): Drawing => {
  const drawn = drawnTemplate(of);
  return picture({ ...drawn, parts: [...drawn.parts, ...drawn.labels.map(lettering)], alt: of.alt });
};

/** A template drawn from 0, 0, with the room that it takes. */
export const drawnTemplate = (
  of: TemplatePicture,
): {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly parts: readonly string[];
  readonly labels: readonly Lettered[];
  readonly cut: Polygon;
} => {
  const box = boxOf(of.template.points);
  const frame = { scale: of.scale, x: padPt - box.x * of.scale, y: padPt - box.y * of.scale };
  const cut = framed(of.template.points, frame);
  const seam = framed(of.template.seamLine, frame);
  const middle = centroid(seam);
  const reach = Math.min(16, (box.height * of.scale) / 6);
  return {
    widthPt: box.width * of.scale + 2 * padPt,
    heightPt: box.height * of.scale + 2 * padPt,
    cut,
    parts: [
      element('path', {
        d: pathOf([cut]),
        fill: '#ffffff',
        stroke: ink,
        'stroke-width': cutEdgePt,
        'stroke-linejoin': 'round',
      }),
      element('path', {
        d: pathOf([seam]),
        fill: 'none',
        stroke: softInk,
        'stroke-width': 0.6,
        'stroke-dasharray': '4 2',
      }),
      arrow({
        from: { x: middle.x + 9, y: middle.y + reach },
        to: { x: middle.x + 9, y: middle.y - reach },
        heads: 'both',
        colour: softInk,
      }),
    ],
    labels: labelsInside([{ text: of.label, outline: seam, fill: ink }]),
  };
};
