// Binding on the bias from a square, in three pictures: the square cut corner to corner; its halves sewn to a slanted sheet;
// the lines drawn on it, and how its two straight-grain edges meet one line out of step.

import type { Polygon } from '#ground/plane';
import type { ClothSign } from '#paper/cloth';
import { ink, inkOn, lettering, patchEdgePt, softInk, thread } from './ink.ts';
import { pathOf } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, numberText, picture } from './svg.ts';

const sidePt = 84;
const betweenPt = 28;

/** @param of.side how the square's size is written under it */
export const drawBias = (of: { readonly sign: ClothSign; readonly side: string; readonly alt: string }): Drawing => {
  const { sign } = of;
  const s = sidePt;
  const square: Polygon = [
    { x: 1, y: 1 },
    { x: 1 + s, y: 1 },
    { x: 1 + s, y: 1 + s },
    { x: 1, y: 1 + s },
  ];
  // the upper right half is moved to the left of the other: two straight-grain edges of one length meet
  const left = 1 + s + betweenPt;
  const sheetOf = (x: number): Polygon => [
    { x, y: 1 },
    { x: x + s, y: 1 + s },
    { x: x + 2 * s, y: 1 + s },
    { x: x + s, y: 1 },
  ];
  const right = left + 2 * s + betweenPt;
  const lines = Array.from({ length: 5 }, (_, i) => {
    const along = ((i + 1) * s) / 6;
    return `M${numberText(right + along)} 1L${numberText(right + along + s)} ${numberText(1 + s)}`;
  }).join('');
  return picture({
    widthPt: right + 2 * s + 1,
    heightPt: s + 18,
    alt: of.alt,
    parts: [
      cloth([square], sign),
      element('path', { d: `M1 1L${numberText(1 + s)} ${numberText(1 + s)}`, ...cutLine }),
      ...[0.3, 0.7].map((x, i) =>
        lettering({
          text: String(i + 1),
          x: 1 + s * x,
          y: 1 + s * (1 - x),
          sizePt: 9,
          fill: inkOn(sign.colour),
          weight: 600,
        }),
      ),
      lettering({ text: of.side, x: 1 + s / 2, y: s + 11, sizePt: 8, fill: softInk }),
      cloth([sheetOf(left)], sign),
      element('path', {
        d: `M${numberText(left + s)} 1V${numberText(1 + s)}`,
        stroke: inkOn(sign.colour),
        'stroke-width': 0.9,
        'stroke-dasharray': '3 1.5',
        fill: 'none',
      }),
      ...[2, 1].map((half, i) =>
        lettering({
          text: String(half),
          x: left + s * (i === 0 ? 0.66 : 1.34),
          y: 1 + s * (i === 0 ? 0.3 : 0.7),
          sizePt: 9,
          fill: inkOn(sign.colour),
          weight: 600,
        }),
      ),
      lettering({ text: 'joined', x: left + s, y: s + 11, sizePt: 8, fill: softInk }),
      cloth([sheetOf(right)], sign),
      element('path', { d: lines, ...cutLine }),
      lettering({ text: 'lines along the bias edges', x: right + s, y: s + 11, sizePt: 8, fill: softInk }),
    ],
  });
};

const cutLine = { stroke: thread, 'stroke-width': 0.9, fill: 'none' } as const;

const cloth = (outlines: readonly Polygon[], sign: ClothSign): string =>
  element('path', { d: pathOf(outlines), fill: sign.colour, stroke: ink, 'stroke-width': patchEdgePt });
