// Arrows of the thread colour, and dimension lines.
import type { Point } from '#ground/plane';
import { hairlinePt, lettering, softInk, thread } from './ink.ts';
import { element, numberText } from './svg.ts';

const along = (from: Point, to: Point, by: number): Point => {
  const whole = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: from.x + ((to.x - from.x) * by) / whole, y: from.y + ((to.y - from.y) * by) / whole };
};

/** A head whose tip is `tip`, coming from `from`. */
const head = (from: Point, tip: Point, sizePt: number): string => {
  const whole = Math.hypot(tip.x - from.x, tip.y - from.y);
  const dx = (tip.x - from.x) / whole;
  const dy = (tip.y - from.y) / whole;
  const back = { x: tip.x - dx * sizePt, y: tip.y - dy * sizePt };
  const half = sizePt * 0.42;
  const corner = (side: 1 | -1) => `${numberText(back.x - side * dy * half)} ${numberText(back.y + side * dx * half)}`;
  return `M${numberText(tip.x)} ${numberText(tip.y)}L${corner(1)}L${corner(-1)}Z`;
};

/** An arrow with its tip at `to`; `both` puts a head on either end. */
export const arrow = (of: {
  readonly from: Point;
  readonly to: Point;
  readonly heads: 'one' | 'both';
  readonly colour?: string;
}): string => {
  const colour = of.colour ?? thread;
  const length = Math.hypot(of.to.x - of.from.x, of.to.y - of.from.y);
  const size = Math.min(5, length * 0.5);
  const start = of.heads === 'both' ? along(of.from, of.to, size * 0.8) : of.from;
  const end = along(of.to, of.from, size * 0.8);
  const shaft = `M${numberText(start.x)} ${numberText(start.y)}L${numberText(end.x)} ${numberText(end.y)}`;
  const heads = head(of.from, of.to, size) + (of.heads === 'both' ? head(of.to, of.from, size) : '');
  // a rim of white keeps the arrow readable on any cloth
  return (
    element('path', {
      d: `${shaft}${heads}`,
      stroke: '#ffffff',
      'stroke-width': 3,
      'stroke-linejoin': 'round',
      fill: '#ffffff',
    }) +
    element('path', { d: shaft, stroke: colour, 'stroke-width': 1.4, fill: 'none' }) +
    element('path', { d: heads, fill: colour })
  );
};

/**
 * Of a spun seam: one on each half, run round its middle.
 *
 * @param of.halves a place on each half of a straight seam
 * @param of.reach  half an arrow's length
 */
export const spunArrows = (of: {
  readonly halves: readonly [Point, Point];
  readonly press: 'clockwise' | 'counterclockwise';
  readonly reach: number;
  readonly colour?: string;
}): readonly string[] => {
  const [a, b] = of.halves;
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const by = (of.press === 'clockwise' ? 1 : -1) / long;
  // y runs down: clockwise is to the right hand of one who walks away from the middle
  const right = { x: -(b.y - a.y) * by, y: (b.x - a.x) * by };
  return [
    { on: a, toward: -1 },
    { on: b, toward: 1 },
  ].map(({ on, toward }) => {
    const end = (far: number): Point => ({ x: on.x + right.x * far * toward, y: on.y + right.y * far * toward });
    return arrow({ ...of, from: end(-of.reach), to: end(of.reach), heads: 'one' });
  });
};

/** A dimension line below (level) or beside what it measures, with its figure; a slanted one at its right. */
export const dimension = (of: {
  readonly from: Point;
  readonly to: Point;
  readonly text: string;
  readonly sizePt?: number;
}): string => {
  const { from, to } = of;
  const level = from.y === to.y;
  const tick = 2.5;
  const isSlanted = !level && from.x !== to.x;
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const square = { x: (-(to.y - from.y) / long) * tick, y: ((to.x - from.x) / long) * tick };
  const ticks = isSlanted
    ? [from, to].map(
        ({ x, y }) =>
          `M${numberText(x - square.x)} ${numberText(y - square.y)}L${numberText(x + square.x)} ${numberText(y + square.y)}`,
      )
    : level
      ? [from, to].map((p) => `M${numberText(p.x)} ${numberText(p.y - tick)}V${numberText(p.y + tick)}`)
      : [from, to].map((p) => `M${numberText(p.x - tick)} ${numberText(p.y)}H${numberText(p.x + tick)}`);
  const d = `M${numberText(from.x)} ${numberText(from.y)}L${numberText(to.x)} ${numberText(to.y)}${ticks.join('')}`;
  const sizePt = of.sizePt ?? 8;
  const text = level
    ? lettering({ text: of.text, x: (from.x + to.x) / 2, y: from.y + sizePt * 0.95, sizePt, fill: softInk })
    : lettering({
        text: of.text,
        x: (from.x + to.x) / 2 + 4,
        y: (from.y + to.y) / 2,
        sizePt,
        fill: softInk,
        anchor: 'start',
      });
  return element('path', { d, stroke: softInk, 'stroke-width': hairlinePt * 1.6, fill: 'none' }) + text;
};
