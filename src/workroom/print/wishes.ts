// What one likes to print: kept beside the quilts, never in them. The paper is among the likings.
import type { Unit } from '#craft/measure';
import { type Chapter, patternChapters, usualChapters } from '#paper/pages';
import type { PrintPaper } from '#wire';
import { type KeptValue, keptValue, type Preferences, parsed } from '#workroom/room';

export interface Liked {
  /** Of every pattern; null: the usual ones. */
  readonly chapters: readonly Chapter[] | null;
  /** Ids of other sizes, by the quilt that has them. */
  readonly sizes: Readonly<Record<string, readonly string[]>>;
}

/** What cannot be read is as usual. */
export const likedIn = (text: string | null): Liked => {
  const kept = parsed(text);
  const { chapters, sizes }: { readonly chapters?: unknown; readonly sizes?: unknown } =
    typeof kept === 'object' && kept !== null ? kept : {};
  const known = patternChapters.filter((chapter) => Array.isArray(chapters) && chapters.includes(chapter));
  return {
    chapters: known.length === 0 ? null : known,
    sizes: typeof sizes === 'object' && sizes !== null ? Object.fromEntries(Object.entries(sizes).map(strings)) : {},
  };
};

const strings = ([quilt, ids]: readonly [string, unknown]): readonly [string, readonly string[]] => [
  quilt,
  Array.isArray(ids) ? ids.filter((id): id is string => typeof id === 'string') : [],
];

export const openLiked = (): KeptValue<Liked> => keptValue({ key: 'seamstead/printing', read: likedIn });

/** Where she has chosen none, the one that shops sell beside the unit of the quilt. */
export const paperFor = (liked: Preferences['paper'], unit: Unit): PrintPaper => {
  if (liked !== 'by-unit') return liked;
  return unit === 'in' ? 'letter' : 'a4';
};

/** In the order of the pattern; null where it comes to the usual ones. At least one stays. */
export const withChapter = (
  chosen: readonly Chapter[] | null,
  chapter: Chapter,
  to: 'in' | 'out',
  usual: readonly Chapter[] = usualChapters,
): readonly Chapter[] | null => {
  const now = new Set(chosen ?? usual);
  if (to === 'in') now.add(chapter);
  else now.delete(chapter);
  if (now.size === 0) return chosen;
  const next = patternChapters.filter((one) => now.has(one));
  return next.length === usual.length && next.every((one) => usual.includes(one)) ? null : next;
};

/** The chapters by the stops of the job line that they come from. */
export const chaptersByStop: readonly { readonly stop: string; readonly chapters: readonly Chapter[] }[] = [
  { stop: 'The quilt', chapters: ['cover', 'quilt'] },
  { stop: 'Colour', chapters: ['colourways', 'swatches', 'colouring'] },
  { stop: 'Cut', chapters: ['cloth', 'cutting', 'pieces', 'templates', 'labels'] },
  { stop: 'Sew', chapters: ['blocks', 'chains', 'seam-test', 'boards', 'foundations', 'top'] },
  { stop: 'Finish', chapters: ['finishing'] },
  { stop: 'Teach', chapters: ['run-sheet', 'glossary', 'cautions', 'corrections'] },
];
