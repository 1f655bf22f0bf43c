// The board of a block: all its pieces laid out in place, a little apart, as one lays them beside the
// machine. Labels only; sizes stand in the block's table.

import type { BlockPlan } from '#craft';
import { grown } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { hatchDefinitions } from './hatching.ts';
import { drawLabels, leaderRoomPt } from './label.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { fitted, framed } from './shape.ts';
import type { Drawing } from './svg.ts';
import { picture } from './svg.ts';

export const drawBoard = (of: {
  readonly block: BlockPlan;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}): Drawing => {
  const { block, signs } = of;
  const [width, height] = block.finished;
  const into = { x: leaderRoomPt, y: 1, width: of.fitPt[0] - 2 * leaderRoomPt, height: of.fitPt[1] - 2 };
  const frame = fitted({ box: { x: 0, y: 0, width, height }, into: { ...into, x: 0, y: 0 } });
  const scale = frame.scale;
  const smallest = Math.min(...block.patches.map(({ points }) => thinness(points)));
  // apart by 3 pt where the smallest patch bears it
  const apart = Math.min(3, smallest * scale * 0.25);
  const laid = block.patches.map((patch) => ({
    patch,
    outline: grown(framed(patch.points, { scale, x: into.x, y: into.y }), -apart / 2),
  }));
  const bounds = { x: into.x, y: into.y, width: width * scale, height: height * scale };
  const used = new Set(block.patches.map(({ fabric }) => fabric));
  return picture({
    widthPt: bounds.width + 2 * leaderRoomPt,
    heightPt: bounds.height + 2,
    alt: of.alt,
    parts: [
      hatchDefinitions([...used].map((fabric) => signOf(signs, fabric))),
      ...drawPatches({ laid, signs, fill: 'hatched' }),
      ...drawLabels({ labels: patchLabels(laid, signs), bounds, tooSmall: 'leader' }),
    ],
  });
};

/** Twice the area over the perimeter: for a long strip close to its width. */
const thinness = (outline: readonly { readonly x: number; readonly y: number }[]): number => {
  let twice = 0;
  let around = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    twice += a.x * b.y - b.x * a.y;
    around += Math.hypot(b.x - a.x, b.y - a.y);
  });
  return Math.abs(twice) / around;
};
