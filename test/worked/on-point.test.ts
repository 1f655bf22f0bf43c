// Sets on point, borders that turn a corner, and sections: sizes and counts from print and by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { TopPlan } from '#craft';
import { cloths, near, plainBlock, planned, quilt, type Written } from '../documents/documents.ts';

const cell = (block: string) => ({ block });
const grid = (rows: number, columns: number, block = 'b') =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => cell(block)));

const onPoint = (
  of: { readonly across: number; readonly down: number; readonly side: number | string } & Written,
): TopPlan => {
  const { across, down, side, unit = 'in', ...more } = of;
  return planned(
    quilt({
      unit,
      fabrics: cloths(110),
      blocks: [plainBlock('b', side, side)],
      top: {
        set: 'on-point',
        rows: grid(down, across),
        between: grid(down - 1, across - 1),
        settingFabric: 'light',
        ...more,
      },
    }),
  ).top;
};

const pieceOf = (top: TopPlan, role: string) => top.pieces.find((piece) => piece.role === role);
const count = (top: TopPlan, role: string): number => top.set.strips.filter((strip) => strip.role === role).length;

test('five by six blocks of 8 in on point make 56.57 by 67.88 in: 50 blocks, 18 side and 4 corner triangles', () => {
  // derived: a·B·√2 by d·B·√2; a·d + (a − 1)·(d − 1); 2·(a − 1) + 2·(d − 1)
  const top = onPoint({ across: 5, down: 6, side: 8 });
  near(top.set.width, 56.568542);
  near(top.set.height, 67.882251);
  assert.equal(top.set.placed.length, 50);
  assert.deepEqual([count(top, 'side-triangle'), count(top, 'corner-triangle')], [18, 4]);
});

test('its side triangles come from five squares and its corners from two', () => {
  // derived: 18 by four and 4 by two, each up
  const { fabrics } = planned(
    quilt({
      fabrics: cloths(110),
      blocks: [plainBlock('b', 8, 8)],
      top: { set: 'on-point', rows: grid(6, 5), between: grid(5, 4), settingFabric: 'light' },
    }),
  );
  const light = fabrics.find(({ id }) => id === 'light');
  assert.deepEqual(
    light?.pieces.map(({ shape, count: squares }) => [shape, squares]),
    [
      ['quarter-square', 5],
      ['half-square', 2],
    ],
  );
});

for (const [side, corner, across] of [
  [12, 9.375, 18.25],
  [6, 5.125, 9.75],
] as const) {
  test(`setting triangles for blocks of ${side} in come from squares of ${corner} in cut once and ${across} in cut twice`, () => {
    // guild handout "Number of Squares from a Fat Quarter" (anonymous, public document copy): corner squares; side squares derived
    const top = onPoint({ across: 2, down: 2, side });
    assert.deepEqual(pieceOf(top, 'corner-triangle')?.cut.size, [corner, corner]);
    assert.deepEqual(pieceOf(top, 'side-triangle')?.cut.size, [across, across]);
  });
}

test('a float makes the squares larger and leaves the quilt its size', () => {
  // by hand: 12/√2 + (2 + √2)/4 = 9.3388, and 1 in more goes up to 10 3/8; 12·√2 + (2 + 2√2)/4 = 18.1777, up to 19 1/4
  const top = onPoint({ across: 2, down: 2, side: 12, float: '1' });
  assert.deepEqual(pieceOf(top, 'corner-triangle')?.cut.size, [10.375, 10.375]);
  assert.deepEqual(pieceOf(top, 'side-triangle')?.cut.size, [19.25, 19.25]);
  near(top.set.width, 24 * Math.SQRT2);
});

test('the same in centimetres falls on millimetres', () => {
  // by hand: 30/√2 + 0.75·(2 + √2) = 23.774, up to 23.8; 30·√2 + 0.75·(2 + 2√2) = 46.048, up to 46.1
  const top = onPoint({ across: 2, down: 2, side: 30, unit: 'cm' });
  assert.deepEqual(pieceOf(top, 'corner-triangle')?.cut.size, [23.8, 23.8]);
  assert.deepEqual(pieceOf(top, 'side-triangle')?.cut.size, [46.1, 46.1]);
});

test('sashing on point goes all round: 4ad sashes, 2ad − a − d whole cornerstones and 2(a + d) halves', () => {
  // derived in docs/formulas.md#on-point: a = 3, d = 2, pitch 8 + 2
  const top = onPoint({
    across: 3,
    down: 2,
    side: 8,
    sashing: { width: 2, fabric: 'light', cornerstones: 'dark', outer: true },
  });
  near(top.set.width, 3 * 10 * Math.SQRT2);
  near(top.set.height, 2 * 10 * Math.SQRT2);
  assert.equal(count(top, 'sash'), 24);
  const stones = top.pieces.filter(({ role }) => role === 'cornerstone');
  assert.deepEqual(stones.map((stone) => [stone.cut.shape, stone.count]).sort(), [
    ['quarter-square', 10],
    ['square', 7],
  ]);
  // the triangles stay those of a block of 8: 8·√2 + (2 + 2√2)/4 = 12.5208, up to 12 5/8
  assert.deepEqual(pieceOf(top, 'side-triangle')?.cut.size, [12.625, 12.625]);
});

const straight = (borders: readonly Written[], blocks: readonly Written[] = []): TopPlan =>
  planned(
    quilt({ fabrics: cloths(110), blocks: [plainBlock('b', 30, 20), ...blocks], top: { rows: grid(2, 2), borders } }),
  ).top;

test('a mitred border 5 in wide round sides of 60 in is cut 71.21 by 5 1/2 in, up to the mark', () => {
  // derived: L + 2b + 2s(1 + √2); the other sides of 40 in by 20 in less
  const top = straight([{ width: 5, fabric: 'light', corners: 'mitred' }]);
  const borders = top.pieces.filter(({ role }) => role === 'border').map(({ cut }) => cut);
  near(borders[0]?.exact[0] ?? 0, 51.207107);
  near(borders[1]?.exact[0] ?? 0, 71.207107);
  assert.deepEqual(
    borders.map(({ size }) => size),
    [
      [51.25, 5.5],
      [71.25, 5.5],
    ],
  );
  assert.deepEqual([top.set.width, top.set.height], [70, 50]);
});

test('its four mitres close one after another, each 7.07 in long, and the quilt keeps its size', () => {
  // by hand: the diagonal of a square of 5 in
  const mitres = straight([{ width: 5, fabric: 'light', corners: 'mitred' }]).steps.filter(
    ({ stage }) => stage === 'mitre',
  );
  assert.equal(mitres.length, 4);
  for (const { kind, seam, unfinished } of mitres) {
    assert.equal(kind, 'partial-close');
    near(seam, 5 * Math.SQRT2);
    assert.deepEqual(unfinished, [70.5, 50.5]);
  }
});

test('a border with corner squares has sides as long as the top on all four sides', () => {
  // by hand: 60 by 40
  const top = straight([{ width: 3, fabric: 'light', corners: 'squares', cornerFabric: 'dark' }]);
  assert.deepEqual(
    top.pieces
      .filter(({ role }) => role.startsWith('border'))
      .map((piece) => [piece.role, piece.fabric, piece.count, ...piece.finished]),
    [
      ['border', 'light', 2, 40, 3],
      ['border-corner', 'dark', 4, 3, 3],
      ['border', 'light', 2, 60, 3],
    ],
  );
});

test('a pieced border of 7 in blocks round 60 by 40 in takes spacers of 1 1/2 and 1 in, then nine and six blocks a side', () => {
  // by hand: 63 = 9 · 7 and 42 = 6 · 7; with the four corners 34 blocks
  const top = straight([{ pieced: { block: 'key', spacer: 'light' } }], [plainBlock('key', 7, 7)]);
  assert.deepEqual(
    top.pieces.filter(({ role }) => role === 'spacer').map(({ count: strips, finished }) => [strips, ...finished]),
    [
      [2, 40, 1.5],
      [2, 63, 1],
    ],
  );
  assert.equal(top.set.placed.filter(({ block }) => block === 'key').length, 34);
  assert.deepEqual([top.set.width, top.set.height], [77, 56]);
});

test('a pieced border that fits needs no spacer, and oblong blocks leave plain corners', () => {
  // by hand: 60 = 12 · 5 and 40 = 8 · 5
  const top = straight([{ pieced: { block: 'key', spacer: 'light' } }], [plainBlock('key', 5, 3)]);
  assert.equal(count(top, 'spacer'), 0);
  assert.equal(count(top, 'border-corner'), 4);
  assert.equal(top.set.placed.filter(({ block }) => block === 'key').length, 40);
  assert.deepEqual([top.set.width, top.set.height], [66, 46]);
});

test('no spacer is narrower than a seam allowance', () => {
  // by hand: 60 to 60.3 leaves 0.15 a side, below 1/4; one block more, 66.3 (11 · 6.03... = 66.33), leaves 3.165
  const top = straight([{ pieced: { block: 'key', spacer: 'light' } }], [plainBlock('key', '6.03', '6.03')]);
  const widths = top.pieces.filter(({ role }) => role === 'spacer').map(({ finished }) => finished[1]);
  near(widths[0] ?? 0, (11 * 6.03 - 60) / 2);
});

const sections = (tree: Written, blocks: readonly Written[]): TopPlan =>
  planned(quilt({ fabrics: cloths(110), blocks, top: { set: 'sections', sections: tree } })).top;

test('fills of one run share equally what the blocks and strips leave', () => {
  // by hand: 12 − 4 − 3 = 5, in two
  const top = sections(
    {
      down: [
        { block: 'wide' },
        { across: [{ block: 'small' }, { fill: 'light' }, { strip: 'dark', width: 3 }, { fill: 'light' }] },
      ],
    },
    [plainBlock('wide', 12, 6), plainBlock('small', 4, 4)],
  );
  assert.deepEqual([top.set.width, top.set.height], [12, 10]);
  const fill = pieceOf(top, 'fill');
  assert.deepEqual([fill?.count, ...(fill?.finished ?? [])], [2, 4, 2.5]);
});

test('a fill may lie inside a run that a neighbour makes high', () => {
  // by hand: 9 − 4 = 5 high
  const top = sections({ across: [{ block: 'tall' }, { down: [{ block: 'small' }, { fill: 'light' }] }] }, [
    plainBlock('tall', 3, 9),
    plainBlock('small', 4, 4),
  ]);
  assert.deepEqual(pieceOf(top, 'fill')?.finished, [5, 4]);
});

test('sections that are made alike are made together', () => {
  // by hand: two pairs of one over the other, then a strip between them
  const pair = { down: [{ block: 'small' }, { block: 'small' }] };
  const apart = sections({ across: [pair, { strip: 'dark', width: 1 }, pair] }, [plainBlock('small', 4, 4)]);
  assert.deepEqual(
    apart.steps.map(({ join, perBlock }) => [...join, perBlock]),
    [
      ['small', 'small', 2],
      ['#1', 'A', 1],
      ['#2', '#1', 1],
    ],
  );
  // side by side their seams meet, and are pressed by turns so that they nest: two pairs, each made once
  const together = sections({ across: [pair, pair] }, [plainBlock('small', 4, 4)]);
  assert.deepEqual(
    together.steps.map(({ join, pressTo, perBlock }) => [...join, pressTo, perBlock]),
    [
      ['small', 'small', 1, 1],
      ['small', 'small', 0, 1],
      ['#1', '#2', 1, 1],
    ],
  );
});

test('setting triangles of a one-way print stand upright on all four edges, from no more squares where the edges are even', () => {
  // by hand: four at the top and at the bottom, five at each side; a square cut twice gives one of each, so five;
  // the four corners stand four ways, and a square cut once gives two of them
  const plan = planned(
    quilt({
      fabrics: [{ id: 'light', colour: '#f0e8d8', usableWidth: 110, print: 'one-way' }, ...cloths(110).slice(1)],
      blocks: [plainBlock('b', 8, 8)],
      top: { set: 'on-point', rows: grid(6, 5), between: grid(5, 4), settingFabric: 'light' },
    }),
  );
  const squares = plan.fabrics.find(({ id }) => id === 'light')?.pieces ?? [];
  const countOf = (shape: string) =>
    squares.filter((piece) => piece.shape === shape).reduce((all, piece) => all + piece.count, 0);
  assert.deepEqual([countOf('quarter-square'), countOf('half-square')], [5, 2]);
});

test('a print that has an upright is told to lie slanted in blocks on point, and not in setting triangles', () => {
  const printed = (id: string) =>
    cloths(110).map((cloth) => (cloth.id === id ? { ...cloth, print: 'two-way' } : cloth));
  const slanted = (id: string) =>
    planned(
      quilt({
        fabrics: printed(id),
        blocks: [plainBlock('b', 8, 8)],
        top: { set: 'on-point', rows: grid(2, 2), between: grid(1, 1), settingFabric: 'light' },
      }),
    ).notes.filter(({ code }) => code === 'cutting/print-slanted').length;
  // by hand: the block is of the dark cloth
  assert.deepEqual([slanted('dark'), slanted('light')], [1, 0]);
});
