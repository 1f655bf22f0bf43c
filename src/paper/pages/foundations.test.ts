import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planned, quilt } from '#documents';
import { clothSignsFor } from '#paper/cloth';
import { foundationPages } from './foundations.ts';

const pageOf = (block: Readonly<Record<string, unknown>>) => {
  const plan = planned(quilt({ blocks: [block], top: { rows: [[{ block: block.id }]] } }));
  return foundationPages({ plan, signs: clothSignsFor(plan), album: new Map() })[0];
};

const bar = (x: number, tone: string) => ({
  points: [
    [x, 0],
    [x + 1, 0],
    [x + 1, 1],
    [x, 1],
  ],
  tone,
});

test('two bars go on one foundation, each cut with twice the allowance round it', () => {
  const list = [bar(0, 'light'), bar(1, 'dark')];
  const page = pageOf({ id: 'bars', size: [4, 2], patches: { grid: [2, 1], list } });
  assert.deepEqual(page?.words, ['It can be pieced on one foundation.']);
  // 2 + 4 · 1/4 = 3 each way
  assert.deepEqual(
    page?.sections.map(({ title, alone, pieces }) => [title, alone, pieces.map(({ cut }) => cut)]),
    [['The foundation', '', ['3\u00a0×\u00a03\u00a0in', '3\u00a0×\u00a03\u00a0in']]],
  );
  assert.equal(page?.sections[0]?.sheets.length, 1);
});

test('a row that is too long for the page lies on its side, where it then goes on one sheet', () => {
  const list = [bar(0, 'light'), bar(1, 'dark')];
  const sheetsOf = (size: readonly number[]) =>
    pageOf({ id: 'bars', size, patches: { grid: [2, 1], list } })?.sections.flatMap(({ sheets }) =>
      sheets.map(({ sheet }) => sheet),
    );
  // by hand: 480 pt are 6 2/3 in, 636 pt 8 5/6; half an inch of allowances, 8 pt of room
  assert.deepEqual(sheetsOf([6, 2]), ['']);
  assert.deepEqual(sheetsOf([8, 2]), ['on its side, the top of the block at the right']);
  assert.deepEqual(sheetsOf([2, 8]), ['']);
  assert.deepEqual(sheetsOf([9, 2]), ['sheet 1 of 2: row 1, place 1', 'sheet 2 of 2: row 1, place 2']);
});

test('a nine patch takes three, and how they are joined is told', () => {
  const list = [0, 1, 2].flatMap((y) =>
    [0, 1, 2].map((x) => {
      const { points } = bar(x, '');
      return { points: points.map(([px, py]) => [px, (py as number) + y]), tone: (x + y) % 2 === 0 ? 'dark' : 'light' };
    }),
  );
  const page = pageOf({ id: 'nine', size: 9, patches: { grid: [3, 3], list } });
  // by hand: a row goes on one; where two rows are together no patch is cut off by one line
  assert.deepEqual(page?.words[0], 'It takes 3 parts: no fewer will do.');
  assert.match(page?.words[1] ?? '', /join them: \d to \d; \d (and \d )?to \d( and \d)?\.$/);
  assert.equal(page?.sections.length, 3);
});

test('of a block with a ring round three strips the strips are told, and their sheet is drawn', () => {
  const rect = (x: number, y: number, w: number, h: number, tone: string) => ({
    points: [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ],
    tone,
  });
  const strips = [rect(4, 4, 1, 4, 'light'), rect(5, 4, 1, 4, 'dark'), rect(6, 4, 2, 4, 'light')];
  const bars = [
    rect(0, 0, 8, 4, 'dark'),
    rect(8, 0, 4, 8, 'light'),
    rect(4, 8, 8, 4, 'dark'),
    rect(0, 4, 4, 8, 'light'),
  ];
  const page = pageOf({ id: 'rails', size: 12, patches: { grid: [12, 12], list: [...strips, ...bars] } });
  assert.deepEqual(page?.words.slice(1), [
    'Of its units one can be, on a foundation: unit 2, 1 in a block. Sew what is left as the steps of the block say.',
  ]);
  // by hand: 4 + 4 · 1/4 = 5 along; 1 + 1 = 2 and 2 + 1 = 3 across
  assert.deepEqual(
    page?.sections.map(({ title, pieces }) => [title, pieces.map(({ cut }) => cut.replaceAll('\u00a0', ' '))]),
    [['Unit 2', ['2 × 5 in', '5 × 2 in', '5 × 3 in']]],
  );
});

test('what cannot be pieced so is said to, without a sheet', () => {
  const window = [
    {
      points: [
        [0, 0],
        [3, 0],
        [3, 3],
        [0, 3],
      ],
      tone: 'light',
    },
    {
      points: [
        [3, 0],
        [4, 0],
        [4, 4],
        [3, 3],
      ],
      tone: 'medium',
    },
    {
      points: [
        [0, 3],
        [3, 3],
        [4, 4],
        [0, 4],
      ],
      tone: 'dark',
    },
  ];
  const page = pageOf({ id: 'window', size: 4, patches: { grid: [4, 4], list: window } });
  assert.match(page?.words.join() ?? '', /^It cannot be pieced on foundations: /);
  assert.deepEqual(page?.sections, []);
});
