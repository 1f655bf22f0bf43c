// Where quilts are kept: one small interface, so that the browser's own storage, a file's worth of memory and some day the
// shop's server can stand behind it.
import type { Editing, JsonObject, Step } from '#workroom/editing';

/** A quilt as lists show it. */
export interface QuiltLine {
  readonly id: string;
  readonly title: string;
  /** When it was last kept, in milliseconds since 1970. */
  readonly changedMs: number;
  readonly revision: number;
}

export interface KeptQuilt extends QuiltLine {
  readonly editing: Editing<JsonObject>;
}

/** A quilt as it once stood, kept by a name of the maker's beside it. */
export interface RestorePoint {
  readonly id: string;
  readonly name: string;
  readonly madeMs: number;
  readonly document: JsonObject;
}

/** A restore point as lists show it. */
export type PointLine = Omit<RestorePoint, 'document'>;

/** What one tab has made of a quilt since the revision that it last read or kept. */
export interface Save {
  readonly id: string;
  /** The revision that it rests on; 0: there is none yet. */
  readonly basis: number;
  readonly title: string;
  readonly changedMs: number;
  readonly document: JsonObject;
  /** So many steps of that revision stay; those after them are let go. */
  readonly keep: number;
  readonly add: readonly Step[];
  readonly done: number;
}

export type Saved =
  | { readonly outcome: 'saved'; readonly revision: number }
  /** Another tab has kept a later revision; nothing was written. */
  | { readonly outcome: 'newer'; readonly kept: KeptQuilt }
  /** It was removed meanwhile; nothing was written. */
  | { readonly outcome: 'removed' };

export interface Store {
  /** How it keeps: past this page's end in the browser, or in this page alone. */
  readonly lasts: 'in-browser' | 'in-page';
  /** The last changed first. */
  readonly list: () => Promise<readonly QuiltLine[]>;
  readonly read: (id: string) => Promise<KeptQuilt | null>;
  /** All or nothing, also where two tabs save at once. Rejects with StoreFull or another reason of the browser's. */
  readonly save: (save: Save) => Promise<Saved>;
  /** The quilt, with its restore points. */
  readonly remove: (id: string) => Promise<void>;
  /** Of a quilt; the last made first. */
  readonly points: (quilt: string) => Promise<readonly PointLine[]>;
  readonly point: (quilt: string, id: string) => Promise<RestorePoint | null>;
  /** Anew, or in place of the one of its id. Nothing is written where the quilt is no more. Rejects as `save` does. */
  readonly keepPoint: (quilt: string, point: RestorePoint) => Promise<'kept' | 'removed'>;
  readonly removePoint: (quilt: string, id: string) => Promise<void>;
  /** Tells of quilts that another tab keeps or removes, and of their points; @returns ends it */
  readonly watch: (see: (id: string) => void) => () => void;
  readonly close: () => void;
}

/** The browser gives no more room. */
export class StoreFull extends Error {
  constructor() {
    super('the browser’s storage is full');
    this.name = 'StoreFull';
  }
}

/** What a store that holds whole quilts does on a save. */
export const afterSave = (kept: KeptQuilt | null, save: Save): { saved: Saved; next: KeptQuilt | null } => {
  if (kept === null && save.basis > 0) return { saved: { outcome: 'removed' }, next: null };
  if (kept !== null && kept.revision !== save.basis) return { saved: { outcome: 'newer', kept }, next: kept };
  const { id, title, changedMs, document, done } = save;
  const revision = save.basis + 1;
  const steps = [...(kept?.editing.steps.slice(0, save.keep) ?? []), ...save.add];
  return {
    saved: { outcome: 'saved', revision },
    next: { id, title, changedMs, revision, editing: { document, steps, done } },
  };
};

export const byLastChanged = (lines: readonly QuiltLine[]): readonly QuiltLine[] =>
  lines.toSorted((a, b) => b.changedMs - a.changedMs || (a.id < b.id ? -1 : 1));

export const lineOf = ({ id, title, changedMs, revision }: QuiltLine): QuiltLine => ({
  id,
  title,
  changedMs,
  revision,
});

export const byLastMade = (points: readonly RestorePoint[]): readonly PointLine[] =>
  points
    .map(({ id, name, madeMs }) => ({ id, name, madeMs }))
    .toSorted((a, b) => b.madeMs - a.madeMs || (a.id < b.id ? -1 : 1));
