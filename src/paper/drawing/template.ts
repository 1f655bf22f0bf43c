// A template: cut line, dashed seam line, matching marks, grain arrow, label.

import type { Template } from '#craft/cutting';
import type { Polygon } from '#ground/plane';
import { boxOf, centroid } from '#ground/plane';
import { arrow } from './arrow.ts';
import { cutEdgePt, ink, lettering, softInk } from './ink.ts';
import { type Lettered, labelsInside } from './label.ts';
import { framed, pathOf } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, numberText, picture } from './svg.ts';

const padPt = 4;

interface TemplatePicture {
  readonly template: Template;
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
      ...(of.template.marks ?? []).map(({ on, out }) => matchingMark(framed([on, out], frame))),
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

/** A line across the allowance, and a small triangle on the cut edge that may be snipped or drawn round. */
const matchingMark = ([on, out]: Polygon): string => {
  if (on === undefined || out === undefined) return '';
  const long = Math.hypot(out.x - on.x, out.y - on.y);
  const [ux, uy] = [(out.x - on.x) / long, (out.y - on.y) / long];
  const tip = Math.min(5, long / 2);
  const at = (along: number, aside: number): string =>
    `${numberText(out.x - ux * along - uy * aside)} ${numberText(out.y - uy * along + ux * aside)}`;
  return (
    element('path', {
      d: `M${numberText(on.x)} ${numberText(on.y)}L${numberText(out.x)} ${numberText(out.y)}`,
      stroke: ink,
      'stroke-width': 0.6,
    }) + element('path', { d: `M${at(0, tip * 0.6)}L${at(tip, 0)}L${at(0, -tip * 0.6)}Z`, fill: ink })
  );
};
