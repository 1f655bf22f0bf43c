// The shape of one block: exactly one way of giving it, and a frame round it if there is one.
import { collection, collectionBlock } from '#craft/collection';
import { limits } from '#craft/limits';
import { compare } from '#ground/exact';
import { collectionShape } from './collection-shape.ts';
import type { WrittenBlock } from './document.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import type {
  BareShape,
  BlockShape,
  CollectionDesign,
  ElsewhereDesign,
  FramedDesign,
  LogCabinDesign,
} from './quilt.ts';
import { readDrawing } from './read-drawing.ts';
import { readSize } from './read-grid.ts';
import { type CabinSpot, readLogCabin } from './read-log-cabin.ts';
import { readPatches } from './read-patches.ts';
import { readUnits } from './read-units.ts';
import type { Spot } from './reading.ts';
import { patchCount, sizeOf } from './size.ts';

export interface ShapeSpot extends CabinSpot {
  readonly fabrics: NamedFabrics;
}

/** @param at.path of the block. @returns null when something in it was reported */
export const readShape = (block: WrittenBlock, at: ShapeSpot): BlockShape | null => {
  const bare = readBare(block, at);
  const frames = readFrames(block.frame ?? [], at);
  if (bare === null || frames === null) return null;
  if (frames.length > 0 && bare.kind === 'elsewhere') {
    const { path, reading } = at;
    reading.report({ code: 'design/elsewhere-has-no-pieces', path: `${path}/frame`, block: block.id, use: 'frame' });
    return null;
  }
  const shape: BlockShape =
    frames.length > 0 && bare.kind !== 'elsewhere' ? { kind: 'framed', inner: bare, frames } : bare;
  const found = patchCount(shape);
  if (found <= limits.patches) return shape;
  at.reading.report({ code: 'design/too-many', path: at.path, what: 'patches', found, most: limits.patches });
  return null;
};

const shapeKeys = ['recipe', 'patches', 'drawing', 'from', 'made'] as const;

const readBare = (block: WrittenBlock, at: ShapeSpot): BareShape | null => {
  const { path, reading } = at;
  const given = shapeKeys.filter((key) => block[key] !== undefined);
  if (given.length === 0) reading.report({ code: 'design/no-shape', path, block: block.id });
  if (given.length > 1) reading.report({ code: 'design/shape-twice', path, block: block.id, found: given });
  if (given.length !== 1) return null;
  const { recipe, patches, drawing, from } = block;
  if (patches !== undefined) return readPatches({ ...block, patches }, at);
  if (drawing !== undefined) return readDrawing({ ...block, drawing }, at);
  if (from !== undefined) return readFrom(block, from, at);
  if (recipe === undefined) return readElsewhere(block, at);
  if (recipe.kind === 'units') return readUnits({ ...block, recipe }, at);
  return agreeing(readLogCabin(recipe, { ...at, path: `${path}/recipe` }), block, at);
};

/** A log cabin's size follows from its recipe; a stated one must be the same. */
const agreeing = (
  shape: LogCabinDesign | null,
  block: WrittenBlock,
  { path, reading }: Spot,
): LogCabinDesign | null => {
  if (block.size === undefined) return shape;
  const found = readSize(block.size, { path: `${path}/size`, reading });
  if (shape === null || found === null) return null;
  const expected = sizeOf(shape);
  if (compare(found[0], expected[0]) !== 0 || compare(found[1], expected[1]) !== 0) {
    const { unit } = reading;
    reading.report({ code: 'design/size-disagrees', path: `${path}/size`, block: block.id, found, expected, unit });
  }
  return shape;
};

const readFrom = (block: WrittenBlock, from: string, { path, reading }: Spot): CollectionDesign | null => {
  const size = readSize(block.size, { path: `${path}/size`, reading });
  const found = collectionBlock(from);
  if (found === null) {
    const known = collection.map(({ id }) => id);
    reading.report({ code: 'design/unknown-in-collection', path: `${path}/from`, found: from, known });
  }
  return size && found && { kind: 'collection', from, size, shape: collectionShape(found, size) };
};

const readElsewhere = (block: WrittenBlock, { path, reading }: Spot): ElsewhereDesign | null => {
  const size = readSize(block.size, { path: `${path}/size`, reading });
  return size && { kind: 'elsewhere', size };
};

const readFrames = (
  written: NonNullable<WrittenBlock['frame']>,
  { path, reading, fabrics }: ShapeSpot,
): FramedDesign['frames'] | null => {
  const frames = written.map(({ width, fabric }, i) => {
    const read = reading.length({ written: width, path: `${path}/frame/${i}/width` });
    const known = fabrics.has.has(fabric);
    if (!known) {
      const place = `${path}/frame/${i}/fabric`;
      reading.report({ code: 'design/unknown-fabric', path: place, found: fabric, known: fabrics.ids });
    }
    return read && known ? { width: read, fabric } : null;
  });
  return frames.some((frame) => frame === null) ? null : frames.flatMap((frame) => frame ?? []);
};
