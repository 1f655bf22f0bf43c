// The restore points of one quilt: kept by name, told to whoever watches, here and in other tabs. What could not be kept is said.
import type { JsonObject } from '#workroom/editing';
import { type PointLine, type RestorePoint, type Store, StoreFull } from './store.ts';

export interface PointsState {
  /** The last made first; null before they are read. */
  readonly points: readonly PointLine[] | null;
  /** The last that was removed here: it can be brought back. */
  readonly removed: RestorePoint | null;
  /** Why the last wish could not be done; null where it was. */
  readonly fault: 'full' | 'removed' | 'other' | null;
}

export interface PointBook {
  readonly state: () => PointsState;
  readonly subscribe: (see: () => void) => () => void;
  /** Under a name that no other point has: a number follows it where one has. @returns null where it could not be kept */
  readonly keep: (of: { readonly name: string; readonly document: JsonObject }) => Promise<PointLine | null>;
  readonly rename: (id: string, name: string) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
  readonly bringBack: () => Promise<void>;
  readonly read: (id: string) => Promise<RestorePoint | null>;
  readonly close: () => void;
}

export interface PointTask {
  readonly store: Store;
  readonly quilt: string;
  readonly nowMs: () => number;
  /** An id that no point has. */
  readonly freshId: () => string;
}

export const openPoints = ({ store, quilt, nowMs, freshId }: PointTask): PointBook => {
  const watchers = new Set<() => void>();
  let state: PointsState = { points: null, removed: null, fault: null };
  const become = (next: Partial<PointsState>): void => {
    state = { ...state, ...next };
    for (const see of watchers) see();
  };
  const look = async (): Promise<void> => become({ points: await store.points(quilt) });
  /** What a wish comes to, and the list after it. */
  const done = async <T>(wish: () => Promise<T>): Promise<T | null> => {
    try {
      const outcome = await wish();
      await look();
      become({ fault: outcome === 'removed' ? 'removed' : null });
      return outcome;
    } catch (error) {
      become({ fault: error instanceof StoreFull ? 'full' : 'other' });
      return null;
    }
  };
  /** One wish after another: a name that is free must still be so when the point is kept. */
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(wish: () => Promise<T>): Promise<T> => {
    const mine = last.then(wish);
    last = mine.catch(() => undefined);
    return mine;
  };
  const unwatch = store.watch((changed) => {
    if (changed === quilt) void look().catch(() => undefined);
  });
  void look().catch(() => become({ points: [], fault: 'other' }));

  return {
    state: () => state,
    subscribe: (see) => {
      watchers.add(see);
      return () => void watchers.delete(see);
    },
    keep: ({ name, document }) =>
      inTurn(async () => {
        const names = (await store.points(quilt).catch(() => [])).map((point) => point.name);
        const point = { id: freshId(), name: freeName(name, names), madeMs: nowMs(), document };
        const kept = await done(() => store.keepPoint(quilt, point));
        return kept === 'kept' ? { id: point.id, name: point.name, madeMs: point.madeMs } : null;
      }),
    rename: async (id, name) => {
      await done(async () => {
        const point = await store.point(quilt, id);
        return point === null ? null : store.keepPoint(quilt, { ...point, name });
      });
    },
    remove: async (id) => {
      await done(async () => {
        const point = await store.point(quilt, id);
        await store.removePoint(quilt, id);
        become({ removed: point });
      });
    },
    bringBack: async () => {
      const { removed } = state;
      if (removed === null) return;
      const kept = await done(() => store.keepPoint(quilt, removed));
      if (kept === 'kept') become({ removed: null });
    },
    read: (id) => store.point(quilt, id),
    close: unwatch,
  };
};

/** "After “Add a border”", "After “Add a border” 2". */
const freeName = (name: string, taken: readonly string[]): string => {
  let free = name;
  for (let n = 2; taken.includes(free); n++) free = `${name} ${n}`;
  return free;
};
