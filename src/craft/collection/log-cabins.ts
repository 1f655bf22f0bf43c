// Log cabins: a centre, and logs sewn round it in their order:
// drawn by us from the geometry that the trade shares; names are those of the trade's books.
import type { CollectionBlock } from './block.ts';

export const logCabins: readonly CollectionBlock[] = [
  {
    id: 'log-cabin',
    name: 'Log Cabin',
    otherNames: [],
    history:
      'Popular in the last quarter of the nineteenth century, often in silk and wool; the dark half lies at the lower right.',
    source:
      'Michigan State University Museum; M. D. Webster, Quilts: Their Story and How to Make Them, 1915, plate “American Log Cabin”',
    drawing: {
      kind: 'log-cabin',
      grid: 7,
      centre: { side: 1, tone: 'accent', letter: 'D' },
      logWidth: 1,
      order: ['left', 'top', 'right', 'bottom'],
      rounds: [
        [
          { tone: 'light', letter: 'A1' },
          { tone: 'light', letter: 'A1' },
          { tone: 'dark', letter: 'C1' },
          { tone: 'dark', letter: 'C1' },
        ],
        [
          { tone: 'light', letter: 'A2' },
          { tone: 'light', letter: 'A2' },
          { tone: 'dark', letter: 'C2' },
          { tone: 'dark', letter: 'C2' },
        ],
        [
          { tone: 'light', letter: 'A3' },
          { tone: 'light', letter: 'A3' },
          { tone: 'dark', letter: 'C3' },
          { tone: 'dark', letter: 'C3' },
        ],
      ],
    },
  },
  {
    id: 'courthouse-steps',
    name: 'Courthouse Steps',
    otherNames: [],
    history: 'Strips step out at the top and bottom, then side by side.',
    source: 'International Quilt Museum, loan text, 2025',
    drawing: {
      kind: 'log-cabin',
      grid: 7,
      centre: { side: 1, tone: 'accent', letter: 'D' },
      logWidth: 1,
      order: ['top', 'bottom', 'left', 'right'],
      rounds: [
        [
          { tone: 'light', letter: 'A1' },
          { tone: 'light', letter: 'A1' },
          { tone: 'dark', letter: 'C1' },
          { tone: 'dark', letter: 'C1' },
        ],
        [
          { tone: 'light', letter: 'A2' },
          { tone: 'light', letter: 'A2' },
          { tone: 'dark', letter: 'C2' },
          { tone: 'dark', letter: 'C2' },
        ],
        [
          { tone: 'light', letter: 'A3' },
          { tone: 'light', letter: 'A3' },
          { tone: 'dark', letter: 'C3' },
          { tone: 'dark', letter: 'C3' },
        ],
      ],
    },
  },
  {
    id: 'quarter-log-cabin',
    name: 'Quarter Log Cabin',
    otherNames: ['Corner-start Log Cabin'],
    history: 'Logs on two sides only, from a corner square.',
    source: 'common practice, no source',
    drawing: {
      kind: 'log-cabin',
      grid: 5,
      centre: { side: 2, tone: 'accent', letter: 'D' },
      logWidth: 1,
      order: ['right', 'bottom'],
      rounds: [
        [
          { tone: 'light', letter: 'A1' },
          { tone: 'dark', letter: 'C1' },
        ],
        [
          { tone: 'light', letter: 'A2' },
          { tone: 'dark', letter: 'C2' },
        ],
        [
          { tone: 'light', letter: 'A3' },
          { tone: 'dark', letter: 'C3' },
        ],
      ],
    },
  },
  {
    id: 'pineapple',
    name: 'Pineapple',
    otherNames: [],
    history:
      'A log cabin whose strips radiate along the sides and then at the corners; here with slanted logs of a width that drafts on a grid.',
    source: 'International Quilt Museum, loan text, 2025',
    drawing: {
      kind: 'grid',
      grid: 16,
      cloths: [
        {
          tone: 'accent',
          letter: 'D',
          patches: ['6,6 10,6 10,10 6,10'],
        },
        {
          tone: 'light',
          letter: 'A',
          patches: [
            '12,8 10,10 10,6',
            '8,12 6,10 10,10',
            '4,8 6,6 6,10',
            '8,4 10,6 6,6',
            '13,7 13,9 12,10 12,6',
            '9,13 7,13 6,12 10,12',
            '3,9 3,7 4,6 4,10',
            '7,3 9,3 10,4 6,4',
            '14,6.5 14,9.5 13,10.5 13,5.5',
            '9.5,14 6.5,14 5.5,13 10.5,13',
            '2,9.5 2,6.5 3,5.5 3,10.5',
            '6.5,2 9.5,2 10.5,3 5.5,3',
            '15,6 15,10 14,11 14,5',
            '10,15 6,15 5,14 11,14',
            '1,10 1,6 2,5 2,11',
            '6,1 10,1 11,2 5,2',
            '16,5.5 16,10.5 15,11.5 15,4.5',
            '10.5,16 5.5,16 4.5,15 11.5,15',
            '0,10.5 0,5.5 1,4.5 1,11.5',
            '5.5,0 10.5,0 11.5,1 4.5,1',
          ],
        },
        {
          tone: 'dark',
          letter: 'C',
          patches: [
            '12,8 12,10 10,12 8,12',
            '8,12 6,12 4,10 4,8',
            '4,8 4,6 6,4 8,4',
            '8,4 10,4 12,6 12,8',
            '13,9 13,10.5 10.5,13 9,13',
            '7,13 5.5,13 3,10.5 3,9',
            '3,7 3,5.5 5.5,3 7,3',
            '9,3 10.5,3 13,5.5 13,7',
            '14,9.5 14,11 11,14 9.5,14',
            '6.5,14 5,14 2,11 2,9.5',
            '2,6.5 2,5 5,2 6.5,2',
            '9.5,2 11,2 14,5 14,6.5',
            '15,10 15,11.5 11.5,15 10,15',
            '6,15 4.5,15 1,11.5 1,10',
            '1,6 1,4.5 4.5,1 6,1',
            '10,1 11.5,1 15,4.5 15,6',
            '16,10.5 16,16 10.5,16',
            '5.5,16 0,16 0,10.5',
            '0,5.5 0,0 5.5,0',
            '10.5,0 16,0 16,5.5',
          ],
        },
      ],
    },
  },
];
