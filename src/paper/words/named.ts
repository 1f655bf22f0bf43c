// Names as they stand in a sentence: quoted, listed, and the one that was probably meant.

import { inWords } from './in-words.ts';

export const quoted = (name: string): string => `“${name}”`;

/** "1 strip", "2 strips". */
export const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const most = 8;

/** “oat”, “sand” and “bark”; a long list is cut, and says so. */
export const listed = (names: readonly string[]): string => {
  const shown = names.length > most ? names.slice(0, most) : names;
  const over = names.length - shown.length;
  if (over > 0) return `${shown.map(quoted).join(', ')} and ${over} more`;
  return shown.length === 0 ? 'none' : inWords(shown.map(quoted));
};

/** What to put in place of a name that is not known: the nearest one, or what there is. */
export const instead = (found: string, known: readonly string[]): string => {
  const near = nearest(found, known);
  return near === null ? `Known here: ${listed(known)}.` : `Did you mean ${quoted(near)}?`;
};

/** The name that differs by the fewest signs, at most a third of its length. */
const nearest = (found: string, known: readonly string[]): string | null => {
  let best: string | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const name of known) {
    const far = editsBetween(found.toLowerCase(), name.toLowerCase());
    if (far < least) {
      least = far;
      best = name;
    }
  }
  return best !== null && least <= Math.max(1, Math.floor(best.length / 3)) ? best : null;
};

/** Signs to add, drop, change or swap with their neighbour; the plain table, three rows at a time. */
const editsBetween = (a: string, b: string): number => {
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = swapped ? (before[j - 2] as number) + 1 : Number.POSITIVE_INFINITY;
      next.push(Math.min(change, swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    before = row;
    row = next;
  }
  return row[b.length] as number;
};
