// Prints that stand upright in the quilt, and cloth without a right side: pieces counted by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { cloths, plainBlock, planned, quilt, rectangle, setOf, type Written } from '../documents/documents.ts';

/** One 4 × 2 in rectangle on the left of a square block of 4, the rest plain. */
const hand = (tone: string): Written => ({
  id: 'hand',
  size: 4,
  patches: {
    grid: [4, 4],
    list: [
      {
        points: [
          [0, 0],
          [1, 0],
          [1, 4],
          [0, 4],
        ],
        tone,
      },
      {
        points: [
          [1, 0],
          [4, 0],
          [4, 4],
          [1, 4],
        ],
        tone: 'light',
      },
    ],
  },
});

const printed = (of: Written): readonly Written[] => [...cloths(40), { id: 'stag', colour: '#446622', ...of }];

const cutsOf = (plan: QuiltPlan, id: string) =>
  plan.fabrics
    .find((fabric) => fabric.id === id)
    ?.pieces.map(({ cut, count, for: uses }) => ({ cut, count, turns: uses.map(({ turn }) => turn) }));

const turnedRow = { rows: [[{ block: 'hand' }, { block: 'hand', turn: 90 }, { block: 'hand', turn: 180 }]] };

test('turned blocks list their turned pieces apart when the print stands upright', () => {
  // by hand: a piece that finishes 1 × 4 is cut 1 1/2 × 4 1/2; turned by 90° it lies 4 1/2 across in the quilt
  const plan = planned(quilt({ fabrics: printed({ print: 'one-way' }), blocks: [hand('stag')], top: turnedRow }));
  assert.deepEqual(cutsOf(plan, 'stag'), [
    { cut: [1.5, 4.5], count: 2, turns: [0, 180] },
    { cut: [4.5, 1.5], count: 1, turns: [90] },
  ]);
});

test('a print that runs crosswise lies the other way on the cloth', () => {
  const plan = planned(
    quilt({ fabrics: printed({ print: 'one-way', printRuns: 'crosswise' }), blocks: [hand('stag')], top: turnedRow }),
  );
  assert.deepEqual(cutsOf(plan, 'stag'), [
    { cut: [1.5, 4.5], count: 1, turns: [90] },
    { cut: [4.5, 1.5], count: 2, turns: [0, 180] },
  ]);
});

test('without direction the same pieces are one size', () => {
  const plan = planned(quilt({ fabrics: printed({}), blocks: [hand('stag')], top: turnedRow }));
  assert.deepEqual(cutsOf(plan, 'stag'), [{ cut: [4.5, 1.5], count: 3, turns: [null] }]);
});

/** Four half-squares of the print, one in each corner, right angle outward. */
const corners: Written = {
  id: 'corners',
  size: 4,
  patches: {
    grid: [4, 4],
    list: [
      {
        points: [
          [0, 0],
          [2, 0],
          [0, 2],
        ],
        tone: 'stag',
      },
      {
        points: [
          [2, 0],
          [4, 0],
          [4, 2],
        ],
        tone: 'stag',
      },
      {
        points: [
          [4, 2],
          [4, 4],
          [2, 4],
        ],
        tone: 'stag',
      },
      {
        points: [
          [2, 4],
          [0, 4],
          [0, 2],
        ],
        tone: 'stag',
      },
      {
        points: [
          [2, 0],
          [4, 2],
          [2, 4],
          [0, 2],
        ],
        tone: 'light',
      },
    ],
  },
};

test('four corners are four kinds of piece and come from one square on each diagonal', () => {
  // by hand: opposite corners are the two halves of one square, so nothing is left over
  const plan = planned(
    quilt({ fabrics: printed({ print: 'one-way' }), blocks: [corners], top: { rows: [[{ block: 'corners' }]] } }),
  );
  const stag = plan.fabrics.find(({ id }) => id === 'stag');
  assert.deepEqual(stag?.pieces.map(({ count, diagonal }) => [count, diagonal]).toSorted(), [
    [1, 'falling'],
    [1, 'rising'],
  ]);
  assert.equal(plan.blocks[0]?.pieces.filter(({ fabric }) => fabric === 'stag').length, 4);
});

test('one corner alone leaves the opposite half of every square over, and the note says what that takes', () => {
  // by hand: legs of 2 ask for squares of 2 7/8; six corners without direction are 3 squares, one-way 6
  const one: Written = {
    id: 'one',
    size: 2,
    patches: {
      grid: [1, 1],
      list: [
        {
          points: [
            [0, 0],
            [1, 0],
            [0, 1],
          ],
          tone: 'stag',
        },
        {
          points: [
            [1, 0],
            [1, 1],
            [0, 1],
          ],
          tone: 'light',
        },
      ],
    },
  };
  const top = { rows: [Array.from({ length: 6 }, () => ({ block: 'one' }))] };
  const counts = ['none', 'one-way', 'two-way'].map((print) => {
    const plan = planned(quilt({ fabrics: printed({ print, usableWidth: 9 }), blocks: [one], top }));
    const note = plan.notes.find(({ code }) => code === 'cutting/print-upright');
    return [
      plan.fabrics.find(({ id }) => id === 'stag')?.pieces[0]?.count,
      note?.code === 'cutting/print-upright' ? [note.upright, note.anyWay] : null,
    ];
  });
  assert.deepEqual(counts, [
    [3, null],
    [6, [5.75, 2.875]],
    [3, [2.875, 2.875]],
  ]);
});

test('what a print takes is told against the panels that a cloth without direction would have', () => {
  // by hand: the backing is 12 + 8 by 30 + 8; without direction one panel 20 × 38. Crosswise its 38 lie across a cloth of 20, in
  // two panels, 20 + 19 less two allowances of 1/2, each 20 along: 40 in
  const plan = planned(
    quilt({
      fabrics: printed({ print: 'two-way', printRuns: 'crosswise', usableWidth: 20 }),
      blocks: [plainBlock('tall', 12, 30)],
      top: setOf('tall'),
      finish: { backing: { fabric: 'stag' } },
    }),
  );
  assert.deepEqual(
    cutsOf(plan, 'stag')?.map(({ cut }) => cut),
    [
      [20, 20],
      [19, 20],
    ],
  );
  const note = plan.notes.find(({ code }) => code === 'cutting/print-upright');
  assert.ok(note?.code === 'cutting/print-upright');
  assert.deepEqual([note.upright, note.anyWay], [40, 38]);
});

test('side borders of a printed cloth lie along it in one piece, ends across it and joined', () => {
  // by hand: the top is 12 × 48; sides 3 × 48 are cut 3 1/2 × 48 1/2, ends 18 × 3 are cut 18 1/2 × 3 1/2
  const tall: Written = {
    id: 'tall',
    size: [12, 48],
    patches: {
      grid: [1, 1],
      list: [
        {
          points: [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ],
          tone: 'light',
        },
      ],
    },
  };
  const top = { rows: [[{ block: 'tall' }]], borders: [{ width: 3, fabric: 'stag' }] };
  const of = (more: Written) =>
    planned(
      quilt({
        fabrics: [
          { id: 'light', colour: '#fff', usableWidth: 60 },
          { id: 'stag', colour: '#446622', usableWidth: 20, ...more },
        ],
        blocks: [tall],
        top,
      }),
    );
  assert.deepEqual(
    of({ print: 'one-way' }).top.pieces.map(({ joinedFrom }) => joinedFrom),
    [[[3.5, 48.5]], [[18.5, 3.5]]],
  );
  // by hand: crosswise the sides are joined from 20 + 20 + 9 1/2 less two allowances a join
  assert.deepEqual(
    of({ print: 'two-way', printRuns: 'crosswise' }).top.pieces.map(({ joinedFrom }) => joinedFrom),
    [
      [
        [20, 3.5],
        [20, 3.5],
        [9.5, 3.5],
      ],
      [[3.5, 18.5]],
    ],
  );
});

test('a mirror image is the same piece when the cloth has no right side, and one line of the cut list', () => {
  const slant: Written = {
    id: 'slant',
    size: [4, 2],
    patches: {
      grid: [4, 2],
      list: [
        {
          points: [
            [0, 0],
            [3, 0],
            [1, 2],
            [0, 2],
          ],
          tone: 'stag',
        },
        {
          points: [
            [3, 0],
            [4, 0],
            [4, 2],
            [1, 2],
          ],
          tone: 'light',
        },
      ],
    },
  };
  const top = { rows: [[{ block: 'slant' }, { block: 'slant', mirror: true }]] };
  const lines = (reversible: boolean) => {
    const plan = planned(quilt({ fabrics: printed({ reversible }), blocks: [slant], top }));
    return plan.fabrics
      .find(({ id }) => id === 'stag')
      ?.pieces.map((piece) => piece.for.reduce((all, { count }) => all + count, 0));
  };
  // by hand: one of each hand
  assert.deepEqual(lines(false), [1, 1]);
  assert.deepEqual(lines(true), [2]);
});

test('setting triangles stay print-true: each side takes its own square, corners come from one square on each diagonal', () => {
  // by hand: 3 × 4 on point has 2 side triangles at top and bottom, 3 at left and right: squares cut twice give one for each
  // side, so one-way and two-way alike max(2, 3, 2, 3) = 3, where ⌈10 / 4⌉ = 3 without direction; corners 2 either way
  const plain: Written = {
    id: 'plain',
    size: 6,
    patches: { grid: [1, 1], list: [{ points: rectangle(0, 0, 1, 1), tone: 'light' }] },
  };
  const top = (across: number, down: number): Written => ({
    set: 'on-point',
    rows: Array.from({ length: down }, () => Array.from({ length: across }, () => ({ block: 'plain' }))),
    between: Array.from({ length: down - 1 }, () => Array.from({ length: across - 1 }, () => ({ block: 'plain' }))),
    settingFabric: 'stag',
  });
  const squares = (print: string, across: number, down: number) =>
    planned(quilt({ fabrics: printed({ print }), blocks: [plain], top: top(across, down) }))
      .fabrics.find(({ id }) => id === 'stag')
      ?.pieces.map(({ shape, count, diagonal }) => [shape, count, diagonal]);
  assert.deepEqual(squares('none', 3, 4), [
    ['quarter-square', 3, null],
    ['half-square', 2, null],
  ]);
  assert.deepEqual(squares('one-way', 3, 4)?.toSorted(), [
    ['half-square', 1, 'falling'],
    ['half-square', 1, 'rising'],
    ['quarter-square', 3, null],
  ]);
  // by hand: 1 at top and bottom, 5 at left and right: 5 one-way, ⌈12 / 4⌉ = 3 without
  assert.deepEqual(
    [squares('none', 2, 6)?.[0]?.[1], squares('one-way', 2, 6)?.find(([shape]) => shape === 'quarter-square')?.[1]],
    [3, 5],
  );
});

test('a square centre of a print that stands upright is turned for its first log; of plain cloth it is taken by any edge', () => {
  const cabin: Written = {
    id: 'cabin',
    recipe: {
      kind: 'log-cabin',
      centre: '3',
      centreTone: 'stag',
      rounds: [{ width: '1', tones: ['light', 'light', 'dark', 'dark'] }],
    },
  };
  const turns = (print: string): readonly number[] =>
    planned(quilt({ fabrics: printed({ print }), blocks: [cabin], top: setOf('cabin') })).blocks[0]?.steps.map(
      ({ machineTurn }) => machineTurn,
    ) ?? [];
  // by hand: the first log goes on the left, which half a turn brings to the right hand; then a quarter turn the other way each time
  assert.deepEqual(turns('one-way'), [180, 270, 270, 270]);
  assert.deepEqual(turns('two-way'), [180, 270, 270, 270]);
  assert.deepEqual(turns('none'), [0, 270, 270, 270]);
});
