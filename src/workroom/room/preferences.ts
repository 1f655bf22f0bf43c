// How the maker likes the workroom: kept beside the quilts, never in them.
import { keptValue, parsed, useKeptValue } from './kept-value.ts';

export interface Preferences {
  readonly theme: 'system' | 'light' | 'dark';
  /** How lengths are shown; "written": as each document has them. */
  readonly unit: 'written' | 'in' | 'cm';
  readonly shortcuts: 'on' | 'off';
  /** "by-unit": what is at home where the quilt's unit is. */
  readonly paper: 'by-unit' | 'letter' | 'a4';
  /** Which hand cuts. */
  readonly hand: 'right' | 'left';
}

const usual: Preferences = { theme: 'system', unit: 'written', shortcuts: 'on', paper: 'by-unit', hand: 'right' };
const choices: { readonly [K in keyof Preferences]: readonly Preferences[K][] } = {
  theme: ['system', 'light', 'dark'],
  unit: ['written', 'in', 'cm'],
  shortcuts: ['on', 'off'],
  paper: ['by-unit', 'letter', 'a4'],
  hand: ['right', 'left'],
};

export interface PreferenceBook {
  readonly now: () => Preferences;
  readonly prefer: (change: Partial<Preferences>) => void;
  readonly subscribe: (see: () => void) => () => void;
}

/** What cannot be read is as usual. */
export const openPreferences = (): PreferenceBook => {
  const kept = keptValue({ key: 'seamstead/preferences', read: preferencesIn });
  const show = (): void => {
    const { theme } = kept.now();
    if (theme === 'system') delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = theme;
  };
  show();
  kept.subscribe(show);
  return {
    now: kept.now,
    prefer: (change) => kept.put({ ...kept.now(), ...change }),
    subscribe: kept.subscribe,
  };
};

export const preferencesIn = (text: string | null): Preferences => {
  const kept = parsed(text);
  const read: { readonly [key: string]: unknown } = typeof kept === 'object' && kept !== null ? { ...kept } : {};
  const pick = <K extends keyof Preferences>(name: K): Preferences[K] =>
    choices[name].find((choice) => choice === read[name]) ?? usual[name];
  return {
    theme: pick('theme'),
    unit: pick('unit'),
    shortcuts: pick('shortcuts'),
    paper: pick('paper'),
    hand: pick('hand'),
  };
};

export const usePreferences = (book: PreferenceBook): Preferences => useKeptValue(book);
