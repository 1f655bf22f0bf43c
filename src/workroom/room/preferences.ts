// How the maker likes the workroom: kept beside the quilts, never in them.
import { useSyncExternalStore } from 'react';

export interface Preferences {
  readonly theme: 'system' | 'light' | 'dark';
  /** How lengths are shown; "written": as each document has them. */
  readonly unit: 'written' | 'in' | 'cm';
  readonly shortcuts: 'on' | 'off';
  readonly paper: 'letter' | 'a4';
}

const usual: Preferences = { theme: 'system', unit: 'written', shortcuts: 'on', paper: 'letter' };
const choices: { readonly [K in keyof Preferences]: readonly Preferences[K][] } = {
  theme: ['system', 'light', 'dark'],
  unit: ['written', 'in', 'cm'],
  shortcuts: ['on', 'off'],
  paper: ['letter', 'a4'],
};
const key = 'seamstead/preferences';

export interface PreferenceBook {
  readonly now: () => Preferences;
  readonly prefer: (change: Partial<Preferences>) => void;
  readonly subscribe: (see: () => void) => () => void;
}

/** What cannot be read is as usual; what cannot be kept holds for this page. */
export const openPreferences = (): PreferenceBook => {
  const watchers = new Set<() => void>();
  let now = preferencesIn(storedText());
  const show = (): void => {
    if (now.theme === 'system') delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = now.theme;
    for (const see of watchers) see();
  };
  show();
  window.addEventListener('storage', (event) => {
    if (event.key !== key) return;
    now = preferencesIn(event.newValue);
    show();
  });
  return {
    now: () => now,
    prefer: (change) => {
      now = { ...now, ...change };
      try {
        localStorage.setItem(key, JSON.stringify(now));
      } catch {
        // storage is closed to us: it holds for this page
      }
      show();
    },
    subscribe: (see) => {
      watchers.add(see);
      return () => void watchers.delete(see);
    },
  };
};

const storedText = (): string | null => {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
};

export const preferencesIn = (text: string | null): Preferences => {
  const read = parsed(text);
  const pick = <K extends keyof Preferences>(name: K): Preferences[K] =>
    choices[name].find((choice) => choice === read[name]) ?? usual[name];
  return { theme: pick('theme'), unit: pick('unit'), shortcuts: pick('shortcuts'), paper: pick('paper') };
};

const parsed = (text: string | null): { readonly [key: string]: unknown } => {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
};

export const usePreferences = (book: PreferenceBook): Preferences => useSyncExternalStore(book.subscribe, book.now);
