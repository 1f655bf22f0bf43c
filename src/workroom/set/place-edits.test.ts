import assert from 'node:assert/strict';
import { test } from 'node:test';
import { example, pictureOf } from '#documents';
import {
  changePlaces,
  columnWith,
  type Held,
  heldAt,
  holding,
  inColouring,
  mirrored,
  placesOf,
  plain,
  quarterOn,
  rowWith,
  swapPlaces,
  turned,
  turnedOn,
} from './place-edits.ts';
import type { Top } from './top-edits.ts';

test('every place of a top is one thing of its picture, whatever the set', () => {
  // straight by a rule, on point, sections
  for (const name of ['drying-barn', 'lantern-lane', 'twelve-fields']) {
    const document = example(name);
    const picture = pictureOf(document);
    const drawn = [...picture.placed, ...picture.strips].map(({ path }) => path);
    const places = placesOf(document.top, picture);
    assert.ok(places.length > 10, name);
    for (const path of places) assert.equal(drawn.filter((one) => one === path).length, 1, `${name} ${path}`);
    const others = drawn.filter((path) => /rows|between|sections/.test(path) && !places.includes(path));
    assert.deepEqual(others, [], name);
  }
});

test('a block that is turned out of an arrangement ends it; its neighbours stay as they lie', () => {
  const barn = example('drying-barn');
  const picture = pictureOf(barn);
  const top = structuredClone(barn.top);
  changePlaces(top, { paths: ['/top/rows/2/3'], picture, change: turnedOn });
  assert.equal(top.arrangement, undefined);
  const after = pictureOf({ ...barn, top }).placed;
  assert.deepEqual(
    after.flatMap(({ turn, path }, i) => (turn === picture.placed[i]?.turn ? [] : [path])),
    ['/top/rows/2/3'],
  );
});

test('turning four times and mirroring twice is nothing, for many places at once', () => {
  const { top } = example('lantern-lane');
  const paths = placesOf(top, null);
  const turning = structuredClone(top);
  for (let i = 0; i < 4; i++) changePlaces(turning, { paths, picture: null, change: turnedOn });
  for (let i = 0; i < 2; i++) changePlaces(turning, { paths, picture: null, change: mirrored });
  assert.deepEqual(turning, top);
  assert.equal(quarterOn(270), 0);
});

test('a place takes another block as the one before it lay, and a plain piece as its kind of set has it', () => {
  const cell: Held = { block: 'a', turn: 90, mirror: true, colouring: 'night' };
  assert.deepEqual(holding('b')(cell), { block: 'b', turn: 90, mirror: true });
  assert.deepEqual(holding('b')({ plain: 'oat' }), { block: 'b' });
  assert.deepEqual(inColouring('default')(cell), { block: 'a', turn: 90, mirror: true });
  assert.deepEqual(turned(0)(cell), { block: 'a', mirror: true, colouring: 'night' });
  assert.deepEqual(plain('oat')({ strip: 'x', width: '2' }), { strip: 'oat', width: '2' });
  const top: Top = {
    set: 'sections',
    sections: { across: [{ block: 'a' }, { down: [{ block: 'b' }, { fill: 'x' }] }] },
  };
  changePlaces(top, {
    paths: ['/top/sections/across/0', '/top/sections/across/1/down/0'],
    picture: null,
    change: plain('oat'),
  });
  assert.deepEqual(top.sections, { across: [{ fill: 'oat' }, { down: [{ fill: 'oat' }, { fill: 'x' }] }] });
});

test('two places give each other what they hold, also across the two kinds of rows on point', () => {
  const top: Top = {
    set: 'on-point',
    rows: [
      [{ block: 'a', turn: 90 }, { block: 'b' }],
      [{ block: 'b' }, { block: 'b' }],
    ],
    between: [[{ plain: 'x' }]],
  };
  swapPlaces(top, { paths: ['/top/rows/0/0', '/top/between/0/0'], picture: null });
  assert.deepEqual(heldAt(top, '/top/rows/0/0', null), { plain: 'x' });
  assert.deepEqual(heldAt(top, '/top/between/0/0', null), { block: 'a', turn: 90 });
  const once = structuredClone(top);
  swapPlaces(top, { paths: ['/top/rows/0/1', '/top/rows/1/1'], picture: null });
  assert.deepEqual(top, once);
});

test('a row and a column are those of the place, a run that of its section', () => {
  const { top } = example('lantern-lane');
  const places = placesOf(top, null);
  const rows = top.rows ?? [];
  assert.equal(rowWith('/top/rows/1/0', places).length, rows[1]?.length);
  assert.equal(columnWith('/top/rows/1/0', places).length, rows.length);
  assert.ok(columnWith('/top/between/0/0', places).every((path) => path.startsWith('/top/between/')));
  const deep = [
    '/top/sections/down/0/across/0',
    '/top/sections/down/0/across/1',
    '/top/sections/down/0/across/2/down/0',
  ];
  assert.deepEqual(rowWith(deep[0] as string, deep), deep.slice(0, 2));
});

test('what is no place is left alone', () => {
  const top: Top = { rows: [[{ block: 'a' }]] };
  const before = structuredClone(top);
  changePlaces(top, {
    paths: ['/top/rows/4/0', '/top/borders/0', '/top/sections/down/0'],
    picture: null,
    change: plain('x'),
  });
  assert.deepEqual(top, before);
});
