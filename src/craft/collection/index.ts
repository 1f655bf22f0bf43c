// The collection: blocks that the trade has long used, drawn by us.
import type { CollectionBlock } from './block.ts';
import { curved } from './curved.ts';
import { eightPointed } from './eight-pointed.ts';
import { fourPatches } from './four-patches.ts';
import { logCabins } from './log-cabins.ts';
import { mitred } from './mitred.ts';
import { ninePatches } from './nine-patches.ts';
import { squaresOnPoint } from './squares-on-point.ts';
import { widerGrids } from './wider-grids.ts';

export type { CabinDrawing, CollectionBlock, GridDrawing } from './block.ts';

export const collection: readonly CollectionBlock[] = [
  ...fourPatches,
  ...ninePatches,
  ...squaresOnPoint,
  ...widerGrids,
  ...mitred,
  ...eightPointed,
  ...logCabins,
  ...curved,
];

const byId: ReadonlyMap<string, CollectionBlock> = new Map(collection.map((block) => [block.id, block]));

/** @returns null where the collection has no block of that id */
export const collectionBlock = (id: string): CollectionBlock | null => byId.get(id) ?? null;
