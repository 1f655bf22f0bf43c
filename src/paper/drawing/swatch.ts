// A swatch of a cloth: its colour, its hatch, its letter.
import type { ClothSign } from '#paper/cloth';
import { hatchDefinitions, hatchId } from './hatching.ts';
import { ink, lettering, sheet, textWidthPt } from './ink.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

export const drawSwatch = (of: {
  readonly sign: ClothSign;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}): Drawing => {
  const { sign } = of;
  const [widthPt, heightPt] = of.fitPt;
  const box = { x: 0.5, y: 0.5, width: widthPt - 1, height: heightPt - 1 };
  const sizePt = 8.5;
  const chip = textWidthPt(sign.letter, sizePt) + 5;
  return picture({
    widthPt,
    heightPt,
    alt: of.alt,
    parts: [
      hatchDefinitions([sign]),
      element('rect', { ...box, fill: sign.colour }),
      element('rect', { ...box, fill: `url(#${hatchId(sign)})`, stroke: ink, 'stroke-width': 0.5 }),
      element('rect', {
        x: (widthPt - chip) / 2,
        y: heightPt / 2 - 5,
        width: chip,
        height: 10,
        rx: 2,
        fill: sheet,
        stroke: ink,
        'stroke-width': 0.3,
      }),
      lettering({ text: sign.letter, x: widthPt / 2, y: heightPt / 2, sizePt, weight: 600 }),
    ],
  });
};
