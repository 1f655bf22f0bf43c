// One strip of a cloth as it is cut, to scale: its pieces with their marks, what is worth keeping, the order of its cuts above it.
import type { PatternCut } from '#craft/directions';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { lengthOnPaper } from '#paper/lengths';
import { counted } from '#paper/words';
import { marksIn, pieceRect } from './cut-marks.ts';
import { drawCutSteps } from './cut-steps.ts';
import { cutEdgePt, hairlinePt, hush, inkOn, softInk } from './ink.ts';
import { drawRemnants } from './offcuts.ts';
import { element } from './svg.ts';

export interface ClothStrip {
  readonly parts: readonly string[];
  /** "3 strips 2½ in" */
  readonly note: string;
  /** Pieces too small for a mark, by name; "" where each has one. */
  readonly unmarked: string;
}

/** @param of `width` is the cloth's; `y` the top of the strip in the picture, the numbers of its cuts stand over it */
export const drawClothStrip = (of: {
  readonly pattern: PatternCut;
  readonly width: number;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly scale: number;
  readonly y: number;
  readonly hand: Hand;
}): ClothStrip => {
  const { pattern, sign, scale, y, hand } = of;
  const { strip, count } = pattern;
  const rects = strip.parts.flatMap((part) => part.pieces.map((piece) => pieceRect({ part, piece, scale, y })));
  const marks = marksIn({ kind: pattern, scale, y, sign });
  return {
    note: `${counted(count, 'strip')} ${lengthOnPaper(strip.height, of.unit)}`,
    unmarked: marks.unmarked,
    parts: [
      element('rect', {
        x: 1,
        y,
        width: of.width * scale,
        height: strip.height * scale,
        fill: hush,
        stroke: softInk,
        'stroke-width': hairlinePt,
        'stroke-dasharray': '2 1',
      }),
      ...drawRemnants({ offcuts: pattern.offcuts, scale, x: 1, y }),
      ...rects.map((rect) =>
        element('rect', { ...rect, fill: sign.colour, stroke: inkOn(sign.colour), 'stroke-width': cutEdgePt }),
      ),
      ...marks.labels,
      ...drawCutSteps({ pattern, scale, y, hand }),
    ],
  };
};
