// What changed from one document to another, in as few and as small patches as a walk side by side finds. It looks for no
// moved parts: what lies elsewhere was taken away here and put there.

import { isList, isObject, isSame, type Json, type JsonObject } from './json.ts';
import type { Patch, Path } from './patch.ts';

/** Laid on `was` they give `is`, byte for byte. */
export const patchesBetween = (was: Json, is: Json): readonly Patch[] => between(was, { is, path: [] });

interface Other {
  readonly is: Json;
  readonly path: Path;
}

const between = (was: Json, { is, path }: Other): readonly Patch[] => {
  if (is === undefined) throw new TypeError(`a document cannot hold "undefined", found at /${path.join('/')}`);
  if (was === is) return [];
  if (isList(was) && isList(is)) return betweenLists({ was, is, path });
  if (isObject(was) && isObject(is) && isOneOrder(was, is)) {
    return betweenObjects({ was, is, path });
  }
  return [{ kind: 'value', path, was, is }];
};

/** Keys that both have stand in the same order. */
const isOneOrder = (was: JsonObject, is: JsonObject): boolean => {
  const kept = Object.keys(was).filter((key) => Object.hasOwn(is, key));
  const found = Object.keys(is).filter((key) => Object.hasOwn(was, key));
  return kept.every((key, i) => key === found[i]);
};

/** Keys go from the last to the first and come from the first to the last, so that each place is true when it is used. */
const betweenObjects = (of: {
  readonly was: JsonObject;
  readonly is: JsonObject;
  readonly path: Path;
}): readonly Patch[] => {
  const { was, is, path } = of;
  const gone = Object.keys(was)
    .flatMap((key, at): readonly Patch[] =>
      Object.hasOwn(is, key) ? [] : [{ kind: 'no-key', path, key, at, was: was[key] as Json }],
    )
    .toReversed();
  const kept = Object.keys(was)
    .filter((key) => Object.hasOwn(is, key))
    .flatMap((key) => between(was[key] as Json, { is: is[key] as Json, path: [...path, key] }));
  const come = Object.keys(is).flatMap((key, at): readonly Patch[] => {
    if (Object.hasOwn(was, key)) return [];
    const value = is[key] as Json;
    if (value === undefined)
      throw new TypeError(`a document cannot hold "undefined", found at /${path.join('/')}/${key}`);
    return [{ kind: 'key', path, key, at, is: value }];
  });
  return [...gone, ...kept, ...come];
};

interface Lists {
  readonly was: readonly Json[];
  readonly is: readonly Json[];
  readonly path: Path;
}

const betweenLists = (of: Lists): readonly Patch[] => {
  const { was, is, path } = of;
  if (was.length === is.length) {
    return was.flatMap((value, i) => between(value, { is: is[i] as Json, path: [...path, i] }));
  }
  return betweenNamed(of) ?? [runBetween(of)];
};

const runBetween = ({ was, is, path }: Lists): Patch => {
  const short = Math.min(was.length, is.length);
  let before = 0;
  while (before < short && isSame(was[before] as Json, is[before] as Json)) before += 1;
  let after = 0;
  while (after < short - before && isSame(was.at(-1 - after) as Json, is.at(-1 - after) as Json)) after += 1;
  const run = (list: readonly Json[]) => list.slice(before, list.length - after);
  return { kind: 'run', path, at: before, was: run(was), is: run(is) };
};

/** Things with ids, as blocks and cloths are, are told apart by them: null where they are not, or where they change places. */
const betweenNamed = ({ was, is, path }: Lists): readonly Patch[] | null => {
  const [before, after] = [idsOf(was), idsOf(is)];
  if (before === null || after === null) return null;
  const kept = before.filter((id) => after.includes(id));
  if (
    !isSame(
      kept,
      after.filter((id) => before.includes(id)),
    )
  )
    return null;
  const gone = before
    .flatMap((id, at): readonly Patch[] =>
      kept.includes(id) ? [] : [{ kind: 'run', path, at, was: [was[at] as Json], is: [] }],
    )
    .toReversed();
  const changed = kept.flatMap((id, at) =>
    between(was[before.indexOf(id)] as Json, { is: is[after.indexOf(id)] as Json, path: [...path, at] }),
  );
  const come = after.flatMap((id, at): readonly Patch[] =>
    kept.includes(id) ? [] : [{ kind: 'run', path, at, was: [], is: [is[at] as Json] }],
  );
  return [...gone, ...changed, ...come];
};

const idsOf = (list: readonly Json[]): readonly string[] | null => {
  const ids = list.flatMap((one) => (isObject(one) && typeof one.id === 'string' ? [one.id] : []));
  return ids.length === list.length && new Set(ids).size === ids.length ? ids : null;
};
