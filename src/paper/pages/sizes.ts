// Other sizes of the quilt in one pattern: what each of them needs of its own, beside the shared steps.
import type { ClothSigns } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { drawQuilt } from '#paper/drawing';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import type { Swatch } from './cloth.ts';
import { quiltAlt } from './cover.ts';
import { type ClothCutting, cuttingCharts } from './cutting.ts';
import { finishParts } from './finish.ts';
import type { FinishPart } from './finish-part.ts';
import { type SizedPlan, sizeOf, sizeTitle } from './sized.ts';
import { type TopPages, topPages } from './top.ts';

/** What of the pattern each size has for itself. */
export interface SizePages {
  /** "Wall hanging, 22 × 22 in" */
  readonly title: string;
  readonly picture: Picture;
  readonly cutting: readonly ClothCutting[];
  readonly top: TopPages | null;
  readonly finish: readonly FinishPart[];
}

export const sizePages = (of: {
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly album: Album;
  readonly hand: Hand;
  /** What the chapter on the quilt as drawn has said already: it is not said again. */
  readonly told: readonly FinishPart[];
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
      cutting: of.has('cutting') ? cuttingCharts({ ...drawn, swatches: of.swatches, hand: of.hand }) : [],
      top: of.has('top') ? topPages(drawn) : null,
      finish: of.has('finishing') ? finishParts(drawn).filter((part) => !isTold(part, of.told)) : [],
    };
    return moved({ pages, from: own, into: of.album, prefix: `size-${i + 1}-` });
  });

const isTold = ({ heading, lines }: FinishPart, told: readonly FinishPart[]): boolean =>
  told.some((part) => part.heading === heading && part.lines.join() === lines.join());

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
