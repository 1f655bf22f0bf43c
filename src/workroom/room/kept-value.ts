// One value that the browser keeps beside the quilts, for all its tabs. What cannot be kept holds for this page.
import { useSyncExternalStore } from 'react';

export interface KeptValue<T> {
  readonly now: () => T;
  readonly put: (value: T) => void;
  readonly subscribe: (see: () => void) => () => void;
}

/** @param of.read judges what was kept: its text may be of another version, or no JSON at all; null where there is none */
export const keptValue = <T>(of: { readonly key: string; readonly read: (text: string | null) => T }): KeptValue<T> => {
  const { key, read } = of;
  const watchers = new Set<() => void>();
  let now = read(storedText(key));
  const become = (value: T): void => {
    now = value;
    for (const see of watchers) see();
  };
  window.addEventListener('storage', (event) => {
    if (event.key === key) become(read(event.newValue));
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

const storedText = (key: string): string | null => {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
};

/** Null where it is no JSON. */
export const parsed = (text: string | null): unknown => {
  try {
    return JSON.parse(text ?? 'null') as unknown;
  } catch {
    return null;
  }
};

export const useKeptValue = <T>({ subscribe, now }: Pick<KeptValue<T>, 'subscribe' | 'now'>): T =>
  useSyncExternalStore(subscribe, now);
