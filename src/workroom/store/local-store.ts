// Quilts in the browser's plain storage, one text each: where its database is closed to us. It holds some five million
// characters and has no transactions; reading, comparing and writing stand in one go, so that only two tabs of one instant
// could still cross.
import { otherTabs } from './other-tabs.ts';
import { afterSave, byLastChanged, type KeptQuilt, lineOf, type Store, StoreFull } from './store.ts';

const prefix = 'seamstead/quilt/';

export const localStore = (): Store => {
  const tabs = otherTabs();
  const read = (id: string): KeptQuilt | null => {
    const text = localStorage.getItem(prefix + id);
    return text === null ? null : (JSON.parse(text) as KeptQuilt);
  };
  return {
    lasts: 'in-browser',
    list: async () => {
      const keys = Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? '');
      const ids = keys.filter((key) => key.startsWith(prefix)).map((key) => key.slice(prefix.length));
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
      tabs.tell(id);
    },
    watch: tabs.watch,
    close: tabs.close,
  };
};

const write = (key: string, text: string): void => {
  try {
    localStorage.setItem(key, text);
  } catch (error) {
    throw error instanceof DOMException && error.name === 'QuotaExceededError' ? new StoreFull() : error;
  }
};
