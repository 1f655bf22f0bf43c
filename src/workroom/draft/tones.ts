// The tones that a patch can be given: those of its block, and each cloth of the quilt by itself.
import type { QuiltDocument } from '#craft/design';
import type { Drawn } from '#craft/redrawing';
import { type Block, clothOf } from './block-edits.ts';

export interface ToneChoice {
  readonly tone: string;
  readonly words: string;
  readonly cloth: string;
  readonly of: 'block' | 'cloths';
}

export const toneChoices = (block: Block, drawn: Drawn, fabrics: QuiltDocument['fabrics']): readonly ToneChoice[] => {
  const named = Object.keys(block.colourings?.default ?? {});
  const used = new Set([...drawn.patches.map(({ tone }) => tone), ...named]);
  const nameOf = (cloth: string): string => fabrics.find(({ id }) => id === cloth)?.name || cloth;
  const own = [...used].filter((tone) => named.includes(tone) || !fabrics.some(({ id }) => id === tone));
  return [
    ...own.map((tone): ToneChoice => {
      const cloth = clothOf(block, tone);
      return { tone, words: `${tone}: ${nameOf(cloth)}`, cloth, of: 'block' };
    }),
    // a cloth whose name is a tone of the block cannot be named by itself
    ...fabrics
      .filter(({ id }) => !own.includes(id))
      .map(({ id, name }): ToneChoice => ({ tone: id, words: name || id, cloth: id, of: 'cloths' })),
  ];
};

/** What a first patch is laid in: another cloth than the ground's. */
export const usualTone = (choices: readonly ToneChoice[], drawn: Drawn): string => {
  const ground = choices.find(({ tone }) => tone === drawn.patches[0]?.tone);
  return (choices.find(({ cloth }) => cloth !== ground?.cloth) ?? choices[0])?.tone ?? '';
};
