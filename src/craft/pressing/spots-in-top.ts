// Where seams come together in the top: over the seams between its blocks, rows, sashes and borders.
import { cornerTolerance } from '#craft/limits';
import type { TopSeam } from '#craft/piecing';
import { type PlacedBlock, pointInTop, type SetTop } from '#craft/setting';
import type { Point } from '#ground/plane';
import { endsOf, type SeamEnd, type Spot, type StepEnd, spotsOn } from './spots.ts';

/** An end in the top: a place of a block's rim, or an end of one of the top's own seams. */
export type InTop = { readonly placed: number; readonly slot: number } | { readonly seam: number };

export interface Rim {
  readonly size: readonly [number, number];
  readonly rim: readonly SeamEnd<StepEnd>[];
}

/** @param of.rims by entry, not mirrored */
export const spotsInTop = (of: {
  readonly set: Pick<SetTop, 'placed' | 'width' | 'height'>;
  readonly rims: readonly Rim[];
  readonly seams: readonly TopSeam[];
  readonly entryOf: readonly number[];
}): readonly Spot<InTop>[] => {
  const { set, rims, seams, entryOf } = of;
  const own = seams.flatMap((seam, i) => endsOf(seam, (): InTop => ({ seam: i })));
  const ofBlocks = set.placed.flatMap((block, placed) => {
    const { size, rim } = rims[entryOf[placed] as number] as Rim;
    return rim.map((end, slot) => endInTop(block, { size, end, whose: { placed, slot } }));
  });
  return spotsOn(seams, [...own, ...ofBlocks], 3 * cornerTolerance * Math.max(set.width, set.height));
};

const endInTop = (
  block: PlacedBlock,
  of: { readonly size: readonly [number, number]; readonly end: SeamEnd<StepEnd>; readonly whose: InTop },
): SeamEnd<InTop> => {
  const { size, end, whose } = of;
  const at = pointInTop(block, size, end.at);
  const wayOf = (way: Point): Point => {
    const to = pointInTop(block, size, { x: end.at.x + way.x, y: end.at.y + way.y });
    return { x: to.x - at.x, y: to.y - at.y };
  };
  return { at, into: wayOf(end.into), toward: wayOf(end.toward), of: whose };
};
