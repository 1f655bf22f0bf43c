// The hanging sleeve on the back of the quilt: its upper part, with the sleeve between the sides, the binding that holds its raw edges and
// the fold that is sewn down by hand.
import type { FinishPlan, QuiltPlan } from '#craft';
import type { ClothSign } from '#paper/cloth';
import { checkSize } from '#paper/lengths';
import { hush, ink, inkOn, lettering, patchEdgePt, softInk, textWidthPt } from './ink.ts';
import { type Drawing, element, numberText, picture } from './svg.ts';

/** Of the back, as a share of its width. */
const shownShare = 0.3;
/** Of the sleeve, on a quilt that is little wider than it is high. */
const mostHighPt = 36;
const padPt = 1;
const letterPt = 8;

export const drawSleeve = (of: {
  readonly plan: QuiltPlan;
  readonly sleeve: NonNullable<FinishPlan['sleeve']>;
  readonly sign: ClothSign;
  /** Null where the pattern plans none. */
  readonly back: ClothSign | null;
  readonly edge: ClothSign | null;
  readonly widthPt: number;
  readonly alt: string;
}): Drawing => {
  const { plan, sleeve, sign, back, edge, alt } = of;
  const { set } = plan.top;
  const scale = Math.min((of.widthPt - 2 * padPt) / set.width, mostHighPt / sleeve.finished[1]);
  const [width, high] = [set.width * scale, sleeve.finished[1] * scale];
  const height = Math.min(set.height * scale, Math.max(width * shownShare, high * 2));
  // finished, a binding shows half its width less the seam that takes hold of it, about an allowance and a little more
  const edgePt = edge === null || plan.finish.binding === null ? 0 : (plan.finish.binding.cut * scale) / 5;
  const long = sleeve.finished[0] * scale;
  const box = { x: padPt + (width - long) / 2, y: padPt + edgePt, width: long, height: high };
  const text = checkSize(sleeve.finished, plan.quilt);
  const fits = high > letterPt + 4 && textWidthPt(text, letterPt) < long - 8;
  const fold = box.y + high;
  return picture({
    widthPt: width + 2 * padPt,
    heightPt: height + 2 * padPt,
    alt,
    parts: [
      element('rect', { x: padPt, y: padPt, width, height, fill: back?.colour ?? hush }),
      // the back goes on below: its lower end has no line
      element('path', {
        d: `M${padPt} ${numberText(padPt + height)}V${padPt}H${numberText(padPt + width)}V${numberText(padPt + height)}`,
        fill: 'none',
        stroke: softInk,
        'stroke-width': patchEdgePt,
      }),
      element('rect', { ...box, fill: sign.colour, stroke: ink, 'stroke-width': patchEdgePt }),
      ...(edge === null || edgePt === 0 ? [] : [binding({ width, height, edgePt, colour: edge.colour })]),
      element('path', {
        d: `M${numberText(box.x)} ${numberText(fold - 2)}H${numberText(box.x + long)}`,
        stroke: inkOn(sign.colour),
        'stroke-width': 0.9,
        'stroke-dasharray': '3 1.5',
        fill: 'none',
      }),
      lettering({
        text,
        x: padPt + width / 2,
        y: fits ? box.y + high / 2 - 1 : fold + letterPt,
        sizePt: letterPt,
        fill: fits ? inkOn(sign.colour) : inkOn(back?.colour ?? hush),
      }),
    ],
  });
};

/** Along the sides and the upper edge, where it lies over the raw edges of the sleeve. */
const binding = (of: {
  readonly width: number;
  readonly height: number;
  readonly edgePt: number;
  readonly colour: string;
}): string => {
  const { width, height, edgePt, colour } = of;
  const [right, low] = [padPt + width, padPt + height];
  const [inLeft, inRight, inTop] = [padPt + edgePt, right - edgePt, padPt + edgePt];
  const corners = [
    [padPt, low],
    [padPt, padPt],
    [right, padPt],
    [right, low],
    [inRight, low],
    [inRight, inTop],
    [inLeft, inTop],
    [inLeft, low],
  ] as const;
  return element('path', {
    d: `M${corners.map(([x, y]) => `${numberText(x)} ${numberText(y)}`).join('L')}Z`,
    fill: colour,
    stroke: ink,
    'stroke-width': patchEdgePt,
  });
};
