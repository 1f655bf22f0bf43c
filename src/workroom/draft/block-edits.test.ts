import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { askBlock, askQuilt } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { addBlock, type Block, blankBlock, cabinOf, freeId, fromCollection, usesOf } from './block-edits.ts';
import {
  centresFor,
  colourLog,
  evenRound,
  firstCabin,
  logOfPatch,
  setCentre,
  setLastLogs,
  setLogWidth,
  setOrder,
  setRounds,
  setWidth,
} from './cabin-edits.ts';

const fabrics: QuiltDocument['fabrics'] = [
  { id: 'oat', colour: '#efe6d0' },
  { id: 'slate', colour: '#2f3c44' },
  { id: 'ember', colour: '#b1452f' },
];
const blank = (): QuiltDocument => ({
  format: 'seamstead-quilt',
  version: 1,
  unit: 'in',
  fabrics: [...fabrics],
  blocks: [blankBlock({ unit: 'in', fabrics, blocks: [] })],
  top: { rows: [[{ block: 'block' }]] },
});
const cabinIn = (block: Block) => cabinOf(block) ?? assert.fail('no log cabin');
const sizeOf = (document: QuiltDocument, id: string) => {
  const reply = askBlock(document as unknown as JsonObject, id);
  assert.ok(reply.ok, JSON.stringify(reply));
  return reply.value.picture.size;
};

test('a first block takes the place of the plain one, in the top too', () => {
  const quilt = blank();
  addBlock(quilt, firstCabin(quilt));
  assert.deepEqual(
    quilt.blocks.map(({ id }) => id),
    ['log-cabin'],
  );
  assert.ok(askQuilt(quilt as unknown as JsonObject).ok);
  // a centre of 3 in and three rounds of 1 in on either side
  assert.deepEqual(sizeOf(quilt, 'log-cabin'), [9, 9]);
  addBlock(quilt, firstCabin(quilt));
  assert.deepEqual(
    quilt.blocks.map(({ id }) => id),
    ['log-cabin', 'log-cabin-2'],
  );
  assert.deepEqual([usesOf(quilt, 'log-cabin'), usesOf(quilt, 'log-cabin-2')], [1, 0]);
});

test('lights, darks and the accent are found among the cloths', () => {
  assert.deepEqual(firstCabin(blank()).colourings?.default, { accent: 'ember', light: 'oat', dark: 'slate' });
});

test('rounds, widths and logs of the last round give the size that adding up gives', () => {
  const quilt = blank();
  const block = firstCabin(quilt);
  addBlock(quilt, block);
  setRounds(cabinIn(block), 4);
  assert.deepEqual(sizeOf(quilt, block.id), [11, 11]);
  setWidth(cabinIn(block), 3, '1/2');
  assert.deepEqual(sizeOf(quilt, block.id), [10, 10]);
  // the last round is left and top alone: 3 + 6 + ½ each way
  setLastLogs(cabinIn(block), 2);
  assert.deepEqual(sizeOf(quilt, block.id), [9.5, 9.5]);
  // one more round makes the one before it whole again
  setRounds(cabinIn(block), 5);
  assert.deepEqual(sizeOf(quilt, block.id), [11, 11]);
});

test('sides keep their tones in another order: courthouse steps, and two sides alone', () => {
  const quilt = blank();
  const block = firstCabin(quilt);
  addBlock(quilt, block);
  setOrder(cabinIn(block), ['top', 'bottom', 'left', 'right']);
  assert.deepEqual(cabinIn(block).rounds[0]?.tones, ['light', 'dark', 'light', 'dark']);
  assert.deepEqual(sizeOf(quilt, block.id), [9, 9]);
  setOrder(cabinIn(block), ['right', 'bottom']);
  assert.deepEqual(cabinIn(block).rounds[2]?.tones, ['dark', 'dark']);
  // three rounds on two sides: 3 + 3
  assert.deepEqual(sizeOf(quilt, block.id), [6, 6]);
});

test('one log in a cloth of its own leaves the others of its tone', () => {
  const quilt = blank();
  const block = firstCabin(quilt);
  addBlock(quilt, block);
  colourLog(block, { at: [1, 2], cloth: 'ember' });
  const reply = askBlock(quilt as unknown as JsonObject, block.id);
  assert.ok(reply.ok);
  const cloths = reply.value.picture.patches.map(({ fabric }) => fabric);
  // the centre, then the logs in order of sewing: the third of the second round is the seventh log
  assert.deepEqual(
    cloths.flatMap((cloth, i) => (cloth === 'ember' ? [i] : [])),
    [0, 7],
  );
});

test('a centre may be oblong or pieced, and plain again', () => {
  const quilt = blank();
  const block = firstCabin(quilt);
  addBlock(quilt, block);
  setCentre(block, 'oblong', '3');
  assert.deepEqual(cabinIn(block).centre, ['3', '3']);
  const core = fromCollection(quilt, {
    id: 'ohio-star',
    name: 'Ohio Star',
    tones: ['light', 'medium', 'dark'],
    size: '4 1/2',
  });
  addBlock(quilt, core);
  setCentre(block, { block: 'ohio-star' }, '3');
  // 4½ in and three rounds of 1 in on either side
  assert.deepEqual(sizeOf(quilt, block.id), [10.5, 10.5]);
  assert.equal(usesOf(quilt, 'ohio-star'), 1);
  assert.equal(cabinIn(block).centreTone, undefined);
  setCentre(block, 'square', '3');
  assert.deepEqual([cabinIn(block).centre, cabinIn(block).centreTone], ['3', 'accent']);
  assert.deepEqual(sizeOf(quilt, block.id), [9, 9]);
});

test('a block lies in no centre of its own, however many there are between', () => {
  const quilt = blank();
  const cabin = (centre: string): Block => ({ ...firstCabin(quilt), id: `round ${centre}` });
  const [inner, outer] = [cabin('a'), cabin('b')];
  quilt.blocks.push(inner, outer);
  setCentre(outer, { block: inner.id }, '3');
  assert.deepEqual(
    centresFor(quilt.blocks, inner.id).map(({ id }) => id),
    ['block'],
  );
  assert.deepEqual(
    centresFor(quilt.blocks, outer.id).map(({ id }) => id),
    ['block', 'round a'],
  );
});

test('one log has a width of its own, and all are even again', () => {
  const quilt = blank();
  const block = firstCabin(quilt);
  addBlock(quilt, block);
  setLogWidth(cabinIn(block), [2, 0], '1 1/2');
  assert.deepEqual(cabinIn(block).rounds[2]?.width, ['1 1/2', '1', '1', '1']);
  assert.deepEqual(sizeOf(quilt, block.id), [9.5, 9]);
  evenRound(cabinIn(block), 2);
  assert.deepEqual(sizeOf(quilt, block.id), [10, 10]);
});

test('logs are told from the centre and the frame, whatever the centre is', () => {
  const quilt = blank();
  const block = firstCabin(quilt);
  // a plain centre and twelve logs, then a frame of four strips
  assert.equal(logOfPatch(block, { patch: 0, patches: 13 }), null);
  assert.deepEqual(logOfPatch(block, { patch: 1, patches: 13 }), [0, 0]);
  const framed: Block = { ...block, frame: [{ width: '1', fabric: 'oat' }] };
  assert.deepEqual(logOfPatch(framed, { patch: 12, patches: 17 }), [2, 3]);
  assert.equal(logOfPatch(framed, { patch: 13, patches: 17 }), null);
  // a centre of five patches
  assert.equal(logOfPatch(block, { patch: 4, patches: 17 }), null);
  assert.deepEqual(logOfPatch(block, { patch: 9, patches: 17 }), [1, 0]);
});

test('a block of the collection is coloured and can be sewn at once', () => {
  const quilt = blank();
  const block = fromCollection(quilt, {
    id: 'ohio-star',
    name: 'Ohio Star',
    tones: ['light', 'medium', 'dark'],
    size: '9',
  });
  addBlock(quilt, block);
  assert.deepEqual(sizeOf(quilt, 'ohio-star'), [9, 9]);
});

test('a name that is taken gets a number', () => {
  assert.equal(freeId('star', [{ id: 'star' }, { id: 'star-2' }]), 'star-3');
});
