import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { JsonObject } from '#workroom/editing';
import { memoryShelf } from './memory-store.ts';
import { openPoints, type PointBook } from './point-book.ts';
import { type Store, StoreFull } from './store.ts';

const document: JsonObject = { title: 'Model', top: { rows: [[{ block: 'cabin' }]] }, blocks: [{ id: 'cabin' }] };

const shelf = async (): Promise<() => Store> => {
  const open = memoryShelf();
  await open().save({ id: 'q', basis: 0, title: '', changedMs: 0, document, keep: 0, add: [], done: 0 });
  return open;
};

const openBook = (store: Store, begun = 0): PointBook => {
  let count = begun;
  return openPoints({ store, quilt: 'q', nowMs: () => ++count, freshId: () => `p${count}` });
};

const letRun = async (): Promise<void> => {
  for (let i = 0; i < 8; i++) await Promise.resolve();
};

const names = (book: PointBook) => book.state().points?.map(({ name }) => name);

test('a point is kept byte for byte, and is there for the next who opens the quilt', async () => {
  const open = await shelf();
  const book = openBook(open());
  const line = await book.keep({ name: 'Begun', document });
  assert.ok(line);
  const again = openBook(open());
  await letRun();
  assert.deepEqual(names(again), ['Begun']);
  assert.equal(JSON.stringify((await again.read(line.id))?.document), JSON.stringify(document));
});

test('the last made stands first, and no two have one name', async () => {
  const book = openBook((await shelf())());
  for (let n = 0; n < 3; n++) await book.keep({ name: 'Begun', document });
  assert.deepEqual(names(book), ['Begun 3', 'Begun 2', 'Begun']);
});

test('two that are kept in one go have names of their own', async () => {
  const book = openBook((await shelf())());
  const lines = await Promise.all([book.keep({ name: 'Begun', document }), book.keep({ name: 'Begun', document })]);
  assert.deepEqual(
    lines.map((line) => line?.name),
    ['Begun', 'Begun 2'],
  );
});

test('what one tab keeps, renames and removes is told to another', async () => {
  const open = await shelf();
  const [mine, hers] = [openBook(open()), openBook(open(), 100)];
  const line = await mine.keep({ name: 'Begun', document });
  await letRun();
  assert.deepEqual(names(hers), ['Begun']);
  await hers.rename(line?.id ?? '', 'Before the border');
  await letRun();
  assert.deepEqual(names(mine), ['Before the border']);
  assert.equal(JSON.stringify((await mine.read(line?.id ?? ''))?.document), JSON.stringify(document));
  await mine.remove(line?.id ?? '');
  await letRun();
  assert.deepEqual(names(hers), []);
  hers.close();
  await mine.keep({ name: 'Again', document });
  await letRun();
  assert.deepEqual(names(hers), [], 'one that is closed hears nothing');
});

test('one that was removed can be brought back as it was', async () => {
  const book = openBook((await shelf())());
  const line = await book.keep({ name: 'Begun', document });
  const before = await book.read(line?.id ?? '');
  await book.remove(line?.id ?? '');
  assert.deepEqual(names(book), []);
  await book.bringBack();
  assert.deepEqual(await book.read(line?.id ?? ''), before);
  assert.equal(book.state().removed, null);
});

test('points go with their quilt, and none is kept of a quilt that is gone', async () => {
  const open = await shelf();
  const book = openBook(open());
  await book.keep({ name: 'Begun', document });
  const store = open();
  await store.remove('q');
  assert.deepEqual(await store.points('q'), []);
  assert.equal(await book.keep({ name: 'Late', document }), null);
  assert.equal(book.state().fault, 'removed');
  await store.save({ id: 'q', basis: 0, title: '', changedMs: 0, document, keep: 0, add: [], done: 0 });
  assert.deepEqual(await store.points('q'), [], 'another quilt of its id begins without any');
});

test('a browser without room is told of, and the next wish tries again', async () => {
  const store = (await shelf())();
  let isFull = true;
  const full: Store = {
    ...store,
    keepPoint: (quilt, point) => (isFull ? Promise.reject(new StoreFull()) : store.keepPoint(quilt, point)),
  };
  const book = openBook(full);
  assert.equal(await book.keep({ name: 'Begun', document }), null);
  assert.equal(book.state().fault, 'full');
  isFull = false;
  assert.ok(await book.keep({ name: 'Begun', document }));
  assert.equal(book.state().fault, null);
});
