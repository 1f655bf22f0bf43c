// Is a parsed document small enough to look at, and free of keys that JavaScript treats specially? Walked
// with a stack of our own before the schema sees it, so that nothing large or endless gets further.
import { type Counted, limits } from '#craft/limits';
import { pointer, type Segment } from './pointer.ts';
import type { TextProblem } from './problems.ts';

/** "*" stands for any index or key. */
const counted: readonly (readonly [place: string, what: Counted])[] = [
  ['fabrics', 'fabrics'],
  ['fabrics/*/bought/sheets', 'sheetKinds'],
  ['fabrics/*/bought/lengths', 'sheetKinds'],
  ['fabrics/*/ends', 'sheetKinds'],
  ['blocks', 'blocks'],
  ['blocks/*/colourings', 'colourings'],
  ['blocks/*/colourings/*', 'tones'],
  ['blocks/*/frame', 'frames'],
  ['blocks/*/motifs', 'tones'],
  ['blocks/*/methods', 'methods'],
  ['blocks/*/recipe/order', 'logs'],
  ['blocks/*/recipe/rounds', 'rounds'],
  ['blocks/*/recipe/rounds/*/tones', 'logs'],
  ['blocks/*/recipe/rounds/*/width', 'logs'],
  ['blocks/*/recipe/units', 'patches'],
  ['blocks/*/patches/list', 'patches'],
  ['blocks/*/patches/list/*/points', 'corners'],
  ['blocks/*/drawing/seams', 'seams'],
  ['blocks/*/drawing/seams/*', 'corners'],
  ['blocks/*/drawing/tonesAt', 'patches'],
  ['top/rows', 'rows'],
  ['top/rows/*', 'columns'],
  ['top/between', 'rows'],
  ['top/between/*', 'columns'],
  ['top/borders', 'borders'],
  ['colourways', 'colourways'],
  ['colourways/*/fabrics', 'fabrics'],
  ['sizes', 'sizes'],
  ['methods', 'methods'],
  ['sizes/*/top/rows', 'rows'],
  ['sizes/*/top/rows/*', 'columns'],
  ['sizes/*/top/between', 'rows'],
  ['sizes/*/top/between/*', 'columns'],
  ['sizes/*/top/borders', 'borders'],
];

interface Bound {
  what: Counted | null;
  readonly next: Map<string, Bound>;
}

const boundAt = (places: typeof counted): Bound => {
  const root: Bound = { what: null, next: new Map() };
  for (const [place, what] of places) {
    let bound = root;
    for (const segment of place.split('/')) {
      const next: Bound = bound.next.get(segment) ?? { what: null, next: new Map() };
      bound.next.set(segment, next);
      bound = next;
    }
    bound.what = what;
  }
  return root;
};

const bounds = boundAt(counted);

const forbidden: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

interface Visit {
  readonly value: object;
  readonly path: readonly Segment[];
  readonly bound: Bound | undefined;
}

/** The first limit that is passed ends the walk; forbidden keys are all told. */
export const boundProblems = (document: unknown): readonly TextProblem[] => {
  const problems: TextProblem[] = [];
  const waiting: Visit[] = [];
  if (isNest(document)) waiting.push({ value: document, path: [], bound: bounds });
  let values = 1;
  let cells = 0;
  for (let visit = waiting.pop(); visit !== undefined; visit = waiting.pop()) {
    const { value, path, bound } = visit;
    const place = (): string => pointer(path);
    if (path.length >= limits.depth)
      return [{ code: 'design/too-deep', path: pointer(path.slice(0, 8)), most: limits.depth }];
    const keys = Array.isArray(value) ? null : Object.keys(value);
    const found = keys === null ? (value as readonly unknown[]).length : keys.length;
    const what = bound?.what ?? 'entries';
    if (found > limits[what]) return [{ code: 'design/too-many', path: place(), what, found, most: limits[what] }];
    if (what === 'columns') cells += found;
    if (cells > limits.cells) {
      return [{ code: 'design/too-many', path: '/top/rows', what: 'cells', found: cells, most: limits.cells }];
    }
    values += found;
    if (values > limits.values) return [{ code: 'design/too-many-values', path: '', most: limits.values }];
    for (let i = found - 1; i >= 0; i--) {
      const key = keys === null ? i : (keys[i] as string);
      if (typeof key === 'string' && forbidden.has(key)) {
        problems.push({ code: 'design/forbidden-key', path: pointer([...path, key]), key });
        continue;
      }
      const inner = (value as Readonly<Record<Segment, unknown>>)[key];
      if (isNest(inner)) {
        waiting.push({
          value: inner,
          path: [...path, key],
          bound: bound?.next.get(String(key)) ?? bound?.next.get('*'),
        });
      }
    }
  }
  return problems;
};

const isNest = (value: unknown): value is object => typeof value === 'object' && value !== null;
