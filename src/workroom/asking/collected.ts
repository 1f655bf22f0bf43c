// The collection as pictures to choose from: every block drafted once, in the tones that it is drawn in.
import { type CollectionBlock, collection } from '#craft/collection';
import { collectionShape } from '#craft/design';
import { draftBlock, type Patch } from '#craft/drafting';
import { rational } from '#ground/exact';

export interface CollectedBlock {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly tones: readonly string[];
  /** What it is pieced of. */
  readonly shape: 'strips' | 'triangles' | 'other';
  /** On a square of one unit. */
  readonly patches: readonly { readonly points: readonly number[]; readonly tone: string }[];
}

export const askCollection = (): readonly CollectedBlock[] => collection.map(collected);

const collected = (block: CollectionBlock): CollectedBlock => {
  const { id, name, otherNames } = block;
  const shape = collectionShape(block, [rational(1), rational(1)]);
  const drafted = draftBlock({ id, title: name, path: '', shape, colourings: {} });
  if (!drafted.ok) throw new Error(`the collection's block ${id} does not tile`);
  const { patches } = drafted.value;
  return {
    id,
    name,
    otherNames,
    tones: [...new Set(patches.map(({ tone }) => tone))],
    shape: shapeOf(patches),
    patches: patches.map(({ points, tone }) => ({ points: points.flatMap(({ x, y }) => [x, y]), tone })),
  };
};

const near = 1e-9;

/** Squares and strips alone; else with triangles; else with other slanted shapes and no triangle. */
const shapeOf = (patches: readonly Patch[]): CollectedBlock['shape'] => {
  const isSlanted = ({ points }: Patch): boolean =>
    points.some((a, i) => {
      const b = points[(i + 1) % points.length];
      return b !== undefined && Math.abs(a.x - b.x) > near && Math.abs(a.y - b.y) > near;
    });
  if (!patches.some(isSlanted)) return 'strips';
  return patches.some(({ points }) => points.length === 3) ? 'triangles' : 'other';
};
