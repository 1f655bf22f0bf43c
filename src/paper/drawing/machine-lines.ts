// The lines in pictures at the machine: what is sewn is dashed, what is cut is dashes and dots.
import type { Polygon } from '#ground/plane';
import { ink } from './ink.ts';
import { lineOf } from './shape.ts';
import { element } from './svg.ts';

/**
 * Dashes on white, or they would be lost on the edge of the patch that lies under them.
 *
 * @param d path data in the picture's points
 */
export const stitches = (d: string): string =>
  element('path', { d, stroke: '#ffffff', 'stroke-width': 1.3, fill: 'none' }) +
  element('path', { d, stroke: ink, 'stroke-width': 0.9, 'stroke-dasharray': '3 1.5', fill: 'none' });

export const sewnLine = (line: Polygon): string => stitches(lineOf(line));

/** Where only a line is cut that is drawn too, the drawn one shows. */
export const cutLine = (line: Polygon): string =>
  element('path', {
    d: lineOf(line),
    stroke: ink,
    'stroke-width': 0.8,
    'stroke-dasharray': '6 1.5 1 1.5',
    fill: 'none',
  });
