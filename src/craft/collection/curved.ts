// Blocks with curved seams:
// drawn by us from the geometry that the trade shares; names are those of the trade's books.
import type { CollectionBlock } from './block.ts';

export const curved: readonly CollectionBlock[] = [
  {
    id: 'drunkards-path',
    name: 'Drunkard’s Path',
    otherNames: [],
    history:
      'The unit of a whole family, Mill Wheel among them, that differ by how the units are turned and how many corners are cut round. How wide the quarter circle is drawn is free; three quarters of the unit is usual (common practice, no source).',
    source: 'Nebraska State Historical Society and International Quilt Study Center, Quilts A to Z',
    drawing: {
      kind: 'grid',
      grid: 4,
      cloths: [
        { tone: 'dark', letter: 'C', patches: ['0,1 3,4)0,4 0,4'] },
        { tone: 'light', letter: 'A', patches: ['0,1(0,4 0,0 4,0 4,4 3,4'] },
      ],
    },
  },
];
