// What was copied, to be put down elsewhere: in this tab or another, now or tomorrow. The system's own clipboard is for secure pages alone.
import { useSyncExternalStore } from 'react';

const key = 'seamstead/copied';

export interface Shelf {
  /** As it was put there; null for nothing. Whoever takes it judges it. */
  readonly now: () => unknown;
  readonly put: (value: unknown) => void;
  readonly subscribe: (see: () => void) => () => void;
}

/** What is too large for the browser to keep, or may not be kept, lies there for this page. */
export const openShelf = (): Shelf => {
  const watchers = new Set<() => void>();
  let now = parsed(stored());
  const become = (value: unknown): void => {
    now = value;
    for (const see of watchers) see();
  };
  window.addEventListener('storage', (event) => {
    if (event.key === key) become(parsed(event.newValue));
  });
  return {
    now: () => now,
    put: (value) => {
      try {
        localStorage.setItem(key, JSON.stringify(value));
      } catch {
        // no room, or storage is closed to us
      }
      become(value);
    },
    subscribe: (see) => {
      watchers.add(see);
      return () => void watchers.delete(see);
    },
  };
};

const stored = (): string | null => {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
};

const parsed = (text: string | null): unknown => {
  try {
    return JSON.parse(text ?? 'null') as unknown;
  } catch {
    return null;
  }
};

export const useShelf = (shelf: Shelf): unknown => useSyncExternalStore(shelf.subscribe, shelf.now);
