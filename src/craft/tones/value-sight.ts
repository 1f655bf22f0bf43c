// Do light and dark read apart for every eye, and in every colourway? The same measure as the plan's own warnings, of the colours
// as they are seen.
import { inColourway, type Quilt } from '#craft/design';
import { blockDrafter, type DraftedBlock } from '#craft/drafting';
import type { Sight } from '#craft/fabric';
import type { QuiltPlan } from '#craft/plan';
import { lightnessBy } from './cloth-lightness.ts';
import { type ValueNote, valueNotes } from './value-plan.ts';

export interface ValuesNear extends Pick<ValueNote, 'block' | 'colouring' | 'light' | 'dark'> {
  /** Id of one of the other colourways; null: in the quilt's own cloths. */
  readonly colourway: string | null;
  /** Null: as most see them. */
  readonly sight: Sight | null;
}

/** Of what is near as most see it, no other eyes are told. */
const otherEyes: readonly Sight[] = ['protan', 'deutan', 'tritan'];

/** @source docs/formulas.md#sight */
export const valuesNear = ({ quilt, blocks }: Pick<QuiltPlan, 'quilt' | 'blocks'>): readonly ValuesNear[] => {
  const drafted = draftedOf(quilt, new Set(blocks.map(({ id }) => id)));
  const ways = [null, ...quilt.colourways].map((way) => ({
    id: way?.id ?? null,
    quilt: way === null ? quilt : inColourway(quilt, way),
  }));
  return ways.flatMap(({ id, quilt: own }) => {
    const seenBy = (sight: Sight | null): readonly ValuesNear[] =>
      valueNotes({ quilt: own, blocks, drafted, lightness: lightnessBy(own, sight) }).map(
        ({ block, colouring, light, dark }) => ({ block, colouring, light, dark, colourway: id, sight }),
      );
    const usual = seenBy(null);
    const isTold = ({ block, colouring }: ValuesNear): boolean =>
      usual.some((one) => one.block === block && one.colouring === colouring);
    return [...usual, ...otherEyes.flatMap((sight) => seenBy(sight).filter((near) => !isTold(near)))];
  });
};

const draftedOf = (quilt: Quilt, wanted: ReadonlySet<string>): ReadonlyMap<string, DraftedBlock> => {
  const draft = blockDrafter();
  return new Map(
    quilt.blocks.flatMap((design) => {
      const block = draft(design);
      if (!block.ok) throw new Error(`a planned block cannot be drafted: ${design.id}`);
      return wanted.has(design.id) ? [[design.id, block.value] as const] : [];
    }),
  );
};
