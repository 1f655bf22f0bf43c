// Scrappy tones over a whole top: which cloth every patch of every placed block is cut from. Pictures show it, the cloth
// is counted by it; kinds of piece and the order of sewing do not depend on it.
import type { BlockDesign, Colouring, Quilt } from '#craft/design';
import { type DraftedBlock, fabricsOf } from '#craft/drafting';
import { drawScraps } from '#craft/fabric';
import { cornerTolerance } from '#craft/limits';
import type { Note } from '#craft/plan';
import { pointInTop, type SetTop, touchingPairs } from '#craft/setting';

/** By placed block: the cloth of each patch, in the block's order; null where nothing is drawn. */
export type DrawnCloths = readonly (readonly string[] | null)[];

/** How a tone's cloths are named where they count as one: ids in order. */
export const sewnAs = (fabrics: readonly string[]): string => fabrics.toSorted().join(between);

export const clothsSewnAs = (name: string): readonly string[] => name.split(between);

/** No id holds it. */
const between = '|';

/** Our own choices: where the first draw begins, and how far from it the next one does. */
const firstSeed = 20_011;
const nextSeed = 1_000_003;

export const planScraps = (of: {
  readonly quilt: Quilt;
  readonly drafted: ReadonlyMap<string, DraftedBlock>;
  readonly set: SetTop;
}): { readonly drawn: DrawnCloths; readonly notes: readonly Note[] } => {
  const choices = choicesIn(of);
  const scrappy = choices.flatMap((patches, placed) =>
    patches.flatMap((list, patch) => (list.length > 1 ? [{ placed, patch, list }] : [])),
  );
  if (scrappy.length === 0) return { drawn: choices.map(() => null), notes: [] };
  const outlines = scrappy.map(({ placed, patch }) => {
    const place = of.set.placed[placed] as SetTop['placed'][number];
    const block = of.drafted.get(place.block) as DraftedBlock;
    return (block.patches[patch]?.points ?? []).map((p) => pointInTop(place, block.size, p));
  });
  const neighbours = touchingPairs(outlines, cornerTolerance * Math.max(of.set.width, of.set.height));
  const lists = scrappy.map(({ list }) => list);
  const { drawn, equal } = drawScraps({ lists, neighbours, seed: seedOf(lists, of.quilt.draw) });
  const cloths = choices.map((patches) =>
    patches.some((list) => list.length > 1) ? patches.map((list) => list[0] as string) : null,
  );
  scrappy.forEach(({ placed, patch }, i) => {
    (cloths[placed] as string[])[patch] = drawn[i] as string;
  });
  return { drawn: cloths, notes: [...equalNotes(equal, neighbours.length), ...unevenNotes(lists, drawn)] };
};

/** By placed block and patch: the cloths that it may be cut from. */
const choicesIn = (of: {
  readonly quilt: Quilt;
  readonly drafted: ReadonlyMap<string, DraftedBlock>;
  readonly set: SetTop;
}): readonly (readonly (readonly string[])[])[] => {
  const designs = new Map(of.quilt.blocks.map((b) => [b.id, b]));
  return of.set.placed.map(({ block, colouring }) => {
    const cloths = (designs.get(block) as BlockDesign).colourings[colouring] as Colouring;
    return (of.drafted.get(block) as DraftedBlock).patches.map((patch) => fabricsOf(patch, cloths));
  });
};

/** The same lists on the same patches give the same seed in the same draw. */
const seedOf = (lists: readonly (readonly string[])[], draw: number): number => {
  let seed = firstSeed + (draw - 1) * nextSeed;
  for (const sign of lists.map((list) => list.join()).join(';')) seed = (Math.imul(seed, 31) + sign.charCodeAt(0)) | 0;
  return seed;
};

const equalNotes = (equal: number, of: number): readonly Note[] =>
  equal === 0 ? [] : [{ code: 'fabric/equal-neighbours', level: 'warning', path: '/top', equal, of }];

const unevenNotes = (lists: readonly (readonly string[])[], drawn: readonly string[]): readonly Note[] => {
  const counts = new Map<string, Map<string, number>>();
  lists.forEach((list, i) => {
    const name = sewnAs(list);
    const known = counts.get(name) ?? new Map(list.map((fabric) => [fabric, 0]));
    known.set(drawn[i] as string, (known.get(drawn[i] as string) ?? 0) + 1);
    counts.set(name, known);
  });
  return [...counts].flatMap(([name, known]): readonly Note[] => {
    const [least, most] = [Math.min(...known.values()), Math.max(...known.values())];
    if (most - least <= 1) return [];
    return [{ code: 'fabric/uneven-scraps', level: 'note', path: '/top', fabrics: clothsSewnAs(name), least, most }];
  });
};
