// Files that were dropped or picked, opened one after another: each becomes a quilt of its own, or is told why not.
import { limits } from '#craft/limits';
import type { Planner, WorkroomProblem } from '#workroom/compute';
import type { Room } from '#workroom/room';
import { titleOf } from '#workroom/store';
import { beginQuilt } from './beginning.ts';

export type OpenedFile = {
  /** What the file is called. */
  readonly from: string;
  readonly problems: readonly WorkroomProblem[];
  /** Problems beyond those listed. */
  readonly more: number;
} & ({ readonly outcome: 'opened'; readonly id: string; readonly title: string } | { readonly outcome: 'refused' });

/** A file, or anything else that has a name and a text. */
export interface TextSource {
  readonly name: string;
  readonly bytes: () => Promise<ArrayBuffer>;
  /** In bytes. */
  readonly size: number;
}

export const sourceOf = (file: File): TextSource => ({
  name: file.name,
  bytes: () => file.arrayBuffer(),
  size: file.size,
});

export const openedFrom = async (
  source: TextSource,
  room: { readonly store: Room['store']; readonly planner: Pick<Planner, 'text'> },
): Promise<OpenedFile> => {
  const { name: from } = source;
  const text = await textIn(source);
  if (typeof text !== 'string') return { from, outcome: 'refused', problems: [text], more: 0 };
  const read = await room.planner.text(text);
  if (!read.ok) return { from, outcome: 'refused', problems: read.problems, more: read.more };
  try {
    const id = await beginQuilt(room.store, read.value);
    return { from, outcome: 'opened', id, title: titleOf(read.value), problems: read.problems, more: read.more };
  } catch {
    const mend = 'Remove a quilt that you no longer need, or save it to a file first, then open this one again.';
    return {
      from,
      outcome: 'refused',
      problems: [{ where: 'the file', what: 'This browser has no room for another quilt.', mend }],
      more: 0,
    };
  }
};

/** Four bytes a character at most: what is longer is too long whatever is in it, and is not read. */
const mostBytes = 4 * limits.characters;

const textIn = async ({ bytes, size }: TextSource): Promise<string | WorkroomProblem> => {
  const where = 'the file';
  if (size > mostBytes) {
    return {
      where,
      what: `The file is longer than a document may be: ${limits.characters} characters.`,
      mend: 'Open a file that ends in .quilt.json.',
    };
  }
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await bytes());
  } catch (error) {
    return error instanceof TypeError
      ? {
          where,
          what: 'This is not text in UTF-8.',
          mend: 'Open a file that ends in .quilt.json, or save the document as UTF-8.',
        }
      : {
          where,
          what: 'The file cannot be read.',
          mend: 'See whether it is still there, and is no folder; then try again.',
        };
  }
};
