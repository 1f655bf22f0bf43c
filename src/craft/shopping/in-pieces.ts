// A cloth at hand in several pieces: the longest is cut as if it were bought, the others are ends that are cut first.
import type { ClothEnd, Fabric, Quilt } from '#craft/design';
import { add, div, fromDecimal, isPositive, mul, one, sub, two } from '#ground/exact';
import type { Cupboard } from './at-hand.ts';

/** The quilt with the shorter pieces among the ends of their cloths, each less what it loses as it shrinks and is squared up. */
export const inPieces = (quilt: Quilt, cupboard: Cupboard): Quilt => ({
  ...quilt,
  fabrics: quilt.fabrics.map((fabric) => ({ ...fabric, ends: [...fabric.ends, ...endsOf(fabric, quilt, cupboard)] })),
});

const endsOf = (fabric: Fabric, { buying }: Quilt, cupboard: Cupboard): readonly ClothEnd[] => {
  const hand = cupboard.get(fabric.id);
  if (hand?.kind !== 'length') return [];
  return hand.others.flatMap((long): readonly ClothEnd[] => {
    const along = sub(div(fromDecimal(long), add(one, buying.shrinkage)), mul(two, buying.squaring));
    return isPositive(along) ? [{ name: null, size: [fabric.usableWidth, along], count: 1 }] : [];
  });
};
