// The handout of one lesson: one block of the quilt, from cutting to its last check size, and nothing else.
import { planOfBlock, type QuiltPlan } from '#craft';
import type { IntegerSolver } from '#craft/strips';
import { clothSignsFor } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import type { Album } from './album.ts';
import type { Chapter } from './chapters.ts';
import { handoutHead } from './handout-head.ts';
import { type PatternPages, pagesOf } from './pattern.ts';

const chapters: readonly Chapter[] = ['handout', 'cutting', 'blocks', 'templates', 'cautions'];

/**
 * Cloths keep the letters that they have in the whole pattern; marks of pieces are the handout's own.
 *
 * @param search steps for the layouts of this block's pieces
 * @returns null where the top has no block of that id to sew
 */
export const handoutPages = (of: {
  readonly plan: QuiltPlan;
  readonly block: string;
  /** Which hand cuts; the right one when left out. */
  readonly hand?: Hand;
  readonly search: { readonly steps: number; readonly solver: IntegerSolver | null };
}): PatternPages | null => {
  const { plan, block, hand = 'right' } = of;
  const own = planOfBlock(plan, block, of.search);
  if (own === null) return null;
  const album: Album = new Map();
  return pagesOf({
    plan: own,
    sizes: [],
    signs: clothSignsFor(plan),
    album,
    chapters,
    changes: [],
    hand,
    handout: handoutHead({ plan, own, album, hand }),
  });
};
