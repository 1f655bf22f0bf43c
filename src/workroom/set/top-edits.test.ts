import assert from 'node:assert/strict';
import { test } from 'node:test';
import { example, pictureOf } from '#documents';
import { arrange, resize, rowsOf, type Top } from './top-edits.ts';

const barn = example('drying-barn');
const copy = (top: Top): Top => structuredClone(top);

test('rows that a rule makes can be written out, and give the same quilt', () => {
  const picture = pictureOf(barn);
  const rows = rowsOf(barn.top, picture);
  assert.equal(rows?.length, 8);
  const top = copy(barn.top);
  delete top.arrangement;
  top.rows = rows as NonNullable<Top['rows']>;
  assert.deepEqual(pictureOf({ ...barn, top }).placed, picture.placed);
});

test('a straight set grows by going on as it does, and gives back what it had when it shrinks', () => {
  const top: Top = { rows: [[{ block: 'a' }, { plain: 'b' }]] };
  resize(top, { rows: 2, columns: 4, picture: null });
  assert.deepEqual(top.rows?.[0], [{ block: 'a' }, { plain: 'b' }, { block: 'a' }, { plain: 'b' }]);
  resize(top, { rows: 1, columns: 2, picture: null });
  assert.deepEqual(top.rows, [[{ block: 'a' }, { plain: 'b' }]]);
});

test('an arrangement takes the place of whatever set there was', () => {
  const borders = [{ width: '2', fabric: 'x' }];
  const top: Top = { set: 'on-point', rows: [[{ block: 'a' }]], between: [], settingFabric: 'x', float: '1', borders };
  arrange(top, { kind: 'barn-raising', block: 'a', rows: 6, columns: 6 });
  assert.deepEqual(top, {
    set: 'straight',
    borders: [{ width: '2', fabric: 'x' }],
    arrangement: { kind: 'barn-raising', block: 'a', rows: 6, columns: 6 },
  });
});

test('on point what lies between the rows grows with them, and is plain where nothing lay there', () => {
  const top: Top = { set: 'on-point', settingFabric: 'oat', rows: [[{ block: 'a' }]], between: [] };
  resize(top, { rows: 3, columns: 2, picture: null });
  assert.equal(top.rows?.length, 3);
  assert.deepEqual(top.between, [[{ plain: 'oat' }], [{ plain: 'oat' }]]);
  resize(top, { rows: 1, columns: 1, picture: null });
  assert.deepEqual(top.between, []);
});
