// Which tones of a block are cut round a motif, and has any of their cloths one? Where the pieces then lie is cutting's.
import type { DesignProblem } from './problems.ts';
import type { BlockDesign, Fabric } from './quilt.ts';
import { tonesOf } from './tone-uses.ts';

/** Tones that the block does not have, and tones that no colouring gives a cloth with a repeat. */
export const motifProblems = (of: {
  readonly blocks: readonly BlockDesign[];
  readonly cloths: readonly Fabric[];
}): readonly DesignProblem[] => {
  const repeats = new Set(of.cloths.flatMap(({ id, repeat }) => (repeat === null ? [] : [id])));
  return of.blocks.flatMap((block) => (block.motifs ?? []).flatMap((tone, i) => faultOf({ block, tone, i, repeats })));
};

const faultOf = (of: {
  readonly block: BlockDesign;
  readonly tone: string;
  readonly i: number;
  readonly repeats: ReadonlySet<string>;
}): readonly DesignProblem[] => {
  const { block, tone } = of;
  const path = `${block.path}/motifs/${of.i}`;
  const uses = tonesOf(block.shape);
  const letters = uses.get(tone);
  if (letters === undefined)
    return [{ code: 'design/unknown-motif-tone', path, block: block.id, found: tone, known: [...uses.keys()] }];
  const cloths = Object.values(block.colourings).flatMap((colouring) =>
    [tone, ...letters].flatMap((name) => colouring[name] ?? []),
  );
  return cloths.some((cloth) => of.repeats.has(cloth))
    ? []
    : [{ code: 'design/motif-without-repeat', path, block: block.id, tone }];
};
