// Blocks drafted on two or four squares a side:
// drawn by us from the geometry that the trade shares; names are those of the trade's books.
import type { CollectionBlock } from './block.ts';

export const fourPatches: readonly CollectionBlock[] = [
  {
    id: 'four-patch',
    name: 'Four Patch',
    otherNames: [],
    history:
      'A beginner’s block in early twentieth-century how-to texts: two dark and two light squares, joined checkerboard fashion.',
    source: 'R. McKim, 1931, attribution from memory',
    drawing: {
      kind: 'grid',
      grid: 2,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: ['0,0 1,0 1,1 0,1', '1,1 2,1 2,2 1,2'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['1,0 2,0 2,1 1,1', '0,1 1,1 1,2 0,2'],
        },
      ],
    },
  },
  {
    id: 'pinwheel',
    name: 'Pinwheel',
    otherNames: ['Windmill'],
    history: 'As “Windmill” it is listed among the elaborated four-patches in an early twentieth-century how-to text.',
    source: 'R. McKim, 1931, attribution from memory',
    drawing: {
      kind: 'grid',
      grid: 2,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: ['0,0 1,0 1,1', '2,0 2,1 1,1', '1,1 2,2 1,2', '0,1 1,1 0,2'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['0,0 1,1 0,1', '1,0 2,0 1,1', '1,1 2,1 2,2', '1,1 1,2 0,2'],
        },
      ],
    },
  },
  {
    id: 'broken-dishes',
    name: 'Broken Dishes',
    otherNames: [],
    history: 'Several layouts share this name; this is one of them.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 4,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: [
            '0,0 1,0 1,1',
            '1,0 2,0 1,1',
            '1,1 2,2 1,2',
            '1,1 1,2 0,2',
            '2,0 3,1 2,1',
            '4,0 4,1 3,1',
            '3,1 4,1 4,2',
            '2,1 3,1 2,2',
            '0,2 1,3 0,3',
            '2,2 2,3 1,3',
            '1,3 2,3 2,4',
            '0,3 1,3 0,4',
            '2,2 3,2 3,3',
            '3,2 4,2 3,3',
            '3,3 4,4 3,4',
            '3,3 3,4 2,4',
          ],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: [
            '0,0 1,1 0,1',
            '2,0 2,1 1,1',
            '1,1 2,1 2,2',
            '0,1 1,1 0,2',
            '2,0 3,0 3,1',
            '3,0 4,0 3,1',
            '3,1 4,2 3,2',
            '3,1 3,2 2,2',
            '0,2 1,2 1,3',
            '1,2 2,2 1,3',
            '1,3 2,4 1,4',
            '1,3 1,4 0,4',
            '2,2 3,3 2,3',
            '4,2 4,3 3,3',
            '3,3 4,3 4,4',
            '2,3 3,3 2,4',
          ],
        },
      ],
    },
  },
  {
    id: 'hourglass',
    name: 'Hourglass',
    otherNames: [],
    history: 'One square of four quarter-square triangles.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 2,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: ['0,0 2,0 1,1', '2,2 0,2 1,1'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['2,0 2,2 1,1', '0,2 0,0 1,1'],
        },
      ],
    },
  },
  {
    id: 'flying-geese',
    name: 'Flying Geese',
    otherNames: ['Wild Goose Chase'],
    history: 'As “Wild Goose Chase” it stands in the list of bird names of 1915.',
    source: 'M. D. Webster, Quilts: Their Story and How to Make Them, 1915, ch. VI',
    drawing: {
      kind: 'grid',
      grid: 4,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: ['2,0 4,2 0,2', '2,2 4,4 0,4'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: ['0,0 2,0 0,2', '2,0 4,0 4,2', '0,2 2,2 0,4', '2,2 4,2 4,4'],
        },
      ],
    },
  },
  {
    id: 'dutchmans-puzzle',
    name: 'Dutchman’s Puzzle',
    otherNames: [],
    history: 'Four pairs of flying geese, each turned a quarter on from the last.',
    source: 'common practice, no source',
    drawing: {
      kind: 'grid',
      grid: 4,
      cloths: [
        {
          tone: 'dark',
          letter: 'C',
          patches: [
            '0,0 1,1 0,2',
            '1,0 2,1 1,2',
            '4,0 3,1 2,0',
            '4,1 3,2 2,1',
            '4,4 3,3 4,2',
            '3,4 2,3 3,2',
            '0,4 1,3 2,4',
            '0,3 1,2 2,3',
          ],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: [
            '0,0 1,0 1,1',
            '0,2 1,1 1,2',
            '1,0 2,0 2,1',
            '1,2 2,1 2,2',
            '4,0 4,1 3,1',
            '2,0 3,1 2,1',
            '4,1 4,2 3,2',
            '2,1 3,2 2,2',
            '4,4 3,4 3,3',
            '4,2 3,3 3,2',
            '3,4 2,4 2,3',
            '3,2 2,3 2,2',
            '0,4 0,3 1,3',
            '2,4 1,3 2,3',
            '0,3 0,2 1,2',
            '2,3 1,2 2,2',
          ],
        },
      ],
    },
  },
];
