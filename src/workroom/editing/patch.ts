// What changed in a document, at its place, so that it can be taken back and done again byte for byte. A patch says what was
// there before: one that does not fit the document it is laid on is refused, never forced.

import { isList, isObject, isSame, type Json, type JsonObject } from './json.ts';

/** Keys of objects and indexes of lists, from the document inward. */
export type Path = readonly (string | number)[];

export type Patch =
  /** One value for another; the path may be empty: the whole document. */
  | { readonly kind: 'value'; readonly path: Path; readonly was: Json; readonly is: Json }
  /** A key of the object at the path, added or taken away; `at`: its place among the keys. */
  | { readonly kind: 'key'; readonly path: Path; readonly key: string; readonly at: number; readonly is: Json }
  | { readonly kind: 'no-key'; readonly path: Path; readonly key: string; readonly at: number; readonly was: Json }
  /** A run of the list at the path, from `at` on, in place of another. */
  | {
      readonly kind: 'run';
      readonly path: Path;
      readonly at: number;
      readonly was: readonly Json[];
      readonly is: readonly Json[];
    };

/** A patch laid on a document that it was not made for. */
export class PatchMisfit extends Error {
  constructor(patch: Patch) {
    super(`a patch does not fit the document at /${patch.path.join('/')}`);
    this.name = 'PatchMisfit';
  }
}

/** @throws PatchMisfit where the document does not hold what a patch says that it held */
export const patched = (document: Json, patches: readonly Patch[]): Json =>
  patches.reduce((before, patch) => within(before, { patch, depth: 0 }), document);

/** The patches that take these back, in the order to lay them. */
export const inverseOf = (patches: readonly Patch[]): readonly Patch[] => patches.toReversed().map(takenBack);

const takenBack = (patch: Patch): Patch => {
  switch (patch.kind) {
    case 'value':
      return { ...patch, was: patch.is, is: patch.was };
    case 'run':
      return { ...patch, was: patch.is, is: patch.was };
    case 'key':
      return { kind: 'no-key', path: patch.path, key: patch.key, at: patch.at, was: patch.is };
    case 'no-key':
      return { kind: 'key', path: patch.path, key: patch.key, at: patch.at, is: patch.was };
  }
};

const within = (value: Json, of: { readonly patch: Patch; readonly depth: number }): Json => {
  const { patch, depth } = of;
  const step = patch.path[depth];
  if (step === undefined) return changed(value, patch);
  const inner = { patch, depth: depth + 1 };
  if (isList(value) && typeof step === 'number' && step < value.length) {
    return value.with(step, within(value[step] as Json, inner));
  }
  if (isObject(value) && typeof step === 'string' && Object.hasOwn(value, step)) {
    const put = within(value[step] as Json, inner);
    return fromEntries(Object.entries(value).map(([key, old]) => [key, key === step ? put : old]));
  }
  throw new PatchMisfit(patch);
};

const changed = (value: Json, patch: Patch): Json => {
  switch (patch.kind) {
    case 'value':
      if (!isSame(value, patch.was)) throw new PatchMisfit(patch);
      return patch.is;
    case 'key':
      if (!isObject(value) || Object.hasOwn(value, patch.key)) throw new PatchMisfit(patch);
      return fromEntries(Object.entries(value).toSpliced(patch.at, 0, [patch.key, patch.is]));
    case 'no-key':
      if (!isObject(value) || !Object.hasOwn(value, patch.key)) throw new PatchMisfit(patch);
      if (!isSame(value[patch.key] as Json, patch.was)) throw new PatchMisfit(patch);
      return fromEntries(Object.entries(value).filter(([key]) => key !== patch.key));
    case 'run': {
      const end = patch.at + patch.was.length;
      if (!isList(value) || end > value.length || !isSame(value.slice(patch.at, end), patch.was)) {
        throw new PatchMisfit(patch);
      }
      return value.toSpliced(patch.at, patch.was.length, ...patch.is);
    }
  }
};

/** Own keys whatever their names: an object's prototype is never touched. */
const fromEntries = (entries: readonly (readonly [string, Json])[]): JsonObject => Object.fromEntries(entries);
