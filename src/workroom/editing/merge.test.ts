import assert from 'node:assert/strict';
import { test } from 'node:test';
import { merged } from './merge.ts';
import { beginEditing, type Editing, edited, undone } from './steps.ts';

interface Sketch {
  title: string;
  blocks: { id: string; size: number }[];
  rows: number[][];
}
const common = beginEditing<Sketch>({
  title: 'A',
  blocks: [
    { id: 'cabin', size: 9 },
    { id: 'star', size: 9 },
  ],
  rows: [
    [0, 0],
    [0, 0],
  ],
});
const changed = (editing: Editing<Sketch>, change: (draft: Sketch) => void) =>
  edited(editing, { what: 'Edit', change });

test('edits at different places are both kept, mine as steps after hers', () => {
  const mine = changed(common, (d) => void Object.assign(d, { title: 'B' }));
  const hers = changed(common, (d) => void d.rows[0]?.splice(1, 1, 90));
  const both = merged({ common, mine, hers });
  assert.ok(both);
  assert.equal(both.document.title, 'B');
  assert.deepEqual(both.document.rows, [
    [0, 90],
    [0, 0],
  ]);
  assert.equal(both.steps.length, 2);
  assert.deepEqual(undone(both).document, hers.document);
});

test('a place that has moved is found again', () => {
  const mine = changed(common, (d) => void Object.assign(d.blocks[1] ?? {}, { size: 12 }));
  const hers = changed(common, (d) => void d.blocks.unshift({ id: 'fly', size: 6 }));
  assert.deepEqual(
    merged({ common, mine, hers })?.document.blocks.map(({ id, size }) => [id, size]),
    [
      ['fly', 6],
      ['cabin', 9],
      ['star', 12],
    ],
  );
});

test('blocks of different names added by both are both there', () => {
  const mine = changed(common, (d) => void d.blocks.push({ id: 'mine', size: 6 }));
  const hers = changed(common, (d) => void d.blocks.push({ id: 'hers', size: 6 }));
  assert.deepEqual(
    merged({ common, mine, hers })?.document.blocks.map(({ id }) => id),
    ['cabin', 'star', 'hers', 'mine'],
  );
});

test('one place changed by both is for a person to decide', () => {
  const mine = changed(common, (d) => void Object.assign(d, { title: 'B' }));
  const hers = changed(common, (d) => void Object.assign(d, { title: 'C' }));
  assert.equal(merged({ common, mine, hers }), null);
});

test('a change within what the other took away is for a person to decide', () => {
  const mine = changed(common, (d) => void Object.assign(d.blocks[1] ?? {}, { size: 12 }));
  const hers = changed(common, (d) => void d.blocks.pop());
  assert.equal(merged({ common, mine, hers }), null);
  assert.equal(merged({ common, mine: hers, hers: mine }), null);
});

test('both adding a block of one name is for a person to decide', () => {
  const add = (d: Sketch) => void d.blocks.push({ id: 'new', size: 6 });
  assert.equal(merged({ common, mine: changed(common, add), hers: changed(common, add) }), null);
});

test('what was kept and then undone here is undone over there as well', () => {
  const kept = changed(common, (d) => void Object.assign(d, { title: 'B' }));
  const hers = changed(kept, (d) => void d.rows[0]?.splice(0, 1, 90));
  const both = merged({ common: kept, mine: undone(kept), hers });
  assert.equal(both?.document.title, 'A');
  assert.equal(both?.document.rows[0]?.[0], 90);
});

test('several of my steps pass several of hers', () => {
  const mine = changed(
    changed(common, (d) => void d.rows.push([1, 1])),
    (d) => void d.rows[2]?.splice(0, 1, 2),
  );
  const hers = changed(common, (d) => void d.rows.unshift([7, 7]));
  assert.deepEqual(merged({ common, mine, hers })?.document.rows, [
    [7, 7],
    [0, 0],
    [0, 0],
    [2, 1],
  ]);
});
