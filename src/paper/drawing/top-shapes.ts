// Blocks and plain pieces of the top as shapes of cloth, so that many of them make one path for each cloth.
import type { BlockPlan, QuiltPlan } from '#craft';
import type { TopThing } from '#craft/setting';
import { type Polygon, signedArea } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { patchesAt } from './drawn.ts';
import { hush, ink, paler, patchEdgePt } from './ink.ts';
import { entriesOf, entryKey, inTop } from './placed.ts';
import { edgeWidth } from './quilt.ts';
import { pathOf } from './shape.ts';
import { type Attributes, element } from './svg.ts';
import { outlineInTop } from './things.ts';

export interface ClothShape {
  /** Null for a place that waits for a block made elsewhere. */
  readonly fabric: string | null;
  readonly points: Polygon;
  /** Where it is of several cloths, seen from afar; else the cloth's own. */
  readonly colour?: string;
}

/** More patches than a picture of a step can show: blocks are then seen from afar, each in the mean of its colours. */
const mostPatches = 3000;

/**
 * @param things what is drawn in one picture
 * @returns of a thing its patches, in the top's own units
 */
export const shapesInTop = (
  plan: QuiltPlan,
  signs: ClothSigns,
  things: readonly TopThing[],
): ((thing: TopThing) => readonly ClothShape[]) => {
  const shapesOf = patchesInTop(plan);
  const entries = entriesOf(plan);
  const count = things.reduce((sum, thing) => {
    const placed = 'block' in thing ? plan.top.set.placed[thing.block] : undefined;
    return sum + (placed === undefined ? 1 : (entries.get(entryKey(placed))?.entry.patches.length ?? 1));
  }, 0);
  if (count <= mostPatches) return shapesOf;
  return (thing) => {
    const shapes = shapesOf(thing);
    if (shapes.length === 1) return shapes;
    return [{ fabric: null, points: outlineInTop(plan, thing), colour: meanColour(shapes, signs) }];
  };
};

/** By area, channel by channel. */
const meanColour = (shapes: readonly ClothShape[], signs: ClothSigns): string => {
  const areas = shapes.map(({ points }) => Math.abs(signedArea(points)));
  const whole = areas.reduce((sum, area) => sum + area, 0);
  const channels = [1, 3, 5].map((at) =>
    shapes.reduce((sum, { fabric }, i) => {
      const colour = fabric === null ? hush : signOf(signs, fabric).colour;
      return sum + (Number.parseInt(colour.slice(at, at + 2), 16) * (areas[i] ?? 0)) / whole;
    }, 0),
  );
  return `#${channels.map((channel) => Math.round(channel).toString(16).padStart(2, '0')).join('')}`;
};

const patchesInTop = (plan: QuiltPlan): ((thing: TopThing) => readonly ClothShape[]) => {
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
 * One path for each colour.
 *
 * @param of.share of each colour that stays; the rest is white
 */
export const clothPaths = (of: {
  readonly shapes: readonly ClothShape[];
  readonly signs: ClothSigns;
  readonly share?: number;
  readonly attributes?: Attributes;
}): readonly string[] => {
  const byCloth = new Map<string, Polygon[]>();
  for (const { fabric, points, colour } of of.shapes) {
    const shown = colour ?? (fabric === null ? hush : signOf(of.signs, fabric).colour);
    const known = byCloth.get(shown);
    if (known === undefined) byCloth.set(shown, [points]);
    else known.push(points);
  }
  return [...byCloth].map(([colour, outlines]) =>
    element('path', { d: pathOf(outlines), fill: paler(colour, of.share ?? 1), ...of.attributes }),
  );
};

/** The edge of a patch as it is drawn in the top at a scale. */
export const topEdge = ({ blocks }: QuiltPlan, scale: number) =>
  ({
    stroke: ink,
    'stroke-width': edgeWidth({ blocks, scale, widthPt: patchEdgePt }),
    'stroke-linejoin': 'round',
  }) as const;
