// Where a patch of a block lies in the top: its entry in the plan, turned about its own middle.

import type { BlockPlan, QuiltPlan } from '#craft';
import { type PlacedBlock, pointInTop } from '#craft/setting';
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
    case 0:
      return moved(0, 0);
    default: {
      const [middleX, middleY] = [(of.placed.size[0] * of.scale) / 2, (of.placed.size[1] * of.scale) / 2];
      const back = `translate(${numberText(-width / 2)} ${numberText(-height / 2)})`;
      return `${moved(middleX, middleY)} rotate(${of.placed.turn}) ${back}`;
    }
  }
};

/** The outline of a patch, which faces as its entry does, in the top's own units. */
export const inTop = (outline: Polygon, placed: PlacedBlock, finished: readonly [number, number]): Polygon =>
  outline.map((p) => pointInTop({ ...placed, mirror: false }, finished, p));

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
