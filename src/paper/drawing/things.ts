// Blocks and plain pieces of the top as they lie in it: for pictures that move them apart.
import type { BlockPlan, QuiltPlan } from '#craft';
import { outlineOfPlaced, type PlacedBlock, type PlacedStrip, type TopThing, turnedBy } from '#craft/setting';
import type { Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { ink, thread } from './ink.ts';
import { entriesOf } from './placed.ts';
import { placedBlock } from './quilt.ts';
import { type Frame, framed, pathOf } from './shape.ts';
import { element, numberText } from './svg.ts';

export interface ThingPen {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly scale: number;
  readonly entries: ReadonlyMap<string, { readonly entry: BlockPlan; readonly index: number }>;
  /** Whether a small pointer marks the edge of a block that is at the top of its board. */
  readonly pointers: 'none' | 'drawn';
}

/** Pointers where any block is turned. */
export const penFor = (of: Pick<ThingPen, 'plan' | 'signs' | 'scale'>): ThingPen => ({
  ...of,
  entries: entriesOf(of.plan),
  pointers: isTurned(of.plan) ? 'drawn' : 'none',
});

/** At its place in the top, in the picture's points from the top's upper left corner. */
export const drawThing = (pen: ThingPen, thing: TopThing): readonly string[] => {
  const { plan, signs, scale } = pen;
  if ('strip' in thing) {
    const { fabric, points } = stripAt(plan, thing.strip);
    return [
      element('path', { d: pathOf([framed(points, { scale, x: 0, y: 0 })]), fill: signOf(signs, fabric).colour }),
    ];
  }
  const placed = sewnAt(plan, thing.block);
  const block = placedBlock(pen, thing.block);
  const isMarked = pen.pointers === 'drawn' && Math.min(...placed.size) * scale >= 16;
  return [
    block,
    ...(isMarked ? [topPointer(placed, scale)] : []),
    ...otherWayMark(plan, thing.block, { scale, x: 0, y: 0 }),
  ];
};

/** A ring in the middle of a block that is pressed the other way. */
export const otherWayMark = (plan: QuiltPlan, place: number, { scale, x, y }: Frame): readonly string[] => {
  if (plan.top.pressing.variants[place] !== 1) return [];
  const { at, size } = placedAt(plan, place);
  return [
    element('circle', {
      cx: (at[0] + size[0] / 2) * scale + x,
      cy: (at[1] + size[1] / 2) * scale + y,
      r: Math.min(5, Math.min(...size) * scale * 0.16),
      fill: '#ffffff',
      stroke: thread,
      'stroke-width': 1.6,
    }),
  ];
};

export const outlineInTop = (plan: QuiltPlan, thing: TopThing): Polygon =>
  'strip' in thing ? stripAt(plan, thing.strip).points : outlineOfPlaced(placedAt(plan, thing.block));

export const stripAt = (plan: QuiltPlan, index: number): PlacedStrip => {
  const strip = plan.top.set.strips[index];
  if (strip === undefined) throw new Error(`the top has no strip ${index}`);
  return strip;
};

export const placedAt = (plan: QuiltPlan, index: number): PlacedBlock => {
  const placed = plan.top.set.placed[index];
  if (placed === undefined) throw new Error(`the top has no block ${index}`);
  return placed;
};

/** With the turn in which it is sewn: where it looks the same, it may be turned further than it is set. */
export const sewnAt = (plan: QuiltPlan, index: number): PlacedBlock => {
  const placed = placedAt(plan, index);
  return { ...placed, turn: ((placed.turn + (plan.top.pressing.turns[index] ?? 0)) % 360) as PlacedBlock['turn'] };
};

/** Whether any block is sewn in otherwise than it lies on its board. */
export const isTurned = (plan: QuiltPlan): boolean =>
  plan.top.set.placed.some((_, place) => sewnAt(plan, place).turn !== 0);

export const topPointer = (placed: PlacedBlock, scale: number): string => {
  const [x, y] = [placed.at[0] * scale, placed.at[1] * scale];
  const [w, h] = [placed.size[0] * scale, placed.size[1] * scale];
  const middle = topEdgeMiddle(placed.turn, { x, y, w, h });
  const size = Math.min(6, Math.min(w, h) * 0.16);
  return element('path', {
    d: `M0 ${numberText(size * 0.2)}L${numberText(size * 0.6)} ${numberText(size * 1.2)}H${numberText(-size * 0.6)}Z`,
    transform: `translate(${numberText(middle.x)} ${numberText(middle.y)}) rotate(${placed.turn})`,
    fill: '#ffffff',
    stroke: ink,
    'stroke-width': 0.5,
  });
};

/** Where the block's own top edge has its middle, turned with it: on the box, or on point a quarter of it further in. */
const topEdgeMiddle = (
  turn: PlacedBlock['turn'],
  { x, y, w, h }: { readonly x: number; readonly y: number; readonly w: number; readonly h: number },
): { readonly x: number; readonly y: number } => {
  const { x: right, y: down } = turnedBy({ x: 0, y: -0.5 }, turn);
  const reach = turn % 90 === 0 ? 1 : Math.SQRT1_2;
  return { x: x + w / 2 + right * w * reach, y: y + h / 2 + down * h * reach };
};
