// A document as the worker needs it: photographs of cloth are for looking, and megabytes of them would go there at every edit.
import type { Json, JsonObject } from '#workroom/editing';

/** Places of all that is left stay where they were. */
export const withoutPhotos = (document: JsonObject): JsonObject => ({
  ...document,
  ...(Array.isArray(document.fabrics) ? { fabrics: (document.fabrics as readonly Json[]).map(bare) } : {}),
  ...(Array.isArray(document.colourways) ? { colourways: (document.colourways as readonly Json[]).map(bareWay) } : {}),
});

const bare = (cloth: Json): Json => {
  if (!isObject(cloth) || !('photo' in cloth)) return cloth;
  const { photo: _, ...rest } = cloth;
  return rest;
};

const bareWay = (way: Json): Json => {
  if (!isObject(way) || !isObject(way.fabrics)) return way;
  const fabrics = Object.entries(way.fabrics).map(([id, cloth]) => [id, bare(cloth)] as const);
  return { ...way, fabrics: Object.fromEntries(fabrics) };
};

const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
