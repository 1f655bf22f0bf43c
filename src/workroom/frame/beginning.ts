// A quilt that begins is kept at once, and then opened like any other.
import { beginEditing, type JsonObject } from '#workroom/editing';
import type { Room } from '#workroom/room';
import { titleOf } from '#workroom/store';
import { demoQuilts, demoText, freshId } from './beginnings.ts';

/** @returns its id */
export const beginQuilt = async (
  store: Room['store'],
  document: JsonObject,
  id: string = freshId(),
): Promise<string> => {
  const { done } = beginEditing(document);
  await store.save({ id, basis: 0, title: titleOf(document), changedMs: Date.now(), document, keep: 0, add: [], done });
  return id;
};

/**
 * The demo as this browser has it, with all that was done to it; begun where it has not got it.
 *
 * @returns its id; null where there is no such demo
 */
export const demoIn = async (store: Room['store'], file: string): Promise<string | null> => {
  if (!demoQuilts.some((demo) => demo.file === file)) return null;
  const id = `demo-${file}`;
  const kept = await store.read(id);
  return kept === null ? beginQuilt(store, JSON.parse(await demoText(file)) as JsonObject, id) : id;
};
