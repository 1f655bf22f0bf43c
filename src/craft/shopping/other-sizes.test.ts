import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { CellDesign, CellRows, OnPointTop, Quilt, StraightTop } from '#craft/design';
import { quartersFor } from '#craft/setting';
import { zero } from '#ground/exact';
import { continuationsOf, resized, sizesOf } from './other-sizes.ts';

const cell = (block: string, turn: 0 | 90 | 180 | 270 = 0): CellDesign => ({
  kind: 'block',
  block,
  colouring: 'default',
  turn,
  mirror: false,
});

/** One letter a cell. */
const rowsOf = (...rows: readonly string[]): CellRows => rows.map((row) => [...row].map((block) => cell(block)));

const straight = (rows: CellRows): StraightTop => ({
  set: 'straight',
  rows,
  arrangement: null,
  sashing: null,
  borders: [],
});

const textOf = (rows: CellRows): readonly string[] =>
  rows.map((row) => row.map((one) => (one.kind === 'block' ? one.block : '-')).join(''));

const remade = (top: Quilt['top'], rows: number, columns: number): Quilt['top'] =>
  resized({ top } as unknown as Quilt, { rows, columns }).top;

test('a pattern that repeats goes on and ends as it was drawn', () => {
  const top = straight(rowsOf('aba', 'bab', 'aba'));
  // derived by hand: every second row and column
  assert.deepEqual(sizesOf(top, 7), { rows: [1, 3, 5, 7], columns: [1, 3, 5, 7] });
  assert.deepEqual(textOf((remade(top, 5, 3) as StraightTop).rows), ['aba', 'bab', 'aba', 'bab', 'aba']);
  assert.deepEqual(continuationsOf(top, { rows: 5, columns: 3 }), ['goes-on', 'as-drawn']);
});

test('a pattern that does not repeat is cut short or begun again', () => {
  const top = straight(rowsOf('abc', 'cab'));
  assert.deepEqual(sizesOf(top, 7), { rows: [1, 2, 4, 6], columns: [1, 2, 3, 6] });
  assert.deepEqual(textOf((remade(top, 4, 2) as StraightTop).rows), ['ab', 'ca', 'ab', 'ca']);
  assert.deepEqual(continuationsOf(top, { rows: 4, columns: 2 }), ['begun-again', 'cut-short']);
});

test('turned log cabins written out cell by cell go on as their arrangement does', () => {
  const turned = (rows: number, columns: number): CellRows =>
    quartersFor({ kind: 'barn-raising', rows, columns }).map((row) =>
      row.map((quarters) => cell('cabin', ([90, 180, 270, 0] as const)[quarters])),
    );
  const top = straight(turned(4, 6));
  assert.deepEqual(sizesOf(top, 5), { rows: [1, 2, 3, 4, 5], columns: [1, 2, 3, 4, 5] });
  assert.deepEqual((remade(top, 6, 5) as StraightTop).rows, turned(6, 5));
});

test('an arrangement takes its new counts, a pinwheel whole ones', () => {
  const arrangement = (kind: 'pinwheel' | 'straight-furrow'): StraightTop => ({
    ...straight(rowsOf('aaaa', 'aaaa')),
    arrangement: { kind, block: 'a', colouring: 'default', rows: 2, columns: 4, swap: false, darkCorner: null },
  });
  assert.deepEqual(sizesOf(arrangement('pinwheel'), 5), { rows: [2, 4], columns: [2, 4] });
  assert.deepEqual(sizesOf(arrangement('straight-furrow'), 3), { rows: [1, 2, 3], columns: [1, 2, 3] });
  const made = remade(arrangement('pinwheel'), 4, 2) as StraightTop;
  assert.deepEqual(
    [made.arrangement?.rows, made.arrangement?.columns, textOf(made.rows)],
    [4, 2, ['aa', 'aa', 'aa', 'aa']],
  );
});

test('on point the cells between go on with the main ones, one row and one column fewer', () => {
  const onPoint = (rows: CellRows, between: CellRows): OnPointTop => ({
    set: 'on-point',
    rows,
    between,
    sashing: null,
    settingFabric: 'oat',
    float: zero,
    borders: [],
  });
  const top = onPoint(rowsOf('aaa', 'aaa', 'aaa'), rowsOf('bc', 'cb'));
  // derived by hand: the cells between repeat every second line, so that counts stay odd
  assert.deepEqual(sizesOf(top, 5), { rows: [1, 3, 5], columns: [1, 3, 5] });
  const made = remade(top, 5, 3) as OnPointTop;
  assert.deepEqual([textOf(made.rows).length, textOf(made.between)], [5, ['bc', 'cb', 'bc', 'cb']]);
  assert.deepEqual((remade(top, 3, 1) as OnPointTop).between, []);
  // where nothing repeats, the line between the last row and a first begun again is drawn nowhere
  assert.deepEqual(sizesOf(onPoint(rowsOf('ab', 'ba'), rowsOf('c')), 6)?.rows, [1, 2]);
});

test('sections have one size', () => {
  const top = { set: 'sections', sections: { kind: 'fill', fabric: 'oat' }, borders: [] } as const;
  assert.equal(sizesOf(top, 9), null);
  assert.throws(() => remade(top, 1, 1), RangeError);
});
