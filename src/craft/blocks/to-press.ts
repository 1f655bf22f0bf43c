// What pressing asks of the blocks: their seams, where they are set, and how they may be turned there without anyone seeing it.
import type { Natures } from '#craft/cloths';
import { outlineOf } from '#craft/drafting';
import { cornerTolerance } from '#craft/limits';
import type { EntryToPress } from '#craft/pressing';
import { type DrawnCloths, sewnAs } from '#craft/tones';
import type { PiecedEntry } from './pieced-entries.ts';
import { turnsAlike } from './turns-alike.ts';

export const entriesToPress = (
  entries: readonly PiecedEntry[],
  of: { readonly drawn: DrawnCloths; readonly natures: Natures },
): readonly EntryToPress[] =>
  entries.map(({ design, block, pieced, size, lists, places }) => {
    const slack = cornerTolerance * Math.max(...size);
    const patches = block.patches.map((patch, i) => {
      const cloths = lists[i] as readonly string[];
      return {
        points: outlineOf(patch, slack),
        cloth: sewnAs(cloths),
        isUpright:
          design.motifs?.includes(patch.tone) === true ||
          cloths.some((cloth) => of.natures.get(cloth)?.print !== 'none'),
      };
    });
    const drawn = places.map((place) => of.drawn[place] ?? null);
    return { pieced, size, places, turns: turnsAlike({ size, patches, drawn }) };
  });
