// A command as a test runs it: in this process, with what it writes collected.
import { Readable, Writable } from 'node:stream';
import { main } from '#cli';

export interface Ended {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Collects what is written; `isTTY` makes it a terminal that a person looks at. */
export class Paper extends Writable {
  readonly isTTY: boolean;
  text = '';

  constructor(isTTY: boolean) {
    super();
    this.isTTY = isTTY;
  }

  override _write(chunk: Buffer, _encoding: string, done: () => void): void {
    this.text += chunk.toString();
    done();
  }
}

export const runCommand = async (
  argv: readonly string[],
  at: { readonly stdin?: string | Buffer; readonly isWatched?: boolean } = {},
): Promise<Ended> => {
  const stdout = new Paper(false);
  const stderr = new Paper(at.isWatched ?? false);
  const exit = await main({ argv, stdin: Readable.from([Buffer.from(at.stdin ?? '')]), stdout, stderr });
  return { exit, out: stdout.text, err: stderr.text };
};
