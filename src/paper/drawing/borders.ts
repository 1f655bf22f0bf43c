// The borders pulled away from the middle, numbered in the order in which they are sewn on.

import type { QuiltPlan } from '#craft';
import type { Unit } from '#craft/measure';
import { type Rect, thingsOf } from '#craft/setting';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { figureOnPaper, lengthOnPaper } from '#paper/lengths';
import { hush, ink, lettering, patchEdgePt, sheet, softInk } from './ink.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

const apartPt = 8;

export const drawBorders = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly unit: Unit;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}): Drawing => {
  const { set } = of.plan.top;
  const away = apartPt * set.borders.length;
  const scale = Math.min((of.fitPt[0] - 2 * away - 2) / set.width, (of.fitPt[1] - 2 * away - 2) / set.height);
  const inPicture = (rect: Rect, dx: number, dy: number): Rect => ({
    x: (rect.x * scale + away + 1 + dx) as Rect['x'],
    y: (rect.y * scale + away + 1 + dy) as Rect['y'],
    width: (rect.width * scale) as Rect['width'],
    height: (rect.height * scale) as Rect['height'],
  });
  const middle = inPicture(set.middle, 0, 0);
  const centre = { x: set.width / 2, y: set.height / 2 };
  let order = 0;
  const strips = set.borders.flatMap((border, ring) =>
    border.parts.map(({ assembly }) => {
      order++;
      const strips = thingsOf(assembly).flatMap((thing) => ('strip' in thing ? (set.strips[thing.strip] ?? []) : []));
      const strip = strips.find(({ role }) => role === 'border') ?? strips[0];
      if (strip === undefined) return '';
      const { rect } = strip;
      const isUpright = rect.height >= rect.width;
      const out = apartPt * (ring + 1);
      const before = isUpright ? rect.x + rect.width / 2 < centre.x : rect.y + rect.height / 2 < centre.y;
      const drawn = inPicture(rect, isUpright ? (before ? -out : out) : 0, isUpright ? 0 : before ? -out : out);
      const x = drawn.x + drawn.width / 2;
      const y = drawn.y + drawn.height / 2;
      return (
        element('rect', {
          ...drawn,
          fill: signOf(of.signs, strip.fabric).colour,
          stroke: ink,
          'stroke-width': patchEdgePt,
        }) +
        element('circle', { cx: x, cy: y, r: 6, fill: sheet, stroke: ink, 'stroke-width': 0.4 }) +
        lettering({ text: String(order), x, y, sizePt: 8, weight: 600 })
      );
    }),
  );
  return picture({
    widthPt: set.width * scale + 2 * away + 2,
    heightPt: set.height * scale + 2 * away + 2,
    alt: of.alt,
    parts: [
      element('rect', { ...middle, fill: hush, stroke: softInk, 'stroke-width': patchEdgePt }),
      lettering({
        text: `${figureOnPaper(set.middle.width, of.unit)} × ${lengthOnPaper(set.middle.height, of.unit)} finished`,
        x: middle.x + middle.width / 2,
        y: middle.y + middle.height / 2,
        sizePt: 9,
        fill: softInk,
      }),
      ...strips,
    ],
  });
};
