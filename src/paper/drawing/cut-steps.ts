// The order of the cuts within a strip: numbers over it, each with a tick where its cut begins, as the directions number them.
import type { PatternCut } from '#craft/directions';
import { hairlinePt, lettering, softInk, textWidthPt } from './ink.ts';
import { element } from './svg.ts';

/** Room over a strip; none where one cut is all there is. */
export const mostStepsPt = 8;

export const stepsPt = ({ cuts }: Pick<PatternCut, 'cuts'>): number => (cuts.length > 1 ? mostStepsPt : 0);

const sizePt = 6;

/** @param of `y` is the top of the strip, the numbers stand over it */
export const drawCutSteps = (of: {
  readonly pattern: PatternCut;
  readonly scale: number;
  readonly y: number;
}): readonly string[] => {
  const { pattern, scale, y } = of;
  if (stepsPt(pattern) === 0) return [];
  const byPlace = new Map<number, number[]>();
  pattern.cuts.forEach(({ at }, i) => {
    byPlace.set(at, [...(byPlace.get(at) ?? []), i + 1]);
  });
  let free = 0;
  return [...byPlace].flatMap(([at, steps]) => {
    const text = steps.map((step) => `${pattern.number}.${step}`).join(', ');
    const tick = 1 + at * scale;
    const x = Math.max(tick + 1.5, free);
    free = x + textWidthPt(text, sizePt) + 2;
    return [
      element('path', {
        d: `M${Math.round(tick * 1000) / 1000} ${Math.round((y - 6) * 1000) / 1000}V${Math.round(y * 1000) / 1000}`,
        stroke: softInk,
        'stroke-width': hairlinePt,
      }),
      lettering({ text, x, y: y - 4, sizePt, anchor: 'start', fill: softInk }),
    ];
  });
};
