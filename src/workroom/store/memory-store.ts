// Quilts kept for as long as the page is open: where a browser allows no storage, and where several tabs are tried in a test.
import {
  afterSave,
  byLastChanged,
  byLastMade,
  type KeptQuilt,
  lineOf,
  type RestorePoint,
  type Store,
} from './store.ts';

/** @returns opens stores on one shelf: each is a tab of its own */
export const memoryShelf = (): (() => Store) => {
  const kept = new Map<string, KeptQuilt>();
  const points = new Map<string, Map<string, RestorePoint>>();
  const watchers = new Map<number, (id: string) => void>();
  let opened = 0;
  return () => {
    const me = opened++;
    const tell = (id: string): void => {
      for (const [other, see] of watchers) if (other !== me) see(id);
    };
    return {
      lasts: 'in-page',
      list: async () => byLastChanged([...kept.values()].map(lineOf)),
      read: async (id) => kept.get(id) ?? null,
      save: async (save) => {
        const { saved, next } = afterSave(kept.get(save.id) ?? null, save);
        if (saved.outcome === 'saved' && next !== null) {
          kept.set(save.id, next);
          tell(save.id);
        }
        return saved;
      },
      remove: async (id) => {
        kept.delete(id);
        points.delete(id);
        tell(id);
      },
      points: async (quilt) => byLastMade([...(points.get(quilt)?.values() ?? [])]),
      point: async (quilt, id) => points.get(quilt)?.get(id) ?? null,
      keepPoint: async (quilt, point) => {
        if (!kept.has(quilt)) return 'removed';
        const own = points.get(quilt) ?? new Map<string, RestorePoint>();
        points.set(quilt, own.set(point.id, point));
        tell(quilt);
        return 'kept';
      },
      removePoint: async (quilt, id) => {
        points.get(quilt)?.delete(id);
        tell(quilt);
      },
      watch: (see) => {
        watchers.set(me, see);
        return () => void watchers.delete(me);
      },
      close: () => void watchers.delete(me),
    };
  };
};
