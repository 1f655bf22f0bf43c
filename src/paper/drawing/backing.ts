// The backing seen from its right side: its panels with their seams, each with its cut size, and the top as it will lie on it.
import type { FinishPlan, QuiltPlan } from '#craft';
import type { ClothSign } from '#paper/cloth';
import { checkSize } from '#paper/lengths';
import { inkOn, lettering, patchEdgePt, textWidthPt } from './ink.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

export const drawBacking = (of: {
  readonly plan: QuiltPlan;
  readonly backing: NonNullable<FinishPlan['backing']>;
  readonly sign: ClothSign;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}): Drawing => {
  const { backing, sign } = of;
  const { set } = of.plan.top;
  const scale = Math.min((of.fitPt[0] - 2) / backing.width, (of.fitPt[1] - 2) / backing.height);
  const [widthPt, heightPt] = [backing.width * scale, backing.height * scale];
  const isUpright = backing.run === 'upright';
  const across = backing.cuts.map(([wide]) => wide);
  const all = across.reduce((sum, wide) => sum + wide, 0);
  const stroke = inkOn(sign.colour);
  let at = 0;
  const panels = backing.cuts.map((cut, index) => {
    const share = (across[index] ?? 0) / all;
    const box = isUpright
      ? { x: 1 + at * widthPt, y: 1, width: share * widthPt, height: heightPt }
      : { x: 1, y: 1 + at * heightPt, width: widthPt, height: share * heightPt };
    at += share;
    const text = checkSize(cut, of.plan.quilt);
    const sizePt = 8;
    const fits = textWidthPt(text, sizePt) + 6 < box.width && box.height > 14;
    return (
      element('rect', { ...box, fill: sign.colour, stroke, 'stroke-width': patchEdgePt }) +
      (fits ? lettering({ text, x: box.x + box.width / 2, y: box.y + box.height / 2, sizePt, fill: stroke }) : '')
    );
  });
  return picture({
    widthPt: widthPt + 2,
    heightPt: heightPt + 2,
    alt: of.alt,
    parts: [
      ...panels,
      element('rect', {
        x: 1 + ((backing.width - set.width) * scale) / 2,
        y: 1 + ((backing.height - set.height) * scale) / 2,
        width: set.width * scale,
        height: set.height * scale,
        fill: 'none',
        stroke,
        'stroke-width': 0.75,
        'stroke-dasharray': '4 2',
      }),
    ],
  });
};
