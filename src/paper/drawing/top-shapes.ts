// Blocks and plain pieces of the top as shapes of cloth, so that many of them make one path for each cloth.
import type { BlockPlan, QuiltPlan } from '#craft';
import type { TopThing } from '#craft/setting';
import type { Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { patchesAt } from './drawn.ts';
import { hush, paler } from './ink.ts';
import { entriesOf, entryKey, inTop } from './placed.ts';
import { pathOf } from './shape.ts';
import { type Attributes, element } from './svg.ts';
import { outlineInTop } from './things.ts';

export interface ClothShape {
  /** Null for a place that waits for a block made elsewhere. */
  readonly fabric: string | null;
  readonly points: Polygon;
}

/** @returns of a thing its patches, in the top's own units */
export const shapesInTop = (plan: QuiltPlan): ((thing: TopThing) => readonly ClothShape[]) => {
  const entries: ReadonlyMap<string, { readonly entry: BlockPlan }> = entriesOf(plan);
  return (thing) => {
    const bare = [{ fabric: null, points: outlineInTop(plan, thing) }];
    if ('strip' in thing)
      return [{ ...bare[0], fabric: plan.top.set.strips[thing.strip]?.fabric ?? null } as ClothShape];
    const placed = plan.top.set.placed[thing.block];
    const found = placed && entries.get(entryKey(placed));
    if (placed === undefined || found === undefined || found.entry.patches.length === 0) return bare;
    const { entry } = found;
    return patchesAt(plan, thing.block, entry).map(({ fabric, points }) => ({
      fabric,
      points: inTop(points, placed, entry.finished),
    }));
  };
};

/**
 * One path for each cloth.
 *
 * @param of.share of each colour that stays; the rest is white
 */
export const clothPaths = (of: {
  readonly shapes: readonly ClothShape[];
  readonly signs: ClothSigns;
  readonly share?: number;
  readonly attributes?: Attributes;
}): readonly string[] => {
  const byCloth = new Map<string | null, Polygon[]>();
  for (const { fabric, points } of of.shapes) {
    const known = byCloth.get(fabric);
    if (known === undefined) byCloth.set(fabric, [points]);
    else known.push(points);
  }
  return [...byCloth].map(([fabric, outlines]) => {
    const colour = fabric === null ? hush : signOf(of.signs, fabric).colour;
    return element('path', { d: pathOf(outlines), fill: paler(colour, of.share ?? 1), ...of.attributes });
  });
};
