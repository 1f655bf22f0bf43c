// The board of a block: all its pieces laid out in place, a little apart, as one lays them beside the
// machine. Labels only; sizes stand in the block's table.

import type { BlockPlan } from '#craft';
import { drawnIn } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { hatchDefinitions } from './hatching.ts';
import { drawLabels, fitsInside, leaderRoomPt } from './label.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { fitted, framed, thinness } from './shape.ts';
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
  const into = { x: 0, y: 0, width: of.fitPt[0] - 2 * leaderRoomPt, height: of.fitPt[1] - 2 };
  const { scale } = fitted({ box: { x: 0, y: 0, width, height }, into });
  const smallest = Math.min(...block.patches.map(({ points }) => thinness(points)));
  // apart by 3 pt where the smallest patch bears it
  const apart = Math.min(3, smallest * scale * 0.25);
  const laidAt = (x: number) =>
    block.patches.map((patch) => ({
      patch,
      outline: drawnIn(framed(patch.points, { scale, x, y: 1 }), apart / 2),
    }));
  // room for leaders only where a label needs one
  const side = patchLabels(laidAt(0), signs).every(fitsInside) ? 1 : leaderRoomPt;
  const laid = laidAt(side);
  const bounds = { x: side, y: 1, width: width * scale, height: height * scale };
  const used = new Set(block.patches.map(({ fabric }) => fabric));
  return picture({
    widthPt: bounds.width + 2 * side,
    heightPt: bounds.height + 2,
    alt: of.alt,
    parts: [
      hatchDefinitions([...used].map((fabric) => signOf(signs, fabric))),
      ...drawPatches({ laid, signs, fill: 'hatched' }),
      ...drawLabels({ labels: patchLabels(laid, signs), bounds, tooSmall: 'leader' }),
    ],
  });
};
