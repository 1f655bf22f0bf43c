// One block as a picture, patch against patch as it will look when it is sewn: no labels, no hatch.
import type { BlockPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { hairlinePt, ink } from './ink.ts';
import { blockPaths, edgeWidth } from './quilt.ts';
import type { Drawing } from './svg.ts';
import { group, picture } from './svg.ts';

const padPt = 1;

/** No text in it, so that it looks the same wherever it is rendered. */
export const drawBlock = (of: {
  readonly block: BlockPlan;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly edgePt?: number;
  readonly alt: string;
}): Drawing => {
  const [width, height] = of.block.finished;
  const scale = Math.min((of.fitPt[0] - 2 * padPt) / width, (of.fitPt[1] - 2 * padPt) / height);
  return picture({
    widthPt: width * scale + 2 * padPt,
    heightPt: height * scale + 2 * padPt,
    alt: of.alt,
    parts: [
      group(
        {
          transform: `translate(${padPt} ${padPt})`,
          stroke: ink,
          'stroke-width': edgeWidth({ blocks: [of.block], scale, widthPt: of.edgePt ?? hairlinePt }),
          'stroke-linejoin': 'round',
        },
        blockPaths({ block: of.block, signs: of.signs, scale }),
      ),
    ],
  });
};
