// The cloths of a quilt from light to dark, each as the grey of its own L*: what reads apart stands apart here.
import { lightnessOf } from '#craft/fabric';
import type { ClothSigns } from '#paper/cloth';
import { signsAs } from '#paper/cloth';
import { ink, inkOn, lettering, softInk } from './ink.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

const rungPt = { widest: 56, height: 30, figures: 12 } as const;
const mostAbreast = 16;

export const drawValueLadder = (of: {
  readonly signs: ClothSigns;
  readonly widthPt: number;
  readonly alt: string;
}): Drawing => {
  const greys = signsAs(of.signs, 'grey');
  const rungs = lightToDark(of.signs).map(({ fabric, lightness }) => ({ sign: greys.get(fabric), lightness }));
  const abreast = Math.min(mostAbreast, rungs.length);
  const width = Math.min(rungPt.widest, (of.widthPt - 1) / abreast);
  const rowPt = rungPt.height + rungPt.figures + 2;
  return picture({
    widthPt: abreast * width + 1,
    heightPt: Math.ceil(rungs.length / abreast) * rowPt,
    alt: of.alt,
    parts: rungs.flatMap(({ sign, lightness }, at) => {
      if (sign === undefined) return [];
      const x = 0.5 + (at % abreast) * width;
      const y = 0.5 + Math.floor(at / abreast) * rowPt;
      return [
        element('rect', { x, y, width, height: rungPt.height, fill: sign.colour, stroke: ink, 'stroke-width': 0.4 }),
        lettering({
          text: sign.letter,
          x: x + width / 2,
          y: y + rungPt.height / 2,
          sizePt: 9,
          weight: 600,
          fill: inkOn(sign.colour),
        }),
        lettering({
          text: String(Math.round(lightness)),
          x: x + width / 2,
          y: y + rungPt.height + rungPt.figures / 2,
          sizePt: 7.5,
          fill: softInk,
        }),
      ];
    }),
  });
};

/** Equal ones in the plan's order. */
export const lightToDark = (
  signs: ClothSigns,
): readonly { readonly fabric: string; readonly letter: string; readonly lightness: number }[] =>
  [...signs.values()]
    .map(({ fabric, letter, colour }) => ({ fabric, letter, lightness: lightnessOf(colour) }))
    .toSorted((a, b) => b.lightness - a.lightness);
