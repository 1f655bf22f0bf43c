// The collection as pictures to choose from: every block drafted once, in the tones that it is drawn in.
import { type CollectionBlock, collection } from '#craft/collection';
import { collectionShape } from '#craft/design';
import { draftBlock, type Patch } from '#craft/drafting';
import { rational } from '#ground/exact';
import { flat } from './flat.ts';

export interface CollectedBlock {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly tones: readonly string[];
  /** What it is pieced of. */
  readonly shape: 'strips' | 'triangles' | 'other';
  /** What it is drawn on, as the trade sorts blocks. */
  readonly family: BlockFamily;
  /** Every shape in it. */
  readonly shapes: readonly PatchShape[];
  /** On a square of one unit. */
  readonly patches: readonly { readonly points: readonly number[]; readonly tone: string }[];
}

/** By the squares a side: 2, 4, 8 …; 3, 6, 9 …; 5; 7; or logs, or the eight-pointed star's own grid. */
export type BlockFamily = 'four-patch' | 'nine-patch' | 'five-patch' | 'seven-patch' | 'logs' | 'eight-pointed';

export type PatchShape = 'square' | 'rectangle' | 'half-square' | 'quarter-square' | 'other';

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
    family: familyOf(block),
    shapes: [...new Set(patches.map(patchShapeOf))].toSorted((a, b) => shapeOrder.indexOf(a) - shapeOrder.indexOf(b)),
    patches: patches.map(({ points, tone }) => ({ points: flat(points), tone })),
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

const familyOf = ({ drawing }: CollectionBlock): BlockFamily => {
  if (drawing.kind === 'log-cabin') return 'logs';
  const { grid } = drawing;
  if (!Number.isInteger(grid)) return 'eight-pointed';
  if (grid === 5) return 'five-patch';
  if (grid === 7) return 'seven-patch';
  return grid % 3 === 0 ? 'nine-patch' : 'four-patch';
};

const shapeOrder: readonly PatchShape[] = ['square', 'rectangle', 'half-square', 'quarter-square', 'other'];

/** A right isosceles triangle is a half-square with its legs along the block's sides, a quarter-square with its long side along one. */
const patchShapeOf = ({ points }: Patch): PatchShape => {
  const sides = points.map((a, i) => {
    const b = points[(i + 1) % points.length] as (typeof points)[number];
    return {
      long: Math.hypot(b.x - a.x, b.y - a.y),
      isLevel: Math.abs(a.x - b.x) < near || Math.abs(a.y - b.y) < near,
    };
  });
  const level = sides.filter(({ isLevel }) => isLevel);
  const isAlike = (few: typeof sides): boolean => few.every(({ long }) => Math.abs(long - (few[0]?.long ?? 0)) < near);
  if (sides.length === 4 && level.length === 4) return isAlike(sides) ? 'square' : 'rectangle';
  if (sides.length !== 3) return 'other';
  if (level.length === 2) return isAlike(level) ? 'half-square' : 'other';
  const slanted = sides.filter(({ isLevel }) => !isLevel);
  const [base] = level;
  const isRight = base !== undefined && Math.abs((slanted[0]?.long ?? 0) * Math.SQRT2 - base.long) < near;
  return level.length === 1 && isAlike(slanted) && isRight ? 'quarter-square' : 'other';
};
