// What the maker should know of a sound document: things in it that the top never uses.
import type { Quilt } from './quilt.ts';

export type DesignNote = {
  readonly code: 'design/unused-block';
  readonly level: 'warning';
  readonly path: string;
  readonly block: string;
};

export const designNotes = (quilt: Quilt): readonly DesignNote[] => {
  const used = new Set(quilt.top.rows.flat().flatMap((cell) => (cell.kind === 'block' ? [cell.block] : [])));
  return quilt.blocks
    .filter((block) => !used.has(block.id))
    .map(({ id, path }) => ({ code: 'design/unused-block', level: 'warning', path, block: id }));
};
