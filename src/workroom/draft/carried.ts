// A block on its way from one quilt to another: with the blocks in its centre and the cloths that it is of.
import type { QuiltDocument } from '#craft/design';
import { parseMeasure } from '#craft/measure';
import { addBlock, type Block, cabinOf, centreBlockOf, type Fabric, freeId } from './block-edits.ts';
import { tonesOfCabin } from './cabin-edits.ts';

/** The first block is the one that was meant; the others lie in its centre. */
export interface CarriedBlock {
  readonly unit: QuiltDocument['unit'];
  readonly blocks: readonly Block[];
  readonly fabrics: readonly Fabric[];
}

/** @returns null where the quilt has no such block */
export const carriedFrom = (
  { unit, blocks, fabrics }: Pick<QuiltDocument, 'unit' | 'blocks' | 'fabrics'>,
  id: string,
): CarriedBlock | null => {
  const wanted = [id];
  for (const name of wanted) {
    const centre = centreBlockOf(blocks.find((block) => block.id === name));
    if (centre !== null && !wanted.includes(centre)) wanted.push(centre);
  }
  const own = wanted.flatMap((name) => blocks.find((block) => block.id === name) ?? []);
  if (own[0]?.id !== id) return null;
  const used = new Set(own.flatMap(clothsOf));
  return structuredClone({ unit, blocks: own, fabrics: fabrics.filter((fabric) => used.has(fabric.id)) });
};

/** A copy that a page kept, or another put there: whatever is no carried block is none. */
export const carriedIn = (value: unknown): CarriedBlock | null => {
  if (typeof value !== 'object' || value === null) return null;
  const { unit, blocks, fabrics } = value as Record<string, unknown>;
  const isList = (list: unknown): boolean =>
    Array.isArray(list) && list.every((one: unknown) => typeof (one as { id?: unknown } | null)?.id === 'string');
  if ((unit !== 'in' && unit !== 'cm') || !isList(blocks) || !isList(fabrics)) return null;
  return (blocks as readonly unknown[]).length === 0 ? null : (value as CarriedBlock);
};

/**
 * Cloths of the same name are taken for the same; others join the quilt's. Where the quilts measure otherwise, every length names its
 * unit and stays what it was.
 *
 * @returns the id that the block has here
 */
export const putCarried = (draft: QuiltDocument, carried: CarriedBlock): string => {
  const isOther = carried.unit !== draft.unit;
  const cloths = new Map(
    carried.fabrics.map((fabric) => {
      const same = draft.fabrics.find((one) => nameOf(one) === nameOf(fabric));
      if (same !== undefined) return [fabric.id, same.id] as const;
      const own = { ...structuredClone(fabric), id: freeId(fabric.id, draft.fabrics) };
      draft.fabrics.push(isOther ? measuredFabric(own, carried.unit) : own);
      return [fabric.id, own.id] as const;
    }),
  );
  const ids = new Map<string, string>();
  const taken: { readonly id: string }[] = [...draft.blocks];
  for (const { id } of carried.blocks) {
    const free = freeId(id, taken);
    taken.push({ id: free });
    ids.set(id, free);
  }
  const blocks = carried.blocks.map((block) => {
    const own = renamed(structuredClone(block), ids, cloths);
    return isOther ? measuredBlock(own, carried.unit) : own;
  });
  const [first, ...inner] = blocks;
  if (first === undefined) throw new Error('a carried block is no block');
  addBlock(draft, first);
  draft.blocks.push(...inner);
  return first.id;
};

/** A quilt of the block alone, four by four. */
export const quiltOf = ({ unit, blocks, fabrics }: CarriedBlock): QuiltDocument => {
  const [first] = blocks;
  const row = () => Array.from({ length: 4 }, () => ({ block: first?.id ?? '' }));
  return structuredClone({
    format: 'seamstead-quilt',
    version: 1,
    title: 'New quilt',
    unit,
    fabrics: [...fabrics],
    blocks: [...blocks],
    top: { set: 'straight', rows: [row(), row(), row(), row()] },
  });
};

const nameOf = ({ id, name }: Fabric): string => (name || id).trim().toLowerCase();

/** Tones as the block itself names them; those of the collection are the trade's four. */
const tonesIn = ({ recipe, patches, drawing, from }: Block): readonly string[] => {
  if (recipe?.kind === 'log-cabin') return tonesOfCabin(recipe);
  if (recipe?.kind === 'units') return recipe.units.flatMap(({ tones }) => tones);
  if (from !== undefined) return ['light', 'medium', 'dark', 'accent'];
  return [...(patches?.list ?? []), ...(drawing?.tonesAt ?? [])].map(({ tone }) => tone);
};

/** A tone that some colouring has no entry for names its cloth itself. */
const bareTones = (block: Block): readonly string[] => {
  const colourings = Object.values(block.colourings ?? { default: {} });
  return [...new Set(tonesIn(block))].filter((tone) => colourings.some((colouring) => colouring[tone] === undefined));
};

const clothsOf = (block: Block): readonly string[] => [
  ...bareTones(block),
  ...Object.values(block.colourings ?? {}).flatMap((colouring) => Object.values(colouring).flat()),
  ...(block.frame ?? []).map(({ fabric }) => fabric),
];

const renamed = (block: Block, ids: ReadonlyMap<string, string>, cloths: ReadonlyMap<string, string>): Block => {
  const cloth = (id: string): string => cloths.get(id) ?? id;
  // what names a cloth that is called otherwise here gets an entry; a centre's tone may get its cloth from the centre
  const bare = bareTones(block).filter((tone) => cloths.has(tone) && cloth(tone) !== tone);
  if (bare.length > 0) {
    block.colourings ??= { default: {} };
    for (const colouring of Object.values(block.colourings)) for (const tone of bare) colouring[tone] ??= tone;
  }
  for (const colouring of Object.values(block.colourings ?? {}))
    for (const [tone, own] of Object.entries(colouring))
      colouring[tone] = typeof own === 'string' ? cloth(own) : own.map(cloth);
  for (const strip of block.frame ?? []) strip.fabric = cloth(strip.fabric);
  const cabin = cabinOf(block);
  const centre = centreBlockOf(block);
  if (cabin !== null && centre !== null) cabin.centre = { block: ids.get(centre) ?? centre };
  return { ...block, id: ids.get(block.id) ?? block.id };
};

type Unit = QuiltDocument['unit'];
type Written = string | number;

/** The same length where another unit is usual: "9" becomes "9 in". */
const measured = <T>(value: T, unit: Unit): T => {
  if (Array.isArray(value)) return value.map((one) => measured<unknown>(one, unit)) as T;
  if (typeof value !== 'string' && typeof value !== 'number') return value;
  const read = parseMeasure(value as Written);
  return read.ok && read.value.unit === null ? (`${value} ${unit}` as T) : value;
};

const measuredBlock = (block: Block, unit: Unit): Block => {
  if (block.size !== undefined) block.size = measured(block.size, unit);
  for (const strip of block.frame ?? []) strip.width = measured(strip.width, unit);
  const cabin = cabinOf(block);
  if (cabin !== null) {
    cabin.centre = measured(cabin.centre, unit);
    for (const round of cabin.rounds) round.width = measured(round.width, unit);
  }
  return block;
};

/** A price is of a yard here and of a metre there: it is left behind. */
const measuredFabric = ({ price: _, ...fabric }: Fabric, unit: Unit): Fabric => {
  if (fabric.usableWidth !== undefined) fabric.usableWidth = measured(fabric.usableWidth, unit);
  if (fabric.photo !== undefined) fabric.photo.width = measured(fabric.photo.width, unit);
  for (const end of fabric.ends ?? []) end.size = measured(end.size, unit);
  const { repeat, bought } = fabric;
  if (repeat !== undefined) {
    repeat.along = measured(repeat.along, unit);
    if (repeat.across !== undefined) repeat.across = measured(repeat.across, unit);
    repeat.motif = measured(repeat.motif, unit);
  }
  if (typeof bought === 'object') {
    if ('sheet' in bought) bought.sheet = measured(bought.sheet, unit);
    if ('sheets' in bought) for (const sheet of bought.sheets) sheet.size = measured(sheet.size, unit);
    if ('lengths' in bought)
      bought.lengths = bought.lengths.map((one) =>
        typeof one === 'object' ? { ...one, length: measured(one.length, unit) } : measured(one, unit),
      );
  }
  return fabric;
};
