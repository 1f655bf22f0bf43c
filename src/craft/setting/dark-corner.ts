// In which corner of a block does its dark half lie? By the measured value of its cloths, weighed by area.
import type { Corner } from '#craft/design';
import type { DraftedBlock } from '#craft/drafting';
import { outlineArea } from '#ground/arc';
import { centroid } from '#ground/plane';

/** Least part of half the block by which the dark must lie off the middle: our own figure, two halves of about one and a half L* apart. */
const leastOff = 0.005;

/** Toward a corner, not a side: within an eighth of a half turn of the diagonal, tan 22.5°. Our own figure. */
const leastSlant = Math.SQRT2 - 1;

/**
 * Null where the dark lies in the middle, all over, or along one side.
 *
 * @param lightnessOf CIE L* of each patch, by its place in the block's list
 * @source docs/formulas.md#dark-corner
 */
export const darkCornerOf = (block: DraftedBlock, lightnessOf: (patch: number) => number): Corner | null => {
  const [width, height] = block.size;
  let all = 0;
  let across = 0;
  let down = 0;
  block.patches.forEach(({ points, arcs = [] }, patch) => {
    const area = outlineArea({ points, arcs });
    const middle = centroid(points);
    const dark = area * (100 - lightnessOf(patch));
    all += dark;
    across += dark * ((2 * middle.x) / width - 1);
    down += dark * ((2 * middle.y) / height - 1);
  });
  const [far, near] = [Math.max(Math.abs(across), Math.abs(down)), Math.min(Math.abs(across), Math.abs(down))];
  if (all === 0 || far < leastOff * all || near < leastSlant * far) return null;
  return `${down > 0 ? 'lower' : 'upper'}-${across > 0 ? 'right' : 'left'}`;
};
