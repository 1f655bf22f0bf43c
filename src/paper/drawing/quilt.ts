// The whole quilt as a picture: every block drawn once and set by reference, so that a top of hundreds
// of blocks stays small. The hatched form lays its hatches in the page's own directions, turned blocks
// included, and so draws every patch.

import type { BlockPlan, QuiltPlan } from '#craft';
import type { Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { isScrappyAt, patchesAt } from './drawn.ts';
import { emptyPlace } from './empty-place.ts';
import { hatchDefinitions, hatchId } from './hatching.ts';
import { hairlinePt, ink } from './ink.ts';
import { entriesOf, entryKey, inTop, placing } from './placed.ts';
import { framed, pathOf, thinness } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, group, picture } from './svg.ts';

export interface QuiltPicture {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  /** Hatched: cloth is told apart without colour as well. */
  readonly fill: 'colour' | 'hatched';
  /** Width of the patches' edges; a hairline where nothing is said. */
  readonly edgePt?: number;
  readonly alt: string;
}

const edgeOf = ({ plan, edgePt }: QuiltPicture, scale: number) =>
  ({
    stroke: ink,
    'stroke-width': edgeWidth({ blocks: plan.blocks, scale, widthPt: edgePt ?? hairlinePt }),
    'stroke-linejoin': 'round',
  }) as const;

/** The wished width, or less where patches are so small that edges would be all there is to see. */
export const edgeWidth = (of: {
  readonly blocks: readonly BlockPlan[];
  readonly scale: number;
  readonly widthPt: number;
}): number => {
  const thinnest = of.blocks
    .flatMap(({ patches }) => patches)
    .reduce((least, { points }) => Math.min(least, thinness(points)), Number.POSITIVE_INFINITY);
  return Math.min(of.widthPt, edgeShare * thinnest * of.scale);
};

/** An eighth of a square's side. */
const edgeShare = 0.25;
const padPt = 1;

/** No text in it, so that it looks the same wherever it is rendered. */
export const drawQuilt = (of: QuiltPicture): Drawing => {
  const { set } = of.plan.top;
  const scale = Math.min((of.fitPt[0] - 2 * padPt) / set.width, (of.fitPt[1] - 2 * padPt) / set.height);
  const drawn = of.fill === 'hatched' ? hatchedQuilt(of, scale) : colouredQuilt(of, scale);
  return picture({
    widthPt: set.width * scale + 2 * padPt,
    heightPt: set.height * scale + 2 * padPt,
    alt: of.alt,
    parts: [...drawn.definitions, group({ transform: `translate(${padPt} ${padPt})` }, drawn.parts)],
  });
};

interface Drawn {
  readonly definitions: readonly string[];
  readonly parts: readonly string[];
}

const colouredQuilt = (of: QuiltPicture, scale: number): Drawn => {
  const { plan, signs } = of;
  const entries = entriesOf(plan);
  const blocks = plan.top.set.placed.map((_, place) => placedBlock({ plan, signs, scale, entries }, place));
  return {
    definitions: [blockDefinitions({ blocks: plan.blocks, signs, scale })],
    parts: [group(edgeOf(of, scale), [...stripPaths(plan, signs, scale), ...blocks])],
  };
};

/** By reference to its entry, unless its cloths are its own. */
export const placedBlock = (
  of: {
    readonly plan: QuiltPlan;
    readonly signs: ClothSigns;
    readonly scale: number;
    readonly entries: ReturnType<typeof entriesOf>;
  },
  place: number,
): string => {
  const { plan, signs, scale } = of;
  const placed = plan.top.set.placed[place];
  const found = placed && of.entries.get(entryKey(placed));
  if (placed === undefined || found === undefined) {
    throw new Error(`the top holds a block that the plan does not list: ${placed?.block ?? place}`);
  }
  const transform = placing({ placed, finished: found.entry.finished, scale });
  if (!isScrappyAt(plan, place)) return element('use', { href: `#${blockId(found.index)}`, transform });
  const block = { ...found.entry, patches: patchesAt(plan, place, found.entry) };
  return group({ transform }, blockPaths({ block, signs, scale }));
};

export const blockId = (index: number): string => `block-${index}`;

/** Each entry once, one path per cloth, from 0, 0. */
export const blockDefinitions = (of: {
  readonly blocks: readonly BlockPlan[];
  readonly signs: ClothSigns;
  readonly scale: number;
}): string =>
  element(
    'defs',
    {},
    of.blocks.map((block, index) => group({ id: blockId(index) }, blockPaths({ ...of, block }))).join(''),
  );

/** One block from 0, 0, one path per cloth. */
export const blockPaths = (of: {
  readonly block: BlockPlan;
  readonly signs: ClothSigns;
  readonly scale: number;
}): readonly string[] => {
  const { block, signs, scale } = of;
  if (block.patches.length === 0) return [emptyPlace(scaledSize(block, scale))];
  const byFabric = new Map<string, Polygon[]>();
  for (const patch of block.patches) append(byFabric, patch.fabric, framed(patch.points, { scale, x: 0, y: 0 }));
  return fabricPaths(byFabric, signs);
};

const scaledSize = ({ finished }: BlockPlan, scale: number): { readonly width: number; readonly height: number } => ({
  width: finished[0] * scale,
  height: finished[1] * scale,
});

const stripPaths = (plan: QuiltPlan, signs: ClothSigns, scale: number): readonly string[] => {
  const byFabric = new Map<string, Polygon[]>();
  for (const strip of plan.top.set.strips) {
    append(byFabric, strip.fabric, framed(strip.points, { scale, x: 0, y: 0 }));
  }
  return fabricPaths(byFabric, signs);
};

const hatchedQuilt = (of: QuiltPicture, scale: number): Drawn => {
  const { plan, signs } = of;
  const byFabric = new Map<string, Polygon[]>();
  const frame = { scale, x: 0, y: 0 };
  for (const strip of plan.top.set.strips) append(byFabric, strip.fabric, framed(strip.points, frame));
  const entries = entriesOf(plan);
  const empty: string[] = [];
  for (const [place, placed] of plan.top.set.placed.entries()) {
    const entry = entries.get(entryKey(placed))?.entry;
    if (entry?.patches.length === 0) {
      const transform = placing({ placed, finished: entry.finished, scale });
      empty.push(group({ transform }, [emptyPlace(scaledSize(entry, scale))]));
    }
    for (const patch of entry === undefined ? [] : patchesAt(plan, place, entry)) {
      append(byFabric, patch.fabric, framed(inTop(patch.points, placed, entry?.finished ?? [0, 0]), frame));
    }
  }
  const hatches = [...byFabric].map(([fabric, outlines]) =>
    element('path', { d: pathOf(outlines), fill: `url(#${hatchId(signOf(signs, fabric))})`, stroke: 'none' }),
  );
  return {
    definitions: [hatchDefinitions([...byFabric.keys()].map((fabric) => signOf(signs, fabric)))],
    parts: [group(edgeOf(of, scale), [...fabricPaths(byFabric, signs), ...empty]), ...hatches],
  };
};

const fabricPaths = (byFabric: ReadonlyMap<string, readonly Polygon[]>, signs: ClothSigns): readonly string[] =>
  [...byFabric].map(([fabric, outlines]) =>
    element('path', { d: pathOf(outlines), fill: signOf(signs, fabric).colour }),
  );

const append = (into: Map<string, Polygon[]>, fabric: string, outline: Polygon): void => {
  const outlines = into.get(fabric);
  if (outlines === undefined) into.set(fabric, [outline]);
  else outlines.push(outline);
};
