// A block's colourings: a cloth for every tone, from the colouring, from the block in its centre, or by its own name.
import type { WrittenBlock } from './document.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import { pointer } from './pointer.ts';
import type { BlockDesign, Colouring, ToneFabric } from './quilt.ts';
import type { Reading } from './reading.ts';
import { type ToneUses, tonesOf, tonesWritten } from './tone-uses.ts';

export interface ColouringsAt {
  readonly block: WrittenBlock;
  readonly path: string;
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
  /** The block that a log cabin's pieced centre names, where it could be read. */
  readonly centre: BlockDesign | null;
}

/** Where the block names no colouring, each tone is a cloth's own name under "default". */
export const readColourings = (at: ColouringsAt): BlockDesign['colourings'] => {
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

const readColouring = ({ block, reading, fabrics, centre, colouring, written, place }: ColouringAt): Colouring => {
  const read: Record<string, ToneFabric> = {};
  for (const [tone, fabric] of Object.entries(written)) {
    const path = `${place}${pointer([tone])}`;
    if (!reading.name(tone, path)) continue;
    const listed = typeof fabric === 'string' ? [fabric] : fabric;
    listed.forEach((found, i) => {
      if (!fabrics.has.has(found)) reading.report({ code: 'design/unknown-fabric', path, found, known: fabrics.ids });
      else if (listed.indexOf(found) < i) reading.report({ code: 'design/scrap-twice', path, tone, found });
    });
    const known = listed.filter((found) => fabrics.has.has(found));
    if (known[0] !== undefined) read[tone] = known.length === 1 ? known[0] : known;
  }
  const inherited = centre?.colourings.default ?? {};
  for (const [tone, letters] of usesOf(block, centre)) {
    if (Object.hasOwn(written, tone)) continue;
    const unnamed = [...letters].filter((letter) => !Object.hasOwn(written, letter));
    if (letters.size > 0 && unnamed.length === 0) continue;
    for (const name of [tone, ...unnamed]) {
      const fabric = Object.hasOwn(inherited, name) ? inherited[name] : undefined;
      if (fabric !== undefined) read[name] = fabric;
    }
    if (Object.hasOwn(read, tone)) continue;
    if (letters.size > 0 && [...letters].every((letter) => Object.hasOwn(read, letter))) continue;
    if (fabrics.has.has(tone)) read[tone] = tone;
    else reading.report({ code: 'design/tone-without-fabric', path: place, block: block.id, colouring, tone });
  }
  return read;
};

const usesOf = (block: WrittenBlock, centre: BlockDesign | null): ToneUses => {
  const uses = new Map(tonesWritten(block));
  if (centre === null) return uses;
  for (const [tone, letters] of tonesOf(centre.shape)) uses.set(tone, new Set([...letters, ...(uses.get(tone) ?? [])]));
  return uses;
};
