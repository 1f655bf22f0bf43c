// A paper gauge: one edge at true scale with the check sizes of a block marked on it, each with the steps after which a unit
// measures so.
import { at, type Polygon } from '#ground/plane';
import { ink, softInk, textWidthPt } from './ink.ts';
import { element, numberText } from './svg.ts';
import type { WholeDrawing } from './tiles.ts';

export interface GaugeMark {
  /** From the left end, in the document's unit. */
  readonly at: number;
  readonly text: string;
}

const padPt = 6;
const headPt = 10;
const rowPt = 11;
const sizePt = 8;
/** Below the labels: where two sheets join, room for their diamonds. */
const footPt = 32;

export const gauge = (of: { readonly marks: readonly GaugeMark[]; readonly scale: number }): WholeDrawing => {
  const marks = of.marks.toSorted((a, b) => a.at - b.at);
  const long = (marks.at(-1)?.at ?? 0) * of.scale;
  // a label stands to the left of its mark, in the first row where it meets no mark before: a mark runs down to its row
  const ends: number[] = [];
  const placed = marks.map((mark) => {
    const x = padPt + mark.at * of.scale;
    const from = x - 3 - textWidthPt(mark.text, sizePt);
    const free = ends.findIndex((end) => end < from);
    const row = free < 0 ? ends.length : free;
    ends.fill(x, 0, row);
    ends[row] = x;
    return { ...mark, x, row };
  });
  const labelsPt = headPt + ends.length * rowPt;
  const heightPt = labelsPt + footPt;
  const bar: Polygon = [at(padPt, headPt), at(padPt + long, headPt), at(padPt + long, heightPt), at(padPt, heightPt)];
  return {
    // a long word at a short mark stands out on the left
    widthPt: long + 2 * padPt,
    heightPt: heightPt + padPt,
    labelsAre: 'at-marks',
    // a mark lies on one sheet with all of its label
    overlapPt: Math.max(...marks.map(({ text }) => textWidthPt(text, sizePt))) + 12,
    clear: placed.map(({ x }) => ({ from: x - 3, to: x + 3 })),
    diamondsAt: [0.22, 0.74].map((share) => (labelsPt + footPt * share) / (heightPt + padPt)) as [number, number],
    outlines: [bar],
    parts: [
      element('path', {
        d: `M${numberText(padPt)} ${numberText(headPt)}H${numberText(padPt + long)}`,
        stroke: ink,
        'stroke-width': 0.75,
        fill: 'none',
      }),
      ...[{ x: padPt, row: ends.length }, ...placed].map(({ x, row }) =>
        element('path', {
          d: `M${numberText(x)} ${numberText(headPt)}V${numberText(headPt + (row + 1) * rowPt)}`,
          stroke: row === ends.length ? ink : softInk,
          'stroke-width': 0.5,
          fill: 'none',
        }),
      ),
    ],
    labels: placed.map(({ text, x, row }) => ({
      text,
      x: x - 3 - textWidthPt(text, sizePt) / 2,
      y: headPt + (row + 0.55) * rowPt,
      sizePt,
      fill: ink,
    })),
  };
};
