// Quilts in the browser's plain storage, one text each: where its database is closed to us. It holds some five million
// characters and has no transactions; reading, comparing and writing stand in one go, so that only two tabs of one instant
// could still cross.
import { otherTabs } from './other-tabs.ts';
import {
  afterSave,
  byLastChanged,
  byLastMade,
  type KeptQuilt,
  lineOf,
  type RestorePoint,
  type Store,
  StoreFull,
} from './store.ts';

const prefix = 'seamstead/quilt/';
const pointsOf = (quilt: string): string => `seamstead/point/${quilt}/`;

export const localStore = (): Store => {
  const tabs = otherTabs();
  const read = (id: string): KeptQuilt | null => {
    const text = localStorage.getItem(prefix + id);
    return text === null ? null : (JSON.parse(text) as KeptQuilt);
  };
  return {
    lasts: 'in-browser',
    list: async () => {
      const ids = keysWith(prefix).map((key) => key.slice(prefix.length));
      return byLastChanged(ids.flatMap((id) => read(id) ?? []).map(lineOf));
    },
    read: async (id) => read(id),
    save: async (save) => {
      const { saved, next } = afterSave(read(save.id), save);
      if (saved.outcome === 'saved') {
        write(prefix + save.id, JSON.stringify(next));
        tabs.tell(save.id);
      }
      return saved;
    },
    remove: async (id) => {
      localStorage.removeItem(prefix + id);
      for (const key of keysWith(pointsOf(id))) localStorage.removeItem(key);
      tabs.tell(id);
    },
    points: async (quilt) => byLastMade(keysWith(pointsOf(quilt)).flatMap((key) => pointAt(key) ?? [])),
    point: async (quilt, id) => pointAt(pointsOf(quilt) + id),
    keepPoint: async (quilt, point) => {
      if (localStorage.getItem(prefix + quilt) === null) return 'removed';
      write(pointsOf(quilt) + point.id, JSON.stringify(point));
      tabs.tell(quilt);
      return 'kept';
    },
    removePoint: async (quilt, id) => {
      localStorage.removeItem(pointsOf(quilt) + id);
      tabs.tell(quilt);
    },
    watch: tabs.watch,
    close: tabs.close,
  };
};

const keysWith = (start: string): readonly string[] =>
  Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? '').filter((key) =>
    key.startsWith(start),
  );

const pointAt = (key: string): RestorePoint | null => {
  const text = localStorage.getItem(key);
  return text === null ? null : (JSON.parse(text) as RestorePoint);
};

const write = (key: string, text: string): void => {
  try {
    localStorage.setItem(key, text);
  } catch (error) {
    throw error instanceof DOMException && error.name === 'QuotaExceededError' ? new StoreFull() : error;
  }
};
