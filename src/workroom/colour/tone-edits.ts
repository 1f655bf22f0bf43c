// Cloths by tone: what one does to the colourings of one block, of several, or of all; each a change of the document's draft.
import type { QuiltDocument } from '#craft/design';
import { limits } from '#craft/limits';

type Block = QuiltDocument['blocks'][number];

/** Tones that a block's own description names, and those that its colourings give cloths to. */
export const tonesWithin = (block: Block): readonly string[] => {
  const { recipe, patches, drawing, colourings } = block;
  const own =
    recipe === undefined
      ? []
      : recipe.kind === 'log-cabin'
        ? [
            ...(recipe.centreTone === undefined ? [] : [recipe.centreTone]),
            ...recipe.rounds.flatMap((round) => round.tones),
          ]
        : recipe.units.flatMap((unit) => unit.tones);
  return [
    ...new Set([
      ...own,
      ...(patches?.list.map(({ tone }) => tone) ?? []),
      ...(drawing?.tonesAt.map(({ tone }) => tone) ?? []),
      ...Object.values(colourings ?? {}).flatMap((colouring) => Object.keys(colouring)),
    ]),
  ];
};

export interface ToneUse {
  readonly tone: string;
  /** Ids of the blocks that have it. */
  readonly blocks: readonly string[];
  /** The cloths that it stands for there, in any colouring. */
  readonly cloths: readonly string[];
}

/** Every tone of the quilt: light before dark before all others, then by name. */
export const tonesOfQuilt = (document: Pick<QuiltDocument, 'blocks'>): readonly ToneUse[] => {
  const uses = new Map<string, { blocks: string[]; cloths: Set<string> }>();
  for (const block of document.blocks) {
    for (const tone of tonesWithin(block)) {
      const use = uses.get(tone) ?? { blocks: [], cloths: new Set() };
      uses.set(tone, use);
      use.blocks.push(block.id);
      for (const cloth of clothsIn(block, tone)) use.cloths.add(cloth);
    }
  }
  return [...uses]
    .map(([tone, { blocks, cloths }]) => ({ tone, blocks, cloths: [...cloths] }))
    .toSorted((a, b) => rankOf(a.tone) - rankOf(b.tone) || (a.tone < b.tone ? -1 : 1));
};

/** The trade's four, from light to what stands out. */
const usualTones = ['light', 'medium', 'dark', 'accent'];

/** "light 2" is a light. */
const rankOf = (tone: string): number => {
  const rank = usualTones.findIndex((usual) => tone.toLowerCase().startsWith(usual));
  return rank < 0 ? usualTones.length : rank;
};

/** In any colouring of the block; a tone without an entry names a cloth itself. */
const clothsIn = (block: Block, tone: string): readonly string[] => {
  const found = Object.values(block.colourings ?? {}).flatMap((colouring) => colouring[tone] ?? []);
  return found.length > 0 ? found : [tone];
};

/**
 * A tone gets one cloth, or a list that is drawn from, in these blocks and in all their colourings, or in one of them. Blocks that have no such
 * tone stay.
 */
export const recolourTone = (
  draft: Pick<QuiltDocument, 'blocks'>,
  of: {
    readonly tone: string;
    readonly cloths: readonly string[];
    readonly blocks: readonly string[];
    readonly colouring?: string;
  },
): void => {
  const cloths = [...new Set(of.cloths)];
  const [first] = cloths;
  if (first === undefined) return;
  for (const block of draft.blocks) {
    if (!of.blocks.includes(block.id) || !tonesWithin(block).includes(of.tone)) continue;
    block.colourings ??= { default: {} };
    for (const [name, colouring] of Object.entries(block.colourings)) {
      if (of.colouring !== undefined && of.colouring !== name) continue;
      colouring[of.tone] = cloths.length === 1 ? first : cloths;
    }
  }
};

/** In one colouring of a block, each of two tones gets the cloths of the other. */
export const exchangeTones = (
  draft: Pick<QuiltDocument, 'blocks'>,
  of: { readonly block: string; readonly colouring: string; readonly tones: readonly [string, string] },
): void => {
  const block = draft.blocks.find(({ id }) => id === of.block);
  if (block === undefined) return;
  block.colourings ??= {};
  const [one, other] = of.tones;
  const known = block.colourings[of.colouring] ?? {};
  block.colourings[of.colouring] = { ...known, [one]: known[other] ?? other, [other]: known[one] ?? one };
};

/** Whether any tone is drawn from a list. */
export const isScrappy = ({ blocks }: Pick<QuiltDocument, 'blocks'>): boolean =>
  blocks.some(({ colourings }) =>
    Object.values(colourings ?? {}).some((colouring) =>
      Object.values(colouring).some((cloth) => typeof cloth !== 'string' && cloth.length > 1),
    ),
  );

/** The scrappy cloths are drawn anew; after the last draw that a document may ask for comes the first. */
export const drawAgain = (draft: QuiltDocument): void => {
  draft.draw = ((draft.draw ?? 1) % limits.draws) + 1;
};
