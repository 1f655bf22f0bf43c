// The versions of a quilt that can be weighed against each other, how an address names them, and what each of them holds.
import type { QuiltDocument } from '#craft/design';
import { limits } from '#craft/limits';
import { type Editing, type JsonObject, redone, undone } from '#workroom/editing';

export type Version =
  | { readonly kind: 'now' }
  /** After so many of the steps that were done to it. */
  | { readonly kind: 'step'; readonly done: number }
  /** A restore point, by its id. */
  | { readonly kind: 'point'; readonly id: string }
  /** Another size that the document has. */
  | { readonly kind: 'size'; readonly id: string }
  /** Another quilt of this browser. */
  | { readonly kind: 'quilt'; readonly id: string };

/** As it stands in an address. */
export const versionText = (version: Version): string => {
  switch (version.kind) {
    case 'now':
      return 'now';
    case 'step':
      return `step-${version.done}`;
    default:
      return `${version.kind}-${version.id}`;
  }
};

/** Null where it names none. */
export const versionIn = (text: string): Version | null => {
  if (text === 'now') return { kind: 'now' };
  const [, kind, id] = /^(step|point|size|quilt)-(.+)$/.exec(text) ?? [];
  switch (kind) {
    case 'step':
      return /^\d{1,9}$/.test(id ?? '') ? { kind, done: Number(id) } : null;
    case 'point':
    case 'size':
    case 'quilt':
      return { kind, id: id ?? '' };
    default:
      return null;
  }
};

/** The document after so many steps; null where so many were never made. */
export const documentAfter = (editing: Editing<JsonObject>, done: number): JsonObject | null => {
  if (done < 0 || done > editing.steps.length) return null;
  let at = editing;
  while (at.done > done) at = undone(at);
  while (at.done < done) at = redone(at);
  return at.document;
};

/** The document with the top of one of its other sizes; null where it has no such size. */
export const documentInSize = (document: QuiltDocument, id: string): QuiltDocument | null => {
  const size = document.sizes?.find((one) => one.id === id);
  if (size === undefined) return null;
  const { sizes: _, ...rest } = document;
  return { ...rest, top: size.top, ...(size.finish === undefined ? {} : { finish: size.finish }) };
};

/** All of the draft becomes as the other document has it, also the order of its keys. */
export const becomeDocument = (draft: QuiltDocument, document: JsonObject): void => {
  const own = draft as unknown as Record<string, unknown>;
  for (const key of Object.keys(own)) delete own[key];
  Object.assign(own, document);
};

/** As a quilt of its own: "Harvest Home, before the border". */
export const named = (
  document: JsonObject,
  of: { readonly quilt: string | undefined; readonly version: string },
): JsonObject => ({
  ...document,
  title: `${of.quilt || 'A quilt'}, ${of.version}`.slice(0, limits.titleCharacters),
});
