// Where a patch of a block lies in the top: its entry in the plan, turned about its own middle.

import type { BlockPlan, QuiltPlan } from '#craft';
import type { PlacedBlock } from '#craft/setting';
import type { Polygon } from '#ground/plane';
import { numberText } from './svg.ts';

export const entryKey = (of: {
  readonly block: string;
  readonly colouring: string;
  readonly mirror: boolean;
}): string => JSON.stringify([of.block, of.colouring, of.mirror]);

/** Entries of the plan by `entryKey`, each with its place in the plan. */
export const entriesOf = (
  plan: QuiltPlan,
): ReadonlyMap<string, { readonly entry: BlockPlan; readonly index: number }> =>
  new Map(
    plan.blocks.map((entry, index) => [
      entryKey({ block: entry.id, colouring: entry.colouring, mirror: entry.mirror }),
      { entry, index },
    ]),
  );

/** SVG transform that turns a block drawn from 0, 0 (scaled) and sets its turned outline's corner at its place. */
export const placing = (of: {
  readonly placed: PlacedBlock;
  readonly finished: readonly [number, number];
  readonly scale: number;
}): string => {
  const [width, height] = [of.finished[0] * of.scale, of.finished[1] * of.scale];
  const [x, y] = [of.placed.at[0] * of.scale, of.placed.at[1] * of.scale];
  const moved = (dx: number, dy: number) => `translate(${numberText(x + dx)} ${numberText(y + dy)})`;
  switch (of.placed.turn) {
    case 90:
      return `${moved(height, 0)} rotate(90)`;
    case 180:
      return `${moved(width, height)} rotate(180)`;
    case 270:
      return `${moved(0, width)} rotate(270)`;
    default:
      return moved(0, 0);
  }
};

/** The outline of a patch in the top's own units. */
export const inTop = (outline: Polygon, placed: PlacedBlock, finished: readonly [number, number]): Polygon => {
  const [width, height] = finished;
  const [x, y] = placed.at;
  return outline.map((p) => {
    switch (placed.turn) {
      case 90:
        return { x: x + height - p.y, y: y + p.x };
      case 180:
        return { x: x + width - p.x, y: y + height - p.y };
      case 270:
        return { x: x + p.y, y: y + width - p.x };
      default:
        return { x: x + p.x, y: y + p.y };
    }
  });
};

export const rectOutline = (of: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}): Polygon => [
  { x: of.x, y: of.y },
  { x: of.x + of.width, y: of.y },
  { x: of.x + of.width, y: of.y + of.height },
  { x: of.x, y: of.y + of.height },
];
