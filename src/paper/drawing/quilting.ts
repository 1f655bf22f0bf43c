// Straight quilting lines on the finished top, both ways, the top itself in pale line.
import type { FinishPlan, QuiltPlan } from '#craft';
import { hush, ink, softInk, thread } from './ink.ts';
import { type Drawing, element, numberText, picture } from './svg.ts';

const padPt = 1;

export const drawQuilting = (of: {
  readonly plan: QuiltPlan;
  readonly lines: NonNullable<FinishPlan['batting']>['lines'];
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}): Drawing => {
  const { set } = of.plan.top;
  const scale = Math.min((of.fitPt[0] - 2 * padPt) / set.width, (of.fitPt[1] - 2 * padPt) / set.height);
  const [width, height] = [set.width * scale, set.height * scale];
  const line = (d: string): string =>
    element('path', { d, stroke: thread, 'stroke-width': 0.75, 'stroke-dasharray': '3 1.5', fill: 'none' });
  const inner = set.middle;
  return picture({
    widthPt: width + 2 * padPt,
    heightPt: height + 2 * padPt,
    alt: of.alt,
    parts: [
      element('rect', { x: padPt, y: padPt, width, height, fill: hush, stroke: ink, 'stroke-width': 0.75 }),
      element('rect', {
        x: padPt + inner.x * scale,
        y: padPt + inner.y * scale,
        width: inner.width * scale,
        height: inner.height * scale,
        fill: 'none',
        stroke: softInk,
        'stroke-width': 0.4,
      }),
      ...Array.from({ length: of.lines.upright.count }, (_, i) =>
        line(`M${numberText(padPt + (i + 1) * of.lines.upright.apart * scale)} ${padPt}v${numberText(height)}`),
      ),
      ...Array.from({ length: of.lines.level.count }, (_, i) =>
        line(`M${padPt} ${numberText(padPt + (i + 1) * of.lines.level.apart * scale)}h${numberText(width)}`),
      ),
    ],
  });
};
