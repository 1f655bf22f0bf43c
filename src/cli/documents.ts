// Documents from files or standard input, read no further than a document may be long.
import { open } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Readable } from 'node:stream';
import { limits } from '#craft/limits';
import { NotText, type Terminal, WrongUse } from './terminal.ts';

/** The text of a document; a longer one is cut off just past the limit, so that the reader refuses it by name. */
export const readDocument = async (file: string, terminal: Terminal): Promise<string> => {
  if (file === '-') return textFrom(terminal.stdin, calledName(file));
  if (file === '') throw new WrongUse('The name of the document is empty. Name a file, or - for standard input.');
  const handle = await open(file).catch((error: NodeJS.ErrnoException) => {
    throw new WrongUse(cannotRead(file, error));
  });
  try {
    return await textFrom(handle.createReadStream({ autoClose: false }), file);
  } finally {
    await handle.close();
  }
};

/** A document as a person calls it. */
export const calledName = (file: string): string => (file === '-' ? 'standard input' : file);

/** What a document's plan is called when nobody says: its file's name without endings. */
export const nameOf = (file: string): string => {
  const name = file === '-' ? '' : basename(file).replace(/(\.quilt)?\.json$/i, '');
  return name === '' || name === '.' || name === '..' ? 'quilt' : name;
};

const textFrom = async (stream: Readable, from: string): Promise<string> => {
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    for await (const chunk of stream) {
      const bytes = Buffer.from(chunk);
      chunks.push(bytes);
      size += bytes.length;
      // four bytes a character at most: past this the text is too long whatever is in it
      if (size > 4 * limits.characters + 4) break;
    }
  } catch (error) {
    throw new WrongUse(cannotRead(from, error as NodeJS.ErrnoException));
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks));
  } catch {
    if (size > 4 * limits.characters) return ' '.repeat(limits.characters + 1);
    throw new NotText(`${from} is not text in UTF-8. Save the document as UTF-8 and try again.`);
  }
};

const cannotRead = (file: string, error: NodeJS.ErrnoException): string => {
  switch (error.code) {
    case 'ENOENT':
      return `There is no file ${file}.`;
    case 'EISDIR':
      return `${file} is a folder. Name the document in it.`;
    case 'EACCES':
      return `${file} may not be read: permission is denied.`;
    default:
      return `${file} cannot be read (${error.code ?? error.message}).`;
  }
};
