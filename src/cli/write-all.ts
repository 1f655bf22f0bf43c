// Files into a folder, each put in place whole, so that nobody ever reads half of one.
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { WrongUse } from './terminal.ts';

/** Makes the folder where there is none. */
export const writeAll = async (folder: string, files: ReadonlyMap<string, string | Uint8Array>): Promise<void> => {
  try {
    await mkdir(folder, { recursive: true });
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
