// A quilt that begins is kept at once, and then opened like any other.
import { beginEditing, type JsonObject } from '#workroom/editing';
import type { Room } from '#workroom/room';
import { titleOf } from '#workroom/store';
import { freshId } from './beginnings.ts';

/** @returns its id */
export const beginQuilt = async (store: Room['store'], document: JsonObject): Promise<string> => {
  const id = freshId();
  const { done } = beginEditing(document);
  await store.save({ id, basis: 0, title: titleOf(document), changedMs: Date.now(), document, keep: 0, add: [], done });
  return id;
};
