// What one does to the colourways of a quilt: each a change of the document's draft, and nothing else.
import type { QuiltDocument } from '#craft/design';
import { limits } from '#craft/limits';
import type { Cloth } from './cloth-edits.ts';

export type Colourway = NonNullable<QuiltDocument['colourways']>[number];

/** What a colourway may give of a cloth. */
export type Look = Colourway['fabrics'][string];

export const mostColourways = limits.colourways;

/** A colourway with the cloths of another, or of the quilt itself; @returns null where there are as many as there may be */
export const freeColourway = (document: QuiltDocument, from: string | null): Colourway | null => {
  const all = document.colourways ?? [];
  if (all.length >= mostColourways) return null;
  let n = all.length + 1;
  while (all.some(({ id }) => id === `colourway-${n}`)) n++;
  const source = all.find(({ id }) => id === from);
  const title = source === undefined ? `Colourway ${n}` : `${source.title || source.id}, a copy`;
  return { id: `colourway-${n}`, title: title.slice(0, limits.titleCharacters), fabrics: { ...source?.fabrics } };
};

export const addColourway = (draft: QuiltDocument, colourway: Colourway): void => {
  draft.colourways = [...(draft.colourways ?? []), colourway];
};

/** With the last of them the list itself goes. */
export const removeColourway = (draft: QuiltDocument, id: string): void => {
  const left = draft.colourways?.filter((one) => one.id !== id) ?? [];
  if (left.length === 0) delete draft.colourways;
  else draft.colourways = left;
};

/** The look of a cloth: its own, or in a colourway. An empty name is none: the cloth is then called by its id, or as in the quilt. */
export const changeLook = (
  draft: QuiltDocument,
  of: { readonly cloth: string; readonly colourway: string | null; readonly look: Look },
): void => {
  const { cloth, colourway, look } = of;
  const own = draft.fabrics.find(({ id }) => id === cloth);
  if (own === undefined) return;
  if (colourway === null) {
    Object.assign(own, look);
    if (own.name === '') delete own.name;
    return;
  }
  const way = draft.colourways?.find(({ id }) => id === colourway);
  if (way === undefined) return;
  const next = { ...way.fabrics[cloth], ...look };
  if (next.name === '') delete next.name;
  if (Object.keys(next).length > 0) way.fabrics[cloth] = next;
  else delete way.fabrics[cloth];
};

/** The photograph goes; the colour that was taken from it stays. */
export const removePhoto = (
  draft: QuiltDocument,
  of: { readonly cloth: string; readonly colourway: string | null },
): void => {
  const own = draft.fabrics.find(({ id }) => id === of.cloth);
  if (own === undefined) return;
  if (of.colourway === null) {
    delete own.photo;
    return;
  }
  const way = draft.colourways?.find(({ id }) => id === of.colourway);
  if (way === undefined) return;
  const { photo: _, ...look } = way.fabrics[of.cloth] ?? {};
  // its own colour stands in the way of the quilt's photograph
  way.fabrics[of.cloth] = { ...look, colour: look.colour ?? own.colour };
};

/** In this colourway the cloth looks as in the quilt itself. */
export const asInQuilt = (draft: QuiltDocument, of: { readonly cloth: string; readonly colourway: string }): void => {
  const way = draft.colourways?.find(({ id }) => id === of.colourway);
  if (way !== undefined) delete way.fabrics[of.cloth];
};

/** A cloth that leaves the quilt leaves its colourways. */
export const removeCloth = (draft: QuiltDocument, id: string): void => {
  draft.fabrics = draft.fabrics.filter((one: Cloth) => one.id !== id);
  for (const way of draft.colourways ?? []) delete way.fabrics[id];
};
