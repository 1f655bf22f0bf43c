// Quilts in the browser's database: the quilt as it stands in one place, its steps one by one in another, so that a save
// writes no more than what is new. A save is one transaction over both, and the browser lets no two of them cross. Restore points lie
// among the steps, under names where those have numbers: a place of their own would ask for another version of the database, which no
// browser gives while an older tab is open.
import type { JsonObject, Step } from '#workroom/editing';
import { otherTabs } from './other-tabs.ts';
import {
  byLastChanged,
  byLastMade,
  type KeptQuilt,
  lineOf,
  type QuiltLine,
  type RestorePoint,
  type Save,
  type Saved,
  type Store,
  StoreFull,
} from './store.ts';

interface Row extends QuiltLine {
  readonly document: JsonObject;
  readonly done: number;
}

const quilts = 'quilts';
const steps = 'steps';

/** Rejects where the browser has no database for us. */
export const indexedStore = async (name = 'seamstead'): Promise<Store> => {
  const database = await opened(name);
  const tabs = otherTabs();
  return {
    lasts: 'in-browser',
    list: async () => {
      const rows = await answerOf<readonly Row[]>(database.transaction(quilts).objectStore(quilts).getAll());
      return byLastChanged(rows.map(lineOf));
    },
    read: (id) => readIn(database.transaction([quilts, steps]), id),
    save: async (save) => {
      const saved = await saveIn(database.transaction([quilts, steps], 'readwrite'), save);
      if (saved.outcome === 'saved') tabs.tell(save.id);
      return saved;
    },
    remove: async (id) => {
      const transaction = database.transaction([quilts, steps], 'readwrite');
      transaction.objectStore(quilts).delete(id);
      transaction.objectStore(steps).delete(allOf(id));
      await endOf(transaction);
      tabs.tell(id);
    },
    points: async (quilt) =>
      byLastMade(await answerOf(database.transaction(steps).objectStore(steps).getAll(pointsOf(quilt)))),
    point: async (quilt, id) =>
      (await answerOf<RestorePoint | undefined>(
        database.transaction(steps).objectStore(steps).get(pointKey(quilt, id)),
      )) ?? null,
    keepPoint: async (quilt, point) => {
      const kept = await keepPointIn(database.transaction([quilts, steps], 'readwrite'), { quilt, point });
      if (kept === 'kept') tabs.tell(quilt);
      return kept;
    },
    removePoint: async (quilt, id) => {
      const transaction = database.transaction(steps, 'readwrite');
      transaction.objectStore(steps).delete(pointKey(quilt, id));
      await endOf(transaction);
      tabs.tell(quilt);
    },
    watch: tabs.watch,
    close: () => {
      tabs.close();
      database.close();
    },
  };
};

const opened = (name: string): Promise<IDBDatabase> => {
  const request = indexedDB.open(name, 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore(quilts, { keyPath: 'id' });
    request.result.createObjectStore(steps);
  };
  return answerOf<IDBDatabase>(request);
};

const readIn = async (transaction: IDBTransaction, id: string): Promise<KeptQuilt | null> => {
  // both are asked for at once: a transaction ends when nothing is asked of it
  const [row, done] = await Promise.all([
    answerOf<Row | undefined>(transaction.objectStore(quilts).get(id)),
    answerOf<readonly Step[]>(transaction.objectStore(steps).getAll(stepsFrom(id, 0))),
  ]);
  return row === undefined
    ? null
    : { ...lineOf(row), editing: { document: row.document, steps: done, done: row.done } };
};

const saveIn = async (transaction: IDBTransaction, save: Save): Promise<Saved> => {
  const { id, basis, title, changedMs, document, keep, add, done } = save;
  const row = await answerOf<Row | undefined>(transaction.objectStore(quilts).get(id));
  if (row === undefined && basis > 0) return { outcome: 'removed' };
  if (row !== undefined && row.revision !== basis) {
    const kept = await readIn(transaction, id);
    return kept === null ? { outcome: 'removed' } : { outcome: 'newer', kept };
  }
  const revision = basis + 1;
  transaction.objectStore(steps).delete(stepsFrom(id, keep));
  for (const [i, step] of add.entries()) transaction.objectStore(steps).put(step, [id, keep + i]);
  const next: Row = { id, title, changedMs, revision, document, done };
  transaction.objectStore(quilts).put(next);
  await endOf(transaction);
  return { outcome: 'saved', revision };
};

const keepPointIn = async (
  transaction: IDBTransaction,
  { quilt, point }: { readonly quilt: string; readonly point: RestorePoint },
): Promise<'kept' | 'removed'> => {
  const row = await answerOf<Row | undefined>(transaction.objectStore(quilts).get(quilt));
  if (row === undefined) return 'removed';
  transaction.objectStore(steps).put(point, pointKey(quilt, point.id));
  await endOf(transaction);
  return 'kept';
};

const pointKey = (quilt: string, id: string): IDBValidKey => [quilt, 'point', id];
/** A list comes after every text. */
const pointsOf = (quilt: string): IDBKeyRange => IDBKeyRange.bound([quilt, 'point'], [quilt, 'point', []]);
/** Steps and points: numbers and texts come before lists. */
const allOf = (quilt: string): IDBKeyRange => IDBKeyRange.bound([quilt], [quilt, []]);

const stepsFrom = (id: string, first: number): IDBKeyRange =>
  IDBKeyRange.bound([id, first], [id, Number.POSITIVE_INFINITY]);

const answerOf = <T>(request: IDBRequest): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result as T);
    request.onerror = () => reject(reasonOf(request.error));
  });

const endOf = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(reasonOf(transaction.error));
  });

const reasonOf = (error: DOMException | null): Error =>
  error?.name === 'QuotaExceededError'
    ? new StoreFull()
    : (error ?? new Error('the browser’s database gave no answer'));
