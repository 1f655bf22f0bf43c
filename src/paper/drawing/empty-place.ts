// The place of a block that is made elsewhere: an empty sheet with a dashed edge and dashed diagonals.
import { hairlinePt, sheet, softInk } from './ink.ts';
import { element, group, numberText } from './svg.ts';

export const emptyPlace = (of: { readonly width: number; readonly height: number }): string => {
  const { width, height } = of;
  return group({ stroke: softInk, 'stroke-width': hairlinePt, 'stroke-dasharray': '3 2' }, [
    element('rect', { x: 0, y: 0, width, height, fill: sheet }),
    element('path', {
      d: `M0 0L${numberText(width)} ${numberText(height)}M${numberText(width)} 0L0 ${numberText(height)}`,
      fill: 'none',
    }),
  ]);
};
