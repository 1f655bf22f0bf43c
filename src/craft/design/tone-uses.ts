// Which tones does a block use, and by which letters does the collection tell a tone's cloths apart?
import { collectionBlock } from '#craft/collection';
import type { WrittenBlock } from './document.ts';
import type { BlockShape, LogCabinDesign } from './quilt.ts';

/** Letters of each tone in the order in which they first stand; empty where a tone has none. */
export type ToneUses = ReadonlyMap<string, ReadonlySet<string>>;

interface Use {
  readonly tone: string;
  readonly letter?: string;
}

/** Those of a pieced centre included. */
export const tonesOf = (shape: BlockShape): ToneUses => gathered(usesIn(shape));

/** As written, so that they can be asked for where the shape could not be read; a pieced centre's are not in it. */
export const tonesWritten = ({ recipe, patches, drawing, from }: WrittenBlock): ToneUses => {
  if (from !== undefined) return gathered(usesInCollection(from));
  if (recipe?.kind === 'log-cabin') {
    const isPatch = typeof recipe.centre !== 'object' || Array.isArray(recipe.centre);
    const centre = isPatch && recipe.centreTone !== undefined ? [recipe.centreTone] : [];
    return gathered([...centre, ...recipe.rounds.flatMap((round) => round.tones)].map((tone) => ({ tone })));
  }
  const units = recipe?.units.flatMap(({ tones }) => tones) ?? [];
  const named = [...(patches?.list ?? []), ...(drawing?.tonesAt ?? [])];
  return gathered([...units.map((tone) => ({ tone })), ...named]);
};

const gathered = (uses: readonly Use[]): ToneUses => {
  const tones = new Map<string, Set<string>>();
  for (const { tone, letter } of uses) {
    const letters = tones.get(tone) ?? new Set();
    if (letter !== undefined) letters.add(letter);
    tones.set(tone, letters);
  }
  return tones;
};

const usesInCollection = (id: string): readonly Use[] => {
  const drawing = collectionBlock(id)?.drawing;
  if (drawing === undefined) return [];
  return drawing.kind === 'grid' ? drawing.cloths : [drawing.centre, ...drawing.rounds.flat()];
};

const usesIn = (shape: BlockShape): readonly Use[] => {
  switch (shape.kind) {
    case 'log-cabin':
      return [...centreUses(shape), ...shape.logs];
    case 'patches':
      return shape.patches;
    case 'units':
      return shape.units.flatMap(({ tones }) => tones.map((tone) => ({ tone })));
    case 'drawing':
      return shape.tonesAt;
    case 'collection':
      return usesIn(shape.shape);
    case 'elsewhere':
      return [];
    case 'framed':
      return usesIn(shape.inner);
  }
};

const centreUses = ({ centreBlock, centreTone, centreLetter }: LogCabinDesign): readonly Use[] => {
  if (centreBlock !== null) return usesIn(centreBlock.shape);
  return [centreLetter === undefined ? { tone: centreTone } : { tone: centreTone, letter: centreLetter }];
};
