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

/** Of each quilt one value by this name, kept beside it and never in it: how far one is in cutting it, in sewing it. */
export const keptBeside = <T>(of: {
  readonly name: string;
  readonly read: (text: string | null) => T;
}): ((quilt: string) => KeptValue<T>) => {
  const open = new Map<string, KeptValue<T>>();
  return (quilt) => {
    const kept = open.get(quilt) ?? keptValue({ key: besideOf(quilt) + of.name, read: of.read });
    open.set(quilt, kept);
    return kept;
  };
};

/** The quilt is gone, and what was kept beside it goes too. */
export const forgetBeside = (quilt: string): void => {
  try {
    for (const key of Object.keys(localStorage)) if (key.startsWith(besideOf(quilt))) localStorage.removeItem(key);
  } catch {
    // storage is closed to us: nothing was kept
  }
};

const besideOf = (quilt: string): string => `seamstead/beside/${quilt}/`;

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
