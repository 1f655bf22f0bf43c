// Which way the upright of a print runs on the cloth as it is drawn: an arrow to its top, with two heads where either end may be up.
import type { FabricPlan, QuiltPlan } from '#craft';
import type { Point } from '#ground/plane';
import { arrow } from './arrow.ts';
import { lettering, softInk } from './ink.ts';

export interface PrintWay {
  readonly runs: 'up' | 'right';
  readonly heads: 'one' | 'both';
}

/** Null where a print says nothing. A print that runs crosswise has its top to the right. */
export const printWay = (plan: QuiltPlan, { id }: Pick<FabricPlan, 'id'>): PrintWay | null => {
  const fabric = plan.quilt.fabrics.find((one) => one.id === id);
  if (fabric === undefined || fabric.print === 'none') return null;
  return {
    runs: fabric.printRuns === 'lengthwise' ? 'up' : 'right',
    heads: fabric.print === 'one-way' ? 'one' : 'both',
  };
};

const reachPt = 9;

/** Fits a box 46 pt wide and 20 high, its left side's middle at the point. */
export const printArrow = (way: PrintWay, at: Point): string => {
  const middle = { x: at.x + reachPt, y: at.y };
  const [from, to] =
    way.runs === 'up'
      ? [
          { x: middle.x, y: middle.y + reachPt },
          { x: middle.x, y: middle.y - reachPt },
        ]
      : [
          { x: middle.x - reachPt, y: middle.y },
          { x: middle.x + reachPt, y: middle.y },
        ];
  return (
    arrow({ from, to, heads: way.heads, colour: softInk }) +
    lettering({ text: 'print', x: middle.x + reachPt + 4, y: at.y, sizePt: 7.5, anchor: 'start', fill: softInk })
  );
};
