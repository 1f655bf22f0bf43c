// Squares turned on their points, squared again with triangles:
// drawn by us from the geometry that the trade shares; names are those of the trade's books.
import type { CollectionBlock } from './block.ts';

export const squaresOnPoint: readonly CollectionBlock[] = [
  {
    id: 'square-in-a-square',
    name: 'Square in a Square',
    otherNames: ['Diamond in a Square'],
    history: 'Named as a traditional pattern in a study of tilings by squares.',
    source: 'Fisher, Quilt Designs Using Non-Edge-to-Edge Tilings by Squares, Bridges / ISAMA paper',
    drawing: {
      kind: 'grid',
      grid: 2,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: ['1,0 2,1 1,2 0,1'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['0,0 1,0 0,1', '1,0 2,0 2,1', '2,1 2,2 1,2', '0,1 1,2 0,2'],
        },
      ],
    },
  },
  {
    id: 'economy-patch',
    name: 'Economy Patch',
    otherNames: ['Square on Square'],
    history: 'A square, set on point, and squared again.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 4,
      cloths: [
        {
          tone: 'accent',
          letter: 'D',
          patches: ['1,1 3,1 3,3 1,3'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['2,0 3,1 1,1', '4,2 3,3 3,1', '2,4 1,3 3,3', '0,2 1,1 1,3'],
        },
        {
          tone: 'dark',
          letter: 'C',
          patches: ['0,0 2,0 0,2', '2,0 4,0 4,2', '4,2 4,4 2,4', '0,2 2,4 0,4'],
        },
      ],
    },
  },
  {
    id: 'sawtooth-star',
    name: 'Sawtooth Star',
    otherNames: ['Evening Star'],
    history: 'Eight points round a square, drafted on sixteen squares.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 4,
      cloths: [
        {
          tone: 'accent',
          letter: 'D',
          patches: ['1,1 3,1 3,3 1,3'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: [
            '0,0 1,0 1,1 0,1',
            '3,0 4,0 4,1 3,1',
            '0,3 1,3 1,4 0,4',
            '3,3 4,3 4,4 3,4',
            '1,0 3,0 2,1',
            '4,1 4,3 3,2',
            '3,4 1,4 2,3',
            '0,3 0,1 1,2',
          ],
        },
        {
          tone: 'dark',
          letter: 'C',
          patches: [
            '1,0 2,1 1,1',
            '3,0 3,1 2,1',
            '4,1 3,2 3,1',
            '4,3 3,3 3,2',
            '3,4 2,3 3,3',
            '1,4 1,3 2,3',
            '0,3 1,2 1,3',
            '0,1 1,1 1,2',
          ],
        },
      ],
    },
  },
  {
    id: 'snails-trail',
    name: 'Snail’s Trail',
    otherNames: ['Monkey Wrench'],
    history: 'A four-patch with four rounds of corner triangles, sewn from the inside outward.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 16,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: [
            '6,6 8,6 8,8 6,8',
            '8,8 10,8 10,10 8,10',
            '8,12 6,10 10,10',
            '8,4 10,6 6,6',
            '8,12 4,12 4,8',
            '8,4 12,4 12,8',
            '16,8 12,12 12,4',
            '0,8 4,4 4,12',
            '16,8 16,16 8,16',
            '0,8 0,0 8,0',
          ],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: [
            '8,6 10,6 10,8 8,8',
            '6,8 8,8 8,10 6,10',
            '12,8 10,10 10,6',
            '4,8 6,6 6,10',
            '12,8 12,12 8,12',
            '4,8 4,4 8,4',
            '8,16 4,12 12,12',
            '8,0 12,4 4,4',
            '8,16 0,16 0,8',
            '8,0 16,0 16,8',
          ],
        },
      ],
    },
  },
];
