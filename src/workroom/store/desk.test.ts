import assert from 'node:assert/strict';
import { test } from 'node:test';
import { chanceFrom } from '#ground/chance';
import { beginEditing, isSame, type JsonObject } from '#workroom/editing';
import { type Desk, openDesk } from './desk.ts';
import { memoryShelf } from './memory-store.ts';
import type { KeptQuilt, Store } from './store.ts';

const begun: JsonObject = {
  title: 'Model',
  blocks: [{ id: 'cabin', size: 9 }],
  rows: [
    [0, 0, 0],
    [0, 0, 0],
  ],
  marks: {},
};
type Draft = {
  title: string;
  blocks: { id: string; size: number }[];
  rows: number[][];
  marks: { [key: string]: number };
};
const quilt: KeptQuilt = { id: 'q', title: 'Model', changedMs: 0, revision: 1, editing: beginEditing(begun) };

/** A store that takes what it is asked, and gives each answer, when the test lets it: a tab may hear of others between the two. */
const slowed = (store: Store, pending: (() => void)[]): Store => {
  const later = <T>(work: () => Promise<T>): Promise<T> =>
    new Promise((resolve, reject) => {
      pending.push(
        () =>
          void work().then(
            (answer) => pending.push(() => resolve(answer)),
            (error) => pending.push(() => reject(error)),
          ),
      );
    });
  return { ...store, read: (id) => later(() => store.read(id)), save: (save) => later(() => store.save(save)) };
};

const shelf = async (): Promise<() => Store> => {
  const open = memoryShelf();
  const { id, title, changedMs, editing } = quilt;
  const { document, done } = editing;
  await open().save({ id, basis: 0, title, changedMs, document, keep: 0, add: [], done });
  return open;
};

const letRun = async (): Promise<void> => {
  for (let i = 0; i < 12; i++) await Promise.resolve();
};

test('two tabs that edit one quilt at random end alike, and lose no edit that nobody gave up', async () => {
  let partings = 0;
  let takenIn = 0;
  for (let seed = 1; seed <= 100; seed++) {
    const drawn = chanceFrom(seed);
    const chance = (below: number): number => Math.floor(drawn() * below);
    const open = await shelf();
    const pending: (() => void)[] = [];
    const stores = [open(), open()];
    const desks = stores.map((store) => openDesk({ store: slowed(store, pending), kept: quilt, nowMs: () => seed }));
    const marks: string[] = [];
    const givenUp = new Set<string>();
    for (let turn = 0; turn < 60; turn++) {
      const desk = desks[chance(2)] as Desk;
      if (desk.state().keeping.state === 'parted') {
        partings += 1;
        const whose = chance(2) === 0 ? 'hers' : 'mine';
        const keeping = desk.state().keeping;
        if (whose === 'hers') giveUp(desk, givenUp);
        else if (keeping.state === 'parted')
          giveUpOf(keeping.hers.editing.document, desk.state().editing.document, givenUp);
        desk.choose(whose);
      } else editAtRandom(desk, { chance, mark: `m${turn}`, marks });
      for (let n = chance(4); n > 0; n--) pending.splice(chance(pending.length), 1)[0]?.();
      await letRun();
    }
    // all that waits is answered, and what has parted chooses what is here
    for (let round = 0; round < 500; round++) {
      for (const desk of desks) {
        const { keeping, editing } = desk.state();
        if (keeping.state !== 'parted') continue;
        giveUpOf(keeping.hers.editing.document, editing.document, givenUp);
        desk.choose('mine');
      }
      if (pending.length === 0) break;
      pending.shift()?.();
      await letRun();
    }
    const [a, b] = desks.map((desk) => desk.state());
    const kept = await stores[0]?.read('q');
    assert.equal(a?.keeping.state, 'kept', `seed ${seed}`);
    assert.ok(
      isSame(a?.editing.document as JsonObject, b?.editing.document as JsonObject),
      `seed ${seed}: tabs differ`,
    );
    assert.ok(
      isSame(a?.editing.document as JsonObject, kept?.editing.document as JsonObject),
      `seed ${seed}: not kept`,
    );
    const found = a?.editing.document.marks as JsonObject;
    const lost = marks.filter((mark) => !(mark in found) && !givenUp.has(mark));
    assert.deepEqual(lost, [], `seed ${seed}`);
    takenIn += (a?.takenIn ?? 0) + (b?.takenIn ?? 0);
  }
  // the model is worth something only if tabs do meet and do part
  assert.ok(partings > 50 && takenIn > 500, `${partings} partings, ${takenIn} taken in`);
});

const editAtRandom = (
  desk: Desk,
  of: { readonly chance: (below: number) => number; readonly mark: string; readonly marks: string[] },
): void => {
  const { chance, mark, marks } = of;
  const kind = chance(6);
  if (kind < 3) marks.push(mark);
  desk.edit({
    what: mark,
    change: (draft) => {
      const to = draft as unknown as Draft;
      switch (kind) {
        case 0:
        case 1:
        case 2:
          to.marks[mark] = 1;
          break;
        case 3:
          to.rows[chance(2)]?.splice(chance(3), 1, chance(1000));
          break;
        case 4:
          to.blocks.push({ id: mark, size: 6 });
          break;
        default:
          if (chance(4) === 0) to.title = mark;
          else to.rows.at(chance(2))?.reverse();
      }
    },
  });
};

/** Choosing hers gives up what only this tab has. */
const giveUp = (desk: Desk, into: Set<string>): void => {
  const { editing, keeping } = desk.state();
  if (keeping.state === 'parted') giveUpOf(editing.document, keeping.hers.editing.document, into);
};

const giveUpOf = (whose: JsonObject, against: JsonObject, into: Set<string>): void => {
  for (const mark of Object.keys(whose.marks as JsonObject))
    if (!(mark in (against.marks as JsonObject))) into.add(mark);
};

test('what another tab keeps while a save is on its way is met when its answer is there, and nothing parts', async () => {
  const open = await shelf();
  const pending: (() => void)[] = [];
  const goOn = async (at: number): Promise<void> => {
    pending.splice(at, 1)[0]?.();
    await letRun();
  };
  const mine = openDesk({ store: slowed(open(), pending), kept: quilt, nowMs: () => 1 });
  mine.edit({ what: 'Mine', change: (draft) => void Object.assign(draft, { title: 'Mine' }) });
  await goOn(0); // taken by the store, not answered yet
  const store = open();
  const hers = openDesk({ store, kept: (await store.read('q')) as KeptQuilt, nowMs: () => 2 });
  hers.edit({ what: 'Hers', change: (draft) => void Object.assign(draft, { blocks: [] }) });
  await hers.settled();
  // word of hers is here, the answer to the save is not: what came last goes first
  assert.equal(mine.state().keeping.state, 'keeping');
  for (let round = 0; round < 20 && pending.length > 0; round++) await goOn(pending.length - 1);
  const { keeping, editing } = mine.state();
  assert.equal(keeping.state, 'kept');
  assert.deepEqual([editing.document.title, editing.document.blocks], ['Mine', []]);
});

test('after a reload undo goes on where it stood', async () => {
  const open = await shelf();
  const store = open();
  const desk = openDesk({ store, kept: quilt, nowMs: () => 1 });
  const title = (to: string) => desk.edit({ what: to, change: (draft) => void Object.assign(draft, { title: to }) });
  title('One');
  title('Two');
  desk.undo();
  await desk.settled();
  desk.close();
  const again = openDesk({ store: open(), kept: (await store.read('q')) as KeptQuilt, nowMs: () => 2 });
  again.redo();
  assert.equal(again.state().editing.document.title, 'Two');
  again.undo();
  again.undo();
  assert.equal(again.state().editing.document.title, 'Model');
});

test('an edit after an undo takes the place of what was undone, also after a reload', async () => {
  const open = await shelf();
  const store = open();
  const desk = openDesk({ store, kept: quilt, nowMs: () => 1 });
  const title = (to: string) => desk.edit({ what: to, change: (draft) => void Object.assign(draft, { title: to }) });
  title('One');
  title('Two');
  await desk.settled();
  desk.undo();
  title('Three');
  await desk.settled();
  const kept = await store.read('q');
  assert.deepEqual(
    kept?.editing.steps.map(({ what }) => what),
    ['One', 'Three'],
  );
});

test('a quilt that another tab removed is not brought back by a save', async () => {
  const open = await shelf();
  const other = open();
  // this tab does not hear of it
  const desk = openDesk({ store: { ...open(), watch: () => () => undefined }, kept: quilt, nowMs: () => 1 });
  await other.remove('q');
  desk.edit({ what: 'Late', change: (draft) => void Object.assign(draft, { title: 'Late' }) });
  await desk.settled();
  assert.equal(desk.state().keeping.state, 'removed');
  assert.equal(await other.read('q'), null);
});

test('a save that fails is said, and tried again with the next edit', async () => {
  const open = await shelf();
  const store = open();
  let isFull = true;
  const full: Store = { ...store, save: (save) => (isFull ? Promise.reject(new Error('no')) : store.save(save)) };
  const desk = openDesk({ store: full, kept: quilt, nowMs: () => 1 });
  const title = (to: string) => desk.edit({ what: to, change: (draft) => void Object.assign(draft, { title: to }) });
  title('One');
  await desk.settled();
  assert.equal(desk.state().keeping.state, 'failed');
  isFull = false;
  title('Two');
  await desk.settled();
  assert.equal(desk.state().keeping.state, 'kept');
  assert.equal((await store.read('q'))?.editing.steps.length, 2);
});
