// A number on a small round of paper: readable on any cloth.
import { ink, lettering, sheet } from './ink.ts';
import { element } from './svg.ts';

export const chip = (of: { readonly x: number; readonly y: number; readonly text: string }): string =>
  element('circle', {
    cx: of.x,
    cy: of.y,
    r: of.text.length > 2 ? 7.5 : 6,
    fill: sheet,
    stroke: ink,
    'stroke-width': 0.4,
  }) + lettering({ text: of.text, x: of.x, y: of.y, sizePt: 8, weight: 600 });
