// Plain values as a document's file holds them. The order of keys counts: a maker's file must come back as she wrote it.

export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: Json;
}

export const isList = (value: Json): value is readonly Json[] => Array.isArray(value);

export const isObject = (value: Json): value is JsonObject =>
  typeof value === 'object' && value !== null && !isList(value);

/** Equal in every value and in the order of keys: the two have the same text. */
export const isSame = (a: Json, b: Json): boolean => {
  if (a === b) return true;
  if (isList(a)) return isList(b) && a.length === b.length && a.every((value, i) => isSame(value, b[i] as Json));
  if (!isObject(a) || !isObject(b)) return false;
  const [own, other] = [Object.keys(a), Object.keys(b)];
  return (
    own.length === other.length && own.every((key, i) => key === other[i] && isSame(a[key] as Json, b[key] as Json))
  );
};
