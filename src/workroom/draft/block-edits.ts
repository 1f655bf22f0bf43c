// What one does to the blocks of a quilt: each a change of the document's draft, and nothing else.
import type { QuiltDocument } from '#craft/design';
import { lightnessOf, parseColour } from '#craft/fabric';

export type Block = QuiltDocument['blocks'][number];
export type Fabric = QuiltDocument['fabrics'][number];
type Recipe = NonNullable<Block['recipe']>;
export type Cabin = Extract<Recipe, { kind: 'log-cabin' }>;
export const cabinOf = (block: Block | undefined): Cabin | null =>
  block?.recipe?.kind === 'log-cabin' ? block.recipe : null;

/** The block that lies in a log cabin's centre, by its id; null where none does. */
export const centreBlockOf = (block: Block | undefined): string | null => {
  const centre = cabinOf(block)?.centre;
  return typeof centre === 'object' && !Array.isArray(centre) ? centre.block : null;
};

/** A name that no block has yet: "log-cabin", "log-cabin-2". */
export const freeId = (wanted: string, taken: readonly { readonly id: string }[]): string => {
  let id = wanted;
  for (let n = 2; taken.some((one) => one.id === id); n++) id = `${wanted}-${n}`;
  return id;
};

/** The plain block that a blank quilt begins with, still untouched. */
const isUntouched = ({ patches, size, colourings }: Block): boolean =>
  patches?.list.length === 1 && size !== undefined && colourings === undefined;

/** A first real block takes the place of the plain one; a later one joins the others. */
export const addBlock = (draft: QuiltDocument, block: Block): void => {
  const [first] = draft.blocks;
  if (first === undefined || draft.blocks.length > 1 || !isUntouched(first)) {
    draft.blocks.push(block);
    return;
  }
  draft.blocks.splice(0, 1, block);
  for (const cell of draft.top.rows?.flat() ?? [])
    if ('block' in cell && cell.block === first.id) cell.block = block.id;
  if (draft.top.arrangement?.block === first.id) draft.top.arrangement.block = block.id;
};

/** A cloth for each of the trade's four tones: the lightest, the darkest, one between, and what stands out as an accent. */
export const firstColouring = (fabrics: readonly Fabric[], tones: readonly string[]): Record<string, string> => {
  const inFull = fabrics.map(({ id, colour }) => ({ id, colour: fullColour(colour) }));
  const sorted = inFull.toSorted((a, b) => lightnessOf(b.colour) - lightnessOf(a.colour));
  const [light, dark] = [sorted[0]?.id ?? '', sorted.at(-1)?.id ?? ''];
  const medium = sorted[Math.floor((sorted.length - 1) / 2)]?.id ?? light;
  const accent = inFull.toSorted((a, b) => brightness(b.colour) - brightness(a.colour))[0]?.id ?? dark;
  const found: Readonly<Record<string, string>> = { light, dark, medium, accent };
  return Object.fromEntries(tones.map((tone) => [tone, found[tone] ?? light]));
};

const fullColour = (written: string): string => {
  const read = parseColour(written);
  if (!read.ok) throw new Error(`a document holds the colour ${written}`);
  return read.value;
};

/** How far the strongest of red, green and blue is from the weakest. */
const brightness = (colour: string): number => {
  const parts = [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16));
  return Math.max(...parts) - Math.min(...parts);
};

/** One plain patch in the lightest cloth, on a grid of eight by eight. */
export const blankBlock = (draft: Pick<QuiltDocument, 'unit' | 'fabrics' | 'blocks'>): Block => ({
  id: freeId('block', draft.blocks),
  title: 'Drawn block',
  size: draft.unit === 'in' ? '8' : '24',
  patches: {
    grid: [8, 8],
    list: [
      {
        points: [
          [0, 0],
          [8, 0],
          [8, 8],
          [0, 8],
        ],
        tone: firstColouring(draft.fabrics, ['light']).light ?? '',
      },
    ],
  },
});

export const fromCollection = (
  draft: Pick<QuiltDocument, 'unit' | 'fabrics' | 'blocks'>,
  of: { readonly id: string; readonly name: string; readonly tones: readonly string[]; readonly size: string },
): Block => ({
  id: freeId(of.id, draft.blocks),
  title: of.name,
  from: of.id,
  size: of.size,
  colourings: { default: firstColouring(draft.fabrics, of.tones) },
});

export const colourTone = (block: Block, tone: string, cloth: string): void => {
  const colouring = coloured(block).default;
  if (colouring !== undefined) colouring[tone] = cloth;
};

export const coloured = (block: Block): NonNullable<Block['colourings']> => {
  block.colourings ??= {};
  block.colourings.default ??= {};
  return block.colourings;
};

/** The cloth that a tone stands for: a tone without an entry names its cloth itself. A list counts by its first. */
export const clothOf = (block: Block, tone: string): string => {
  const cloth = block.colourings?.default?.[tone] ?? tone;
  return typeof cloth === 'string' ? cloth : (cloth[0] ?? tone);
};

/** Where a block is used: it can go only when nowhere. */
export const usesOf = (document: QuiltDocument, id: string): number => {
  const { top, sizes = [], blocks } = document;
  const tops = [top, ...sizes.map((size) => size.top)];
  // a cell names its block under "block", wherever in a top it lies
  const inTops = tops.reduce(
    (all, one) => all + JSON.stringify(one).split(`"block":${JSON.stringify(id)}`).length - 1,
    0,
  );
  const inCentres = blocks.filter((block) => centreBlockOf(block) === id).length;
  return inTops + inCentres;
};
