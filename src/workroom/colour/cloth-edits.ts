// What one does to the cloths of a quilt: each a change of the document's draft, and nothing else.
import type { QuiltDocument } from '#craft/design';
import { tonesWithin } from './tone-edits.ts';

export type Cloth = QuiltDocument['fabrics'][number];

/** "cloth", "cloth-2": a name that no cloth has yet. */
export const freeCloth = (fabrics: readonly Cloth[]): Cloth => {
  let id = 'cloth';
  for (let n = 2; fabrics.some((one) => one.id === id); n++) id = `cloth-${n}`;
  return { id, name: `Cloth ${fabrics.length + 1}`, colour: '#8a9a8b' };
};

export type PrintWay = NonNullable<Cloth['print']>;

/** A print without direction is what a document means where it says nothing. */
export const changePrint = (
  draft: Pick<QuiltDocument, 'fabrics'>,
  of: { readonly cloth: string; readonly print: PrintWay },
): void => {
  const own = draft.fabrics.find(({ id }) => id === of.cloth);
  if (own === undefined) return;
  if (of.print === 'none') delete own.print;
  else own.print = of.print;
};

/** Whether anything of the document but its list of cloths and its colourways names it; a tone may name a cloth too. */
export const isUsed = (document: QuiltDocument, id: string): boolean => {
  const { fabrics: _, colourways: __, ...rest } = document;
  return JSON.stringify(rest).includes(JSON.stringify(id));
};

/**
 * One cloth takes another's place, wherever the quilt names it as a cloth: in colourings, sashing, borders, plain squares, frames and the
 * finish. Where a tone is drawn from a list that would then name it twice, it stands there once.
 */
export const exchange = (draft: QuiltDocument, of: { readonly from: string; readonly to: string }): void => {
  const { from, to } = of;
  for (const block of draft.blocks) {
    for (const colouring of Object.values(block.colourings ?? {})) {
      for (const [tone, cloth] of Object.entries(colouring)) colouring[tone] = exchanged(cloth, of);
    }
    for (const frame of block.frame ?? []) if (frame.fabric === from) frame.fabric = to;
    for (const tone of tonesWithin(block)) {
      // a tone without an entry names the cloth itself
      if (tone !== from) continue;
      block.colourings ??= {};
      block.colourings.default ??= {};
      block.colourings.default[tone] ??= to;
    }
  }
  const tops = [draft, ...(draft.sizes ?? [])];
  for (const one of tops) {
    exchangeKeys(one.top, of);
    if (one.finish !== undefined) exchangeKeys(one.finish, of);
  }
};

/** Two cloths change places throughout. */
export const swapCloths = (draft: QuiltDocument, of: { readonly one: string; readonly other: string }): void => {
  const { one, other } = of;
  let between = 'between';
  while (draft.fabrics.some(({ id }) => id === between) || isUsed(draft, between)) between += '-';
  exchange(draft, { from: one, to: between });
  exchange(draft, { from: other, to: one });
  exchange(draft, { from: between, to: other });
};

const exchanged = (
  cloth: string | string[],
  { from, to }: { readonly from: string; readonly to: string },
): string | string[] => {
  if (typeof cloth === 'string') return cloth === from ? to : cloth;
  const list = [...new Set(cloth.map((one) => (one === from ? to : one)))];
  return list.length === 1 ? (list[0] ?? to) : list;
};

/** Keys under which a top or a finish names a cloth. */
const clothKeys: readonly string[] = [
  'fabric',
  'cornerFabric',
  'cornerstones',
  'settingFabric',
  'plain',
  'strip',
  'fill',
  'spacer',
];

const exchangeKeys = (part: object, of: { readonly from: string; readonly to: string }): void => {
  const fields = part as { [key: string]: unknown };
  for (const [key, value] of Object.entries(fields)) {
    if (clothKeys.includes(key) && value === of.from) fields[key] = of.to;
    else if (typeof value === 'object' && value !== null) exchangeKeys(value, of);
  }
};
