// Where a step of the top is sewn: along which line, and at which corner.
import type { QuiltPlan, TopStep } from '#craft';
import { type TopThing, turnedBy } from '#craft/setting';
import type { Point } from '#ground/plane';
import { boxOf } from '#ground/plane';
import { type Leg, sideWays } from './seam.ts';
import { outlineInTop } from './things.ts';

/** Unit vector along which the second part stands off. */
export const topAway = ({ side, angle }: Pick<TopStep, 'side' | 'angle'>): Point =>
  turnedBy(sideWays[side], angle as Parameters<typeof turnedBy>[1]);

/** Where the two parts meet: the edge of the second toward the first, as far as the first reaches. */
export const topSeam = (plan: QuiltPlan, step: TopStep): Leg => {
  const away = topAway(step);
  const along = { x: -away.y, y: away.x };
  const of = (things: readonly TopThing[], way: Point): readonly number[] =>
    things.flatMap((thing) => outlineInTop(plan, thing).map((p) => p.x * way.x + p.y * way.y));
  const line = Math.min(...of(step.things[1], away));
  const spans = step.things.map((things) => of(things, along));
  const from = Math.max(...spans.map((span) => Math.min(...span)));
  const to = Math.min(...spans.map((span) => Math.max(...span)));
  const at = (u: number): Point => ({ x: away.x * line + along.x * u, y: away.y * line + along.y * u });
  return [at(from), at(to)];
};

/** Corners of a ring in the order of their mitres, clockwise from the upper left. */
const corners = [
  { x: 0, y: 0, name: 'upper left' },
  { x: 1, y: 0, name: 'upper right' },
  { x: 1, y: 1, name: 'lower right' },
  { x: 0, y: 1, name: 'lower left' },
] as const;

export const mitreCorner = ({ top }: QuiltPlan, step: TopStep): (typeof corners)[number] => {
  const nth = top.steps.filter(({ stage, of }) => stage === 'mitre' && of === step.of).indexOf(step);
  return corners[nth] ?? corners[0];
};

/** From the inner corner out. */
export const mitreSeam = (plan: QuiltPlan, step: TopStep): Leg => {
  const { x, y } = mitreCorner(plan, step);
  const box = boxOf(step.things.flat().flatMap((thing) => outlineInTop(plan, thing)));
  const wide = step.seam / Math.SQRT2;
  const outer = { x: box.x + x * box.width, y: box.y + y * box.height };
  return [{ x: outer.x + (x === 0 ? wide : -wide), y: outer.y + (y === 0 ? wide : -wide) }, outer];
};

/** The two strips that meet at a mitre. */
export const mitreStrips = (plan: QuiltPlan, step: TopStep): readonly { readonly strip: number }[] => {
  const [inner, outer] = mitreSeam(plan, step);
  const isAt = (p: Point, q: Point): boolean => Math.hypot(p.x - q.x, p.y - q.y) < 1e-6 * plan.top.set.width;
  return step.things.flat().flatMap((thing) => {
    if (!('strip' in thing)) return [];
    const outline = outlineInTop(plan, thing);
    return [inner, outer].every((end) => outline.some((p) => isAt(p, end))) ? [thing] : [];
  });
};
