import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { JsonObject } from '#workroom/editing';
import { askBlock, askQuilt, askText } from './asking.ts';
import { askCollection } from './collected.ts';

const harvest = readFileSync('examples/harvest-home-throw.quilt.json', 'utf8');
const document = JSON.parse(harvest) as JsonObject;

test('the figures of the throw are those of its plan, and can be sent', () => {
  const reply = askQuilt(document);
  assert.ok(reply.ok);
  const { figures, picture, cloths } = structuredClone(reply.value);
  // the document: 6 × 6 blocks of 9 in, borders of 1½ and 3½ in: 54 + 3 + 7 = 64 in
  assert.deepEqual(figures.top, [64, 64]);
  // 36 blocks of 13 pieces take 12 seams each, 6 rows of 5, 5 between rows, 8 of the borders: README prints the sum
  assert.equal(figures.seams, 36 * 12 + 30 + 5 + 8);
  assert.equal(picture.placed.length, 36);
  assert.equal(picture.placed[7]?.path, '/top/rows/1/1');
  assert.equal(picture.entries[0]?.patches.length, 13);
  assert.ok(cloths.some(({ id }) => id === 'oat'));
  assert.ok(figures.leftOver > 0 && figures.leftOver < 0.5);
});

test('a block by itself is answered whatever else is wrong with the quilt', () => {
  const broken = { ...document, top: { rows: [[{ block: 'nothing' }]] } };
  assert.equal(askQuilt(broken).ok, false);
  const reply = askBlock(broken, 'cabin');
  assert.ok(reply.ok);
  // a centre of 3 in and three rounds of 1 in
  assert.deepEqual(reply.value.picture.size, [9, 9]);
  assert.equal(reply.value.joining, 'straight');
  assert.equal(reply.value.steps, 12);
  // centre first and log by log: the log cabin of the worked figures goes on one
  assert.equal(reply.value.foundations, 1);
  assert.deepEqual(reply.value.picture.patches[0]?.cut, [3.5, 3.5]);
});

test('sizes that a ruler has are those within the frame', () => {
  const colourings = { default: { light: 'oat', dark: 'slate', medium: 'plum' } };
  const star = (frame: object) => ({
    ...document,
    blocks: [{ id: 'star', from: 'ohio-star', size: '6', colourings, ...frame }],
  });
  const [bare, framed] = [{}, { frame: [{ width: '1/2', fabric: 'slate' }] }].map((one) => askBlock(star(one), 'star'));
  assert.ok(bare?.ok && framed?.ok);
  assert.deepEqual(framed.value.picture.size, [7, 7]);
  assert.ok(bare.value.friendly.some(([side]) => side === 6));
  assert.deepEqual(framed.value.friendly, bare.value.friendly);
});

test('a problem is told with its place and how to mend it', () => {
  const reply = askQuilt({ ...document, blocks: [] });
  assert.ok(!reply.ok && reply.problems.length > 0);
  assert.ok(reply.problems.every(({ where, what, mend }) => where !== '' && what !== '' && mend !== ''));
});

test('a tone that has left the drawing keeps its cloth, and nobody is told to look for a slip', () => {
  const [cabin] = document.blocks as JsonObject[];
  const { colourings } = cabin as { readonly colourings: { readonly default: JsonObject } };
  const named = {
    ...document,
    blocks: [{ ...cabin, colourings: { default: { ...colourings.default, gone: 'oat' } } }],
  };
  for (const reply of [askBlock(document, 'cabin'), askBlock(named, 'cabin')]) {
    assert.ok(reply.ok);
    assert.deepEqual(reply.value.notes, []);
  }
});

test('seams of a block are all that are sewn, also those of units that are alike', () => {
  const colourings = { default: { light: 'oat', dark: 'slate' } };
  const reply = askBlock({ ...document, blocks: [{ id: 'wheel', from: 'pinwheel', size: '6', colourings }] }, 'wheel');
  assert.ok(reply.ok);
  // four squares of two triangles, two rows of two squares, one seam between the rows
  assert.deepEqual([reply.value.pieces, reply.value.steps], [8, 4 + 2 + 1]);
});

test('problems and notes name a block and a cloth as the maker does', () => {
  const points = [
    [0, 0],
    [4, 0],
    [4, 3],
    [0, 3],
  ];
  const gap = { size: '4', patches: { grid: [4, 4], list: [{ points, tone: 'oat' }] } };
  const own = {
    ...document,
    blocks: [{ id: 'block', title: 'Kitchen window', ...gap }],
    top: { rows: [[{ block: 'block' }]] },
  };
  for (const reply of [askQuilt(own), askBlock(own, 'block')]) {
    assert.ok(!reply.ok);
    assert.match(reply.problems[0]?.what ?? '', /^Block “Kitchen window” has a hole of 4 square inches/);
  }
});

test('a text that is no document is refused with its problems', () => {
  const sound = askText(harvest);
  assert.ok(sound.ok && sound.problems.length === 0);
  // a byte-order mark, as some editors write it, is passed over
  assert.ok(askText(`\uFEFF${harvest}`).ok);
  assert.equal(askText('{"format": "other"}').ok, false);
  assert.equal(askText('not at all').ok, false);
});

test('a document that has its form opens with what is still to mend; one that has not is refused', () => {
  const broken = (name: string) => askText(readFileSync(`examples/broken/${name}.quilt.json`, 'utf8'));
  // names, lengths and sums that are wrong, a key too many: every part can be shown
  for (const name of [
    'unknown-fabric',
    'unknown-key',
    'sizes-differ',
    'negative-length',
    'no-fabrics',
    'colour-by-name',
    // well written, and not to be sewn: a hole in a block, a border that does not fit
    'gap',
    'border-that-does-not-fit',
  ]) {
    const reply = broken(name);
    assert.ok(reply.ok && reply.problems.length > 0, name);
    assert.ok(reply.problems.every(({ where, what, mend }) => where !== '' && what !== '' && mend !== ''));
  }
  // parts of another form, another format, a version to come, keys twice, no JSON
  for (const name of [
    'half-a-row',
    'another-format',
    'newer-version',
    'key-twice',
    'prototype-key',
    'truncated',
    'photo-elsewhere',
  ])
    assert.ok(!broken(name).ok, name);
});

test('a block of the collection is sorted by what it is drawn on and by the shapes in it', () => {
  const of = (id: string) => {
    const block = askCollection().find((one) => one.id === id) ?? assert.fail(id);
    return [block.family, block.shapes, block.patches.length];
  };
  // as the trade draws them: three squares a side with four hourglasses; a square, four geese and four corners; logs
  assert.deepEqual(of('ohio-star'), ['nine-patch', ['square', 'quarter-square'], 21]);
  assert.deepEqual(of('sawtooth-star'), ['four-patch', ['square', 'half-square', 'quarter-square'], 17]);
  assert.deepEqual(of('log-cabin'), ['logs', ['square', 'rectangle'], 13]);
  assert.deepEqual(of('lemoyne-star').slice(0, 1), ['eight-pointed']);
  assert.deepEqual(of('bears-paw').slice(0, 1), ['seven-patch']);
});
