// The order of the cuts within a strip: numbers over it, each with a tick where its cut begins, as the directions number them.
import type { PatternCut } from '#craft/directions';
import type { Hand } from '#paper/cutting';
import { hairlinePt, lettering, softInk, textWidthPt } from './ink.ts';
import { element, numberText } from './svg.ts';

/** Room over a strip; none where one cut is all there is. */
export const mostStepsPt = 9;

export const stepsPt = ({ cuts }: Pick<PatternCut, 'cuts'>): number => (cuts.length > 1 ? mostStepsPt : 0);

const sizePt = 7;

/** @param of `y` is the top of the strip, the numbers stand over it */
export const drawCutSteps = (of: {
  readonly pattern: PatternCut;
  readonly scale: number;
  readonly y: number;
  /** For the right hand the cuts begin at the left, for the left hand at the right. */
  readonly hand: Hand;
}): readonly string[] => {
  const { pattern, scale, y, hand } = of;
  const isLeft = hand === 'left';
  if (stepsPt(pattern) === 0) return [];
  return labelsOf(pattern, scale, isLeft ? -1 : 1).flatMap(({ text, x }) => [
    element('path', {
      d: `M${numberText(x)} ${numberText(y - 7)}V${numberText(y)}`,
      stroke: softInk,
      'stroke-width': hairlinePt,
    }),
    lettering({
      text,
      x: isLeft ? x - 1.5 : x + 1.5,
      y: y - 4.5,
      sizePt,
      anchor: isLeft ? 'end' : 'start',
      fill: softInk,
    }),
  ]);
};

/** Cuts that begin at one place, or too near to the one before for two labels, share one: "2.3–2.5". */
const labelsOf = (
  pattern: PatternCut,
  scale: number,
  /** 1 where the cuts go to the right, −1 to the left. */
  way: 1 | -1,
): readonly { readonly text: string; readonly x: number }[] => {
  const labels: { x: number; text: string; first: number }[] = [];
  pattern.cuts.forEach(({ at }, i) => {
    const x = 1 + at * scale;
    const before = labels.at(-1);
    if (before !== undefined && way * (x - before.x) < 1.5 + textWidthPt(before.text, sizePt) + 2)
      before.text = `${pattern.number}.${before.first}–${pattern.number}.${i + 1}`;
    else labels.push({ x, text: `${pattern.number}.${i + 1}`, first: i + 1 });
  });
  return labels;
};
