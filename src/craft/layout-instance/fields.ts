// Reads single values out of parsed JSON: the value, or a report of what stands there instead.
import { foundText, pointer } from '#craft/design';
import type { InstanceProblem, Shape } from './problems.ts';

export type Report = (problem: InstanceProblem) => void;

/** An object with its place. */
export interface Spot {
  readonly value: Readonly<Record<string, unknown>>;
  readonly path: readonly PropertyKey[];
  readonly report: Report;
}

export interface Range {
  readonly least: number;
  readonly most: number;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const shapes: Readonly<Record<Exclude<Shape, 'item'>, (value: unknown) => boolean>> = {
  object: isObject,
  list: Array.isArray,
  text: (value) => typeof value === 'string',
  'whole-number': Number.isSafeInteger,
  number: Number.isFinite,
  'true-or-false': (value) => typeof value === 'boolean',
};

interface Wanted {
  readonly key: string;
  readonly shape: Exclude<Shape, 'item'>;
  readonly missing: 'refused' | 'allowed';
}

/** The value of a key; undefined when it is missing or was reported. */
const fieldOf = ({ value, path, report }: Spot, { key, shape, missing }: Wanted): unknown => {
  const found = Object.hasOwn(value, key) ? value[key] : undefined;
  const at = pointer([...path, key]);
  if (found === undefined || (found === null && missing === 'allowed')) {
    if (missing === 'refused') report({ code: 'instance/missing-key', path: at, key, expected: shape });
    return undefined;
  }
  if (shapes[shape](found)) return found;
  report({ code: 'instance/wrong-type', path: at, found: foundText(found), expected: shape });
  return undefined;
};

export const textOf = (spot: Spot, key: string): string | null =>
  (fieldOf(spot, { key, shape: 'text', missing: 'refused' }) as string | undefined) ?? null;

/** Null where it is missing. */
export const booleanOf = (spot: Spot, key: string): boolean | null =>
  (fieldOf(spot, { key, shape: 'true-or-false', missing: 'allowed' }) as boolean | undefined) ?? null;

export const listOf = (spot: Spot, key: string, missing: Wanted['missing']): readonly unknown[] =>
  (fieldOf(spot, { key, shape: 'list', missing }) as readonly unknown[] | undefined) ?? [];

/** A number within a range; null where it is missing or was reported. */
export const numberOf = (spot: Spot, wanted: Wanted & Range): number | null => {
  const found = fieldOf(spot, wanted) as number | undefined;
  if (found === undefined) return null;
  const path = pointer([...spot.path, wanted.key]);
  return within({ found, path, range: wanted, report: spot.report }) ? found : null;
};

export const within = (of: {
  readonly found: number;
  readonly path: string;
  readonly range: Range;
  readonly report: Report;
}): boolean => {
  const { found, path, report } = of;
  const { least, most } = of.range;
  if (found >= least && found <= most) return true;
  report({ code: 'instance/out-of-range', path, found: foundText(found), least, most });
  return false;
};

/** One of some words; the first of them where the key is missing. */
export const wordOf = <Word extends string>(spot: Spot, key: string, words: readonly [Word, ...Word[]]): Word => {
  const found = Object.hasOwn(spot.value, key) ? spot.value[key] : undefined;
  if (found === undefined) return words[0];
  const word = words.find((each) => each === found);
  if (word !== undefined) return word;
  const options = words.map((each) => JSON.stringify(each));
  spot.report({ code: 'instance/not-one-of', path: pointer([...spot.path, key]), found: foundText(found), options });
  return words[0];
};

/** The entries of a list that are objects; the others are reported. */
export const objectsOf = (list: readonly unknown[], at: Omit<Spot, 'value'>): readonly Spot[] =>
  list.flatMap((value, i) => {
    const path = [...at.path, i];
    if (isObject(value)) return [{ value, path, report: at.report }];
    at.report({ code: 'instance/wrong-type', path: pointer(path), found: foundText(value), expected: 'object' });
    return [];
  });
