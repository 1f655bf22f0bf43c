// A small quilt for tests of paper and print: a one-round log cabin and a shoo fly, two by two, sashed and
// bordered. Small enough that every figure can be worked out by hand.

import type { QuiltPlan } from '#craft';
import { planQuilt } from '#craft';

const shooFly = [
  {
    points: [
      [0, 0],
      [1, 0],
      [0, 1],
    ],
    tone: 'sky',
  },
  {
    points: [
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    tone: 'wing',
  },
  {
    points: [
      [2, 0],
      [3, 0],
      [3, 1],
    ],
    tone: 'sky',
  },
  {
    points: [
      [2, 0],
      [3, 1],
      [2, 1],
    ],
    tone: 'wing',
  },
  {
    points: [
      [0, 2],
      [1, 3],
      [0, 3],
    ],
    tone: 'sky',
  },
  {
    points: [
      [0, 2],
      [1, 2],
      [1, 3],
    ],
    tone: 'wing',
  },
  {
    points: [
      [3, 2],
      [3, 3],
      [2, 3],
    ],
    tone: 'sky',
  },
  {
    points: [
      [2, 2],
      [3, 2],
      [2, 3],
    ],
    tone: 'wing',
  },
  {
    points: [
      [1, 0],
      [2, 0],
      [2, 1],
      [1, 1],
    ],
    tone: 'sky',
  },
  {
    points: [
      [0, 1],
      [1, 1],
      [1, 2],
      [0, 2],
    ],
    tone: 'sky',
  },
  {
    points: [
      [2, 1],
      [3, 1],
      [3, 2],
      [2, 2],
    ],
    tone: 'sky',
  },
  {
    points: [
      [1, 2],
      [2, 2],
      [2, 3],
      [1, 3],
    ],
    tone: 'sky',
  },
  {
    points: [
      [1, 1],
      [2, 1],
      [2, 2],
      [1, 2],
    ],
    tone: 'wing',
  },
];

const cabin = {
  id: 'cabin',
  title: 'Log cabin',
  recipe: {
    kind: 'log-cabin',
    centre: '1',
    centreTone: 'brick',
    order: ['left', 'top', 'right', 'bottom'],
    rounds: [{ width: '1', tones: ['oat', 'oat', 'bark', 'bark'] }],
  },
};

const fly = {
  id: 'fly',
  title: 'Shoo fly',
  size: '3',
  patches: { grid: [3, 3], list: shooFly },
  colourings: { default: { sky: 'oat', wing: 'brick' } },
};

/** The document; a test may change what it is about. */
export const specimenDocument = {
  format: 'seamstead-quilt',
  version: 1,
  title: 'Specimen',
  designer: 'Nobody',
  notes: '',
  edition: '1',
  unit: 'in',
  fabrics: [
    { id: 'brick', name: 'Brick', colour: '#9c3f2c', usableWidth: '40' },
    { id: 'oat', name: 'Oat', colour: '#efe6d0', usableWidth: '40' },
    { id: 'bark', name: 'Bark', colour: '#4a3426', usableWidth: '40' },
  ],
  blocks: [cabin, fly],
  top: {
    set: 'straight',
    rows: [
      [{ block: 'cabin' }, { block: 'fly' }],
      [
        { block: 'fly', turn: 90 },
        { block: 'cabin', turn: 180 },
      ],
    ],
    sashing: { width: '1', fabric: 'oat', cornerstones: 'brick', outer: false },
    borders: [{ width: '2', fabric: 'bark', corners: 'butted', grain: 'least' }],
  },
  finish: {
    binding: { fabric: 'bark', cut: '2 1/2', grain: 'straight' },
    backing: { fabric: 'oat', overage: '4' },
    batting: { overage: '4' },
  },
};

/** Plans a document that is known to be without problems; throws them otherwise. */
export const planOf = (document: unknown): QuiltPlan => {
  const planned = planQuilt(document, { budget: { steps: 0 } });
  if (!planned.ok) throw new Error(planned.problems.map(({ code, path }) => `${path} ${code}`).join('\n'));
  return planned.value;
};

/** The specimen with some of its keys changed. */
export const documentOf = (changes: Readonly<Record<string, unknown>>): unknown => ({
  ...specimenDocument,
  ...changes,
});
