// Traditional blocks for tests, out of test/fixtures/traditional-blocks.json.

import { readFileSync } from 'node:fs';
import type { Corner, Written } from './documents.ts';

export interface DrawnBlock {
  readonly id: string;
  readonly name: string;
  readonly grid: number;
  readonly piecing: 'straight' | 'set-in';
  readonly patches: readonly { readonly tone: string; readonly points: readonly Corner[] }[];
}

export const drawnBlocks = (
  JSON.parse(readFileSync(new URL('../fixtures/traditional-blocks.json', import.meta.url), 'utf8')) as {
    readonly blocks: readonly DrawnBlock[];
  }
).blocks;

/** The block as a document lists it; its tones are cloths of one name, the accent the middle one. */
export const drawnBlock = (id: string, size: number | string): Written => {
  const drawn = drawnBlocks.find((block) => block.id === id);
  if (!drawn) throw new Error(`no drawing of ${id}`);
  const tones = [...new Set(drawn.patches.map((patch) => patch.tone))];
  return {
    id,
    title: drawn.name,
    size,
    patches: { grid: [drawn.grid, drawn.grid], list: drawn.patches },
    colourings: { default: Object.fromEntries(tones.map((tone) => [tone, tone === 'accent' ? 'medium' : tone])) },
  };
};
