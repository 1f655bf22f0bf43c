// What a command may touch of the terminal; handed in, so that a test can be one.
import type { Readable, Writable } from 'node:stream';

export interface Terminal {
  readonly stdin: Readable;
  readonly stdout: Writable & { readonly isTTY?: boolean };
  readonly stderr: Writable & { readonly isTTY?: boolean };
}

/** The command's end: all done, the document has problems, or the command itself was used wrongly. */
export const exits = { done: 0, problems: 1, wrongUse: 2 } as const;

/** Wrong use or a file that cannot be had: one line for a person, never a stack trace. */
export class WrongUse extends Error {}

/** A file that is there and no document: not text at all. */
export class NotText extends Error {}

/** A reader that has seen enough (`| head`) closes the pipe: that is its right, and what else is to be done is done. */
export const print = (out: Writable, text: string): Promise<void> =>
  new Promise((resolve, reject) => {
    out.write(text.endsWith('\n') ? text : `${text}\n`, (error) => {
      if (!error || codeOf(error) === 'EPIPE') resolve();
      else reject(new WrongUse(`The output cannot be written (${codeOf(error)}). Send it elsewhere, or make room.`));
    });
  });

const codeOf = (error: NodeJS.ErrnoException): string => error.code ?? error.message;

/** One line that is written over, only when a person is looking. */
export const progressOn = (
  out: Terminal['stderr'],
): { readonly say: (what: string) => void; readonly clear: () => void } => {
  const shown = out.isTTY === true;
  const wipe = '\r\u001b[2K';
  return {
    say: (what) => {
      if (shown) out.write(`${wipe}${what}`);
    },
    clear: () => {
      if (shown) out.write(wipe);
    },
  };
};
