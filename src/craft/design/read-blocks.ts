// The blocks of a document: one shape each, and a cloth for every tone in every colouring.
import { compare } from '#ground/exact';
import type { WrittenBlock } from './document.ts';
import { pointer } from './pointer.ts';
import type { BlockDesign, Colouring } from './quilt.ts';
import { readLogCabin } from './read-log-cabin.ts';
import { readPatches, readSize } from './read-patches.ts';
import type { Reading, Spot } from './reading.ts';
import { sizeOf } from './size.ts';

export interface NamedFabrics {
  readonly ids: readonly string[];
  readonly has: ReadonlySet<string>;
}

interface Around {
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
}

/** Blocks that could be read; the others are in the report. */
export const readBlocks = (written: readonly WrittenBlock[], around: Around): readonly BlockDesign[] => {
  const { reading } = around;
  const first = new Map<string, string>();
  return written.flatMap((block, i) => {
    const path = `/blocks/${i}`;
    const earlier = first.get(block.id);
    if (earlier !== undefined) {
      reading.report({ code: 'design/block-twice', path: `${path}/id`, id: block.id, first: earlier });
    } else first.set(block.id, path);
    reading.name(block.id, `${path}/id`);
    const shape = readShape(block, { path, reading });
    const colourings = readColourings({ block, path, ...around });
    return shape === null ? [] : [{ id: block.id, title: block.title ?? block.id, path, shape, colourings }];
  });
};

const shapeKeys = ['recipe', 'patches', 'drawing', 'from', 'made'] as const;

const readShape = (block: WrittenBlock, { path, reading }: Spot): BlockDesign['shape'] | null => {
  const given = shapeKeys.filter((key) => block[key] !== undefined);
  if (given.length === 0) reading.report({ code: 'design/no-shape', path, block: block.id });
  if (given.length > 1) reading.report({ code: 'design/shape-twice', path, block: block.id, found: given });
  if (given.length !== 1) return null;
  const { recipe, patches } = block;
  if (patches !== undefined) return readPatches({ ...block, patches }, { path, reading });
  if (recipe?.kind !== 'log-cabin') return null;
  const shape = readLogCabin(recipe, { path: `${path}/recipe`, reading });
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

/** In the order in which they first stand; also where the shape itself could not be read. */
const tonesOf = ({ recipe, patches }: WrittenBlock): readonly string[] => {
  if (recipe?.kind === 'log-cabin')
    return [...new Set([recipe.centreTone, ...recipe.rounds.flatMap((round) => round.tones)])];
  return [...new Set(patches?.list.map((patch) => patch.tone))];
};

interface ColouringsAt extends Around {
  readonly block: WrittenBlock;
  readonly path: string;
}

/** Where the block names no colouring, each tone is a cloth's own name under "default". */
const readColourings = (at: ColouringsAt): BlockDesign['colourings'] => {
  const { block, path, reading } = at;
  const read: Record<string, Colouring> = {};
  for (const [colouring, written] of Object.entries(block.colourings ?? { default: {} })) {
    const place = `${path}${pointer(['colourings', colouring])}`;
    if (reading.name(colouring, place)) read[colouring] = readColouring({ ...at, colouring, written, place });
  }
  return read;
};

interface ColouringAt extends ColouringsAt {
  readonly colouring: string;
  readonly written: NonNullable<WrittenBlock['colourings']>[string];
  readonly place: string;
}

const readColouring = ({ block, reading, fabrics, colouring, written, place }: ColouringAt): Colouring => {
  const read: Record<string, string> = {};
  for (const [tone, fabric] of Object.entries(written)) {
    const path = `${place}${pointer([tone])}`;
    if (!reading.name(tone, path)) continue;
    for (const found of typeof fabric === 'string' ? [fabric] : fabric) {
      if (fabrics.has.has(found)) read[tone] = found;
      else reading.report({ code: 'design/unknown-fabric', path, found, known: fabrics.ids });
    }
  }
  for (const tone of tonesOf(block)) {
    if (Object.hasOwn(written, tone)) continue;
    if (fabrics.has.has(tone)) read[tone] = tone;
    else reading.report({ code: 'design/tone-without-fabric', path: place, block: block.id, colouring, tone });
  }
  return read;
};
