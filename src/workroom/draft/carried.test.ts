import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { askBlock, askQuilt } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import type { Block } from './block-edits.ts';
import { carriedFrom, carriedIn, putCarried, quiltOf } from './carried.ts';

const plain = (id: string, tone: string): Block => ({
  id,
  size: '4',
  patches: {
    grid: [2, 1],
    list: [
      {
        points: [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
        tone,
      },
      {
        points: [
          [1, 0],
          [2, 0],
          [2, 1],
          [1, 1],
        ],
        tone: 'second',
      },
    ],
  },
  colourings: { default: { second: 'slate' } },
});

const from = (): QuiltDocument => ({
  format: 'seamstead-quilt',
  version: 1,
  unit: 'in',
  fabrics: [
    { id: 'oat', name: 'Oat', colour: '#efe6d0', price: 9, usableWidth: '42' },
    { id: 'slate', name: 'Slate', colour: '#2f3c44' },
    { id: 'moss', name: 'Moss', colour: '#556b2f' },
  ],
  blocks: [
    plain('core', 'oat'),
    {
      id: 'round',
      recipe: {
        kind: 'log-cabin',
        centre: { block: 'core' },
        rounds: [{ width: '1', tones: ['oat', 'slate', 'oat', 'slate'] }],
      },
    },
    plain('other', 'moss'),
  ],
  top: { rows: [[{ block: 'round' }]] },
});

const to = (unit: 'in' | 'cm'): QuiltDocument => ({
  format: 'seamstead-quilt',
  version: 1,
  unit,
  // Slate is here under another id, and the id "oat" is of another cloth
  fabrics: [
    { id: 'grey', name: 'slate', colour: '#303c44' },
    { id: 'oat', name: 'Porridge', colour: '#cccccc' },
  ],
  blocks: [
    { ...plain('core', 'oat'), colourings: { default: { second: 'grey' } } },
    { ...plain('block', 'grey'), colourings: { default: { second: 'oat' } } },
  ],
  top: { rows: [[{ block: 'core' }]] },
});

const answerOf = (quilt: QuiltDocument, id: string) => {
  const reply = askBlock(quilt as unknown as JsonObject, id);
  assert.ok(reply.ok, JSON.stringify(reply));
  return reply.value.picture;
};

test('a block takes along what lies in its centre, and its cloths alone', () => {
  const carried = carriedFrom(from(), 'round');
  assert.deepEqual(
    [carried?.blocks.map(({ id }) => id), carried?.fabrics.map(({ id }) => id)],
    [
      ['round', 'core'],
      ['oat', 'slate'],
    ],
  );
  assert.equal(carriedFrom(from(), 'none'), null);
});

test('in another quilt cloths of one name are one, others join it, and nothing there changes', () => {
  const quilt = to('in');
  const before = structuredClone(quilt);
  const carried = carriedFrom(from(), 'round') ?? assert.fail('not carried');
  const id = putCarried(quilt, carried);
  assert.equal(id, 'round');
  assert.deepEqual(
    quilt.fabrics.map((fabric) => `${fabric.id} ${fabric.name}`),
    ['grey slate', 'oat Porridge', 'oat-2 Oat'],
  );
  assert.deepEqual(quilt.blocks.slice(0, 2), before.blocks);
  const picture = answerOf(quilt, id);
  assert.deepEqual(picture.size, [6, 6]);
  assert.deepEqual(picture.patches.map(({ fabric }) => fabric).toSorted(), [
    'grey',
    'grey',
    'grey',
    'oat-2',
    'oat-2',
    'oat-2',
  ]);
  assert.ok(askQuilt(quilt as unknown as JsonObject).ok);
});

test('between inches and centimetres a block stays as large as it was', () => {
  const quilt = to('cm');
  const id = putCarried(quilt, carriedFrom(from(), 'round') ?? assert.fail('not carried'));
  // 6 in are 15.24 cm by definition of the inch
  assert.deepEqual(answerOf(quilt, id).size, [15.24, 15.24]);
  const cloth = quilt.fabrics.find((fabric) => fabric.name === 'Oat');
  assert.deepEqual([cloth?.usableWidth, cloth?.price], ['42 in', undefined]);
});

test('a quilt begins with a block and can be sewn at once', () => {
  const carried = carriedFrom(from(), 'other') ?? assert.fail('not carried');
  const quilt = quiltOf(carried);
  const reply = askQuilt(quilt as unknown as JsonObject);
  assert.ok(reply.ok && reply.value.picture.placed.length === 16);
});

test('what was kept is read again, and what is no block is none', () => {
  const carried = carriedFrom(from(), 'round');
  assert.deepEqual(carriedIn(JSON.parse(JSON.stringify(carried))), carried);
  for (const other of [null, 3, {}, { unit: 'in', blocks: [], fabrics: [] }, { unit: 'in', blocks: [{}], fabrics: [] }])
    assert.equal(carriedIn(other), null);
});
