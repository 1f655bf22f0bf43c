// A part of the chapter on the top: a heading, what to know, a picture, a table, a list; the printer lays any of them out.
import type { QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import type { Album, Picture } from './album.ts';

export interface TopPart {
  readonly heading: string;
  readonly lead: readonly string[];
  readonly picture: Picture | null;
  readonly table: TopTable | null;
  readonly list: readonly string[];
}

export interface TopTable {
  readonly head: readonly string[];
  /** Shares of the room that is left; 0: as wide as what stands in it. */
  readonly shares: readonly number[];
  readonly rows: readonly (readonly string[])[];
}

export interface TopChapter {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

export const topPart = (of: Pick<TopPart, 'heading'> & Partial<TopPart>): TopPart => ({
  lead: [],
  picture: null,
  table: null,
  list: [],
  ...of,
});
