// Blocks with seams set in:
// drawn by us from the geometry that the trade shares; names are those of the trade's books.
import type { CollectionBlock } from './block.ts';

export const mitred: readonly CollectionBlock[] = [
  {
    id: 'attic-window',
    name: 'Attic Window',
    otherNames: ['Attic Windows'],
    history: 'A window with a mitred sash and sill; the inner corner of the mitre is set in.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 4,
      cloths: [
        {
          tone: 'medium',
          letter: 'B',
          patches: ['1,0 4,0 4,3 1,3'],
        },
        {
          tone: 'dark',
          letter: 'C',
          patches: ['0,0 1,0 1,3 0,4'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['0,4 1,3 4,3 4,4'],
        },
      ],
    },
  },
  {
    id: 'spool',
    name: 'Spool',
    otherNames: ['Empty Spool'],
    history: 'Four mitred sides round a square, set in; another version takes half-square triangles at the corners.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 3,
      cloths: [
        {
          tone: 'medium',
          letter: 'B',
          patches: ['1,1 2,1 2,2 1,2'],
        },
        {
          tone: 'dark',
          letter: 'C',
          patches: ['0,0 3,0 2,1 1,1', '0,3 1,2 2,2 3,3'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['0,0 1,1 1,2 0,3', '3,0 3,3 2,2 2,1'],
        },
      ],
    },
  },
];
