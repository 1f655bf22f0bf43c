// Files into a folder, each put in place whole, so that nobody ever reads half of one.
import { mkdir, rename, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { WrongUse } from './terminal.ts';

/** Makes the folder where there is none. */
export const writeAll = async (folder: string, files: ReadonlyMap<string, string | Uint8Array>): Promise<void> => {
  if (folder === '') throw new WrongUse('The name of the folder is empty. Name one with --out.');
  try {
    await makeFolder(resolve(folder));
    for (const [name, content] of files) {
      const unfinished = join(folder, `.${name}.${process.pid}.part`);
      await writeFile(unfinished, content);
      await rename(unfinished, join(folder, name));
    }
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw new WrongUse(
      `The files cannot be written to ${folder} (${code ?? message}). Name another folder with --out.`,
    );
  }
};

/** One level at a time from the first that is missing: asked for all at once, some file systems never answer. */
const makeFolder = async (folder: string): Promise<void> => {
  try {
    await mkdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') return;
    if (code !== 'ENOENT' || dirname(folder) === folder) throw error;
    if (
      await stat(dirname(folder)).then(
        () => true,
        () => false,
      )
    )
      throw error;
    await makeFolder(dirname(folder));
    await mkdir(folder);
  }
};
