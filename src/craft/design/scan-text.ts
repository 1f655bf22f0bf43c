// Is a text JSON, not nested too deep, and does no object name a key twice? One pass with a stack of our
// own, before anything is built; values themselves are left to JSON.parse.

import { pointer, type Segment } from './pointer.ts';
import type { TextProblem } from './problems.ts';

interface Open {
  readonly list: boolean;
  readonly keys: Set<string> | null;
  /** The key or index being read. */
  at: Segment;
}

type Awaited = 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'comma-or-end' | 'nothing';

/** Keys named twice are all told; a fault of syntax or depth ends the scan. */
export const scanText = (text: string, most: { readonly depth: number; readonly problems: number }): TextProblem[] => {
  const problems: TextProblem[] = [];
  const open: Open[] = [];
  let awaited: Awaited = 'value';
  let i = afterSpace(text, 0);

  const broken = (at: number): TextProblem[] => {
    const found = at < text.length ? String.fromCodePoint(text.codePointAt(at) as number) : null;
    return [{ code: 'design/not-json', path: placeOf(open), ...placeInText(text, at), found }];
  };

  while (awaited !== 'nothing' || i < text.length) {
    const sign = text[i];
    const top = open.at(-1);
    if (awaited === 'comma-or-end' || awaited === 'value-or-end' || awaited === 'key-or-end') {
      if (top && sign === (top.list ? ']' : '}')) {
        open.pop();
        awaited = open.length === 0 ? 'nothing' : 'comma-or-end';
        i = afterSpace(text, i + 1);
        continue;
      }
      if (awaited === 'comma-or-end') {
        if (!top || sign !== ',') return broken(i);
        if (top.list) top.at = (top.at as number) + 1;
        awaited = top.list ? 'value' : 'key';
        i = afterSpace(text, i + 1);
        continue;
      }
    }
    if (awaited === 'nothing') return broken(i);
    if (awaited === 'key' || awaited === 'key-or-end') {
      if (sign !== '"') return broken(i);
      const end = afterString(text, i);
      if (end < 0) return broken(-end - 1);
      const key = JSON.parse(text.slice(i, end)) as string;
      const inside = top as Open & { readonly keys: Set<string> };
      inside.at = key;
      if (inside.keys.has(key) && problems.length < most.problems) {
        problems.push({ code: 'design/key-twice', path: placeOf(open), ...placeInText(text, i), key });
      }
      inside.keys.add(key);
      i = afterSpace(text, end);
      if (text[i] !== ':') return broken(i);
      i = afterSpace(text, i + 1);
      awaited = 'value';
      continue;
    }
    if (sign === '{' || sign === '[') {
      const list = sign === '[';
      open.push({ list, keys: list ? null : new Set(), at: list ? 0 : '' });
      if (open.length > most.depth)
        return [{ code: 'design/too-deep', path: placeOf(open.slice(0, 8)), most: most.depth }];
      awaited = list ? 'value-or-end' : 'key-or-end';
      i = afterSpace(text, i + 1);
      continue;
    }
    const end = afterPlainValue(text, i);
    if (end < 0) return broken(-end - 1);
    awaited = open.length === 0 ? 'nothing' : 'comma-or-end';
    i = afterSpace(text, end);
  }
  return problems;
};

const placeOf = (open: readonly Open[]): string => pointer(open.filter((o) => o.at !== '').map((o) => o.at));

const placeInText = (text: string, at: number): { readonly line: number; readonly column: number } => {
  const before = text.slice(0, at);
  const lastBreak = before.lastIndexOf('\n');
  return { line: before.split('\n').length, column: at - lastBreak };
};

const afterSpace = (text: string, from: number): number => {
  let i = from;
  for (;;) {
    const c = text.charCodeAt(i);
    if (c !== 32 && c !== 10 && c !== 13 && c !== 9) return i;
    i++;
  }
};

/** The end of a text, number, true, false or null; −1 − place of the fault where it is none. */
const afterPlainValue = (text: string, from: number): number => {
  if (text[from] === '"') return afterString(text, from);
  const plain = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?|true|false|null/y;
  plain.lastIndex = from;
  return plain.test(text) ? plain.lastIndex : -1 - from;
};

const afterString = (text: string, from: number): number => {
  let i = from + 1;
  for (;;) {
    const c = text.charCodeAt(i);
    if (c === 34) return i + 1;
    if (Number.isNaN(c) || c < 32) return -1 - i;
    if (c === 92) {
      const after = text[i + 1] ?? '';
      if (after === 'u') {
        if (!/^[0-9a-fA-F]{4}$/.test(text.slice(i + 2, i + 6))) return -1 - i;
        i += 4;
      } else if (after === '' || !'"\\/bfnrt'.includes(after)) return -1 - i;
      i++;
    }
    i++;
  }
};
