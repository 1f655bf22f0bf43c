// What is left of a strip that is worth keeping, with its name; waste stays the pale ground it lies on.
import type { PatternCut } from '#craft/directions';
import type { Box } from '#ground/plane';
import { hairlinePt, sheet, softInk } from './ink.ts';
import { drawLabels } from './label.ts';
import { rectOutline } from './placed.ts';
import { element } from './svg.ts';

interface Remnants {
  readonly offcuts: PatternCut['offcuts'];
  /** Points a unit, and the strip's upper left corner. */
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export const drawRemnants = ({ offcuts, scale, x, y }: Remnants): readonly string[] =>
  offcuts.flatMap(({ remnant, at, size }) =>
    remnant === null
      ? []
      : drawRemnant(remnant, {
          x: x + at[0] * scale,
          y: y + at[1] * scale,
          width: size[0] * scale,
          height: size[1] * scale,
        }),
  );

export const drawRemnant = (name: string, box: Box): readonly string[] => [
  element('rect', { ...box, fill: sheet, stroke: softInk, 'stroke-width': hairlinePt }),
  ...drawLabels({
    labels: [{ text: name, outline: rectOutline(box), fill: softInk }],
    bounds: { x: 0, y: 0, width: 0, height: 0 },
    tooSmall: 'leave-out',
  }),
];
