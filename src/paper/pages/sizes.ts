// Other sizes of the quilt in one pattern: what each of them needs of its own, beside the shared steps.
import type { BlockPlan, QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { drawQuilt } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import type { Swatch } from './cloth.ts';
import { quiltAlt } from './cover.ts';
import { type ClothCutting, cuttingCharts } from './cutting.ts';
import { type FinishPart, finishParts } from './finish.ts';
import { type TopPages, topPages } from './top.ts';

/** A size that is printed beside the quilt as drawn. */
export interface SizedPlan {
  readonly title: string;
  readonly plan: QuiltPlan;
}

/** What of the pattern each size has for itself. */
export interface SizePages {
  /** "Wall hanging, 22 × 22 in" */
  readonly title: string;
  readonly picture: Picture;
  readonly cutting: readonly ClothCutting[];
  readonly top: TopPages | null;
  readonly finish: readonly FinishPart[];
}

/** The name of a size with its finished measure. */
export const sizeTitle = ({ title, plan }: SizedPlan): string => `${title}, ${sizeOf(plan)}`;

export const sizeOf = ({ top, quilt }: QuiltPlan): string => checkSize([top.set.width, top.set.height], quilt);

export const sizePages = (of: {
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly album: Album;
  readonly has: (chapter: 'cutting' | 'top' | 'finishing') => boolean;
}): readonly SizePages[] =>
  of.sizes.map((size, i) => {
    const { plan } = size;
    const own: Album = new Map();
    const drawn = { plan, signs: of.signs, album: own };
    const pages: SizePages = {
      title: sizeTitle(size),
      picture: shown(
        own,
        'quilt',
        drawQuilt({ ...drawn, fitPt: [150, 110], fill: 'colour', alt: quiltAlt(plan, sizeOf(plan)) }),
      ),
      cutting: of.has('cutting') ? cuttingCharts({ ...drawn, swatches: of.swatches }) : [],
      top: of.has('top') ? topPages(drawn) : null,
      finish: of.has('finishing') ? finishParts(drawn) : [],
    };
    return moved({ pages, from: own, into: of.album, prefix: `size-${i + 1}-` });
  });

/** Pictures of one size under names that no other size has. */
const moved = <T>(of: {
  readonly pages: T;
  readonly from: Album;
  readonly into: Album;
  readonly prefix: string;
}): T => {
  for (const [name, svg] of of.from) of.into.set(`${of.prefix}${name}`, svg);
  const renamed = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(renamed);
    if (part === null || typeof part !== 'object') return part;
    const isPicture = 'name' in part && 'alt' in part && 'widthPt' in part;
    return Object.fromEntries(
      Object.entries(part).map(([key, value]) => [
        key,
        isPicture && key === 'name' && of.from.has(String(value)) ? `${of.prefix}${value}` : renamed(value),
      ]),
    );
  };
  return renamed(of.pages) as T;
};

/** The entry of the same block, colouring and mirroring in another size; 0 of them where it has none. */
export const countIn = (plan: QuiltPlan, entry: BlockPlan): number =>
  plan.blocks.find(
    ({ id, colouring, mirror }) => id === entry.id && colouring === entry.colouring && mirror === entry.mirror,
  )?.count ?? 0;

/** Every cloth that any of the sizes uses, in the document's order, so that one list of letters serves all. */
export const withAllCloths = (plan: QuiltPlan, sizes: readonly SizedPlan[]): QuiltPlan => {
  if (sizes.length === 0) return plan;
  const plans = [plan, ...sizes.map((size) => size.plan)];
  return {
    ...plan,
    fabrics: plan.quilt.fabrics.flatMap(({ id }) => {
      const fabric = plans.flatMap(({ fabrics }) => fabrics).find((one) => one.id === id);
      return fabric === undefined ? [] : [fabric];
    }),
  };
};

/** Blocks of the quilt as drawn, then those that only another size has, each with the plan that it stands in. */
export const blocksOfAll = (
  plan: QuiltPlan,
  sizes: readonly SizedPlan[],
): readonly { readonly plan: QuiltPlan; readonly block: BlockPlan; readonly counts: readonly number[] }[] => {
  const plans = [plan, ...sizes.map((size) => size.plan)];
  return plans.flatMap((own, i) =>
    own.blocks
      .filter((block) => plans.slice(0, i).every((before) => countIn(before, block) === 0))
      .map((block) => ({ plan: own, block, counts: plans.map((other) => countIn(other, block)) })),
  );
};

/** "36 · 9": as many as each size takes, the quilt as drawn first. */
export const countsText = (counts: readonly number[], each = 1): string =>
  counts.map((count) => String(count * each)).join(' · ');
