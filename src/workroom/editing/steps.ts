// A document under the maker's hands: what she did to it, step by step, without limit, and how far of that is done. Plain
// values throughout, so that all of it can be kept and read again.

import { produce } from 'immer';
import { patchesBetween } from './between.ts';
import type { Json } from './json.ts';
import { inverseOf, type Patch, patched } from './patch.ts';

/** One gesture of the maker: what one undo takes back. */
export interface Step {
  /** In her words: "Turn the block". */
  readonly what: string;
  readonly patches: readonly Patch[];
  /** While a gesture lasts, as typing in one field or a drag, what follows under the same name joins the step. */
  readonly gesture?: string;
}

export interface Editing<Document> {
  readonly document: Document;
  readonly steps: readonly Step[];
  /** So many of the steps are done; the rest are undone and can be done again. */
  readonly done: number;
}

export interface Edit<Document> {
  readonly what: string;
  readonly gesture?: string;
  /** Changes the draft in place; it says nothing else. */
  readonly change: (draft: Document) => void;
}

export const beginEditing = <Document>(document: Document): Editing<Document> => ({ document, steps: [], done: 0 });

/** A change that changes nothing is no step; one after an undo lets go of what was undone. */
export const edited = <Document>(editing: Editing<Document>, edit: Edit<Document>): Editing<Document> => {
  const { what, gesture, change } = edit;
  const after = produce(editing.document, (draft) => {
    change(draft as Document);
  });
  const last = editing.steps[editing.done - 1];
  const joins = gesture !== undefined && last?.gesture === gesture && editing.done === editing.steps.length;
  const before = joins ? (patched(plain(editing.document), inverseOf(last.patches)) as Document) : editing.document;
  const patches = patchesBetween(plain(before), plain(after));
  if (!joins && patches.length === 0) return editing;
  const kept = editing.steps.slice(0, editing.done - (joins ? 1 : 0));
  const steps =
    patches.length === 0 ? kept : [...kept, { what, patches, ...(gesture === undefined ? {} : { gesture }) }];
  return { document: after, steps, done: steps.length };
};

export const canUndo = ({ done }: Editing<unknown>): boolean => done > 0;
export const canRedo = ({ done, steps }: Editing<unknown>): boolean => done < steps.length;

export const undone = <Document>(editing: Editing<Document>): Editing<Document> => {
  const step = editing.steps[editing.done - 1];
  if (step === undefined) return editing;
  const document = patched(plain(editing.document), inverseOf(step.patches)) as Document;
  return { ...editing, document, done: editing.done - 1 };
};

export const redone = <Document>(editing: Editing<Document>): Editing<Document> => {
  const step = editing.steps[editing.done];
  if (step === undefined) return editing;
  const document = patched(plain(editing.document), step.patches) as Document;
  return { ...editing, document, done: editing.done + 1 };
};

/** A document is plain by its format; its type merely names its keys. */
const plain = (document: unknown): Json => document as Json;
