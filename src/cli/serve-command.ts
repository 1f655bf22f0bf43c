// seamstead serve: the workroom on a port of this machine, until it is stopped.
import { existsSync, readdirSync } from 'node:fs';
import { networkInterfaces } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { listenAt, makeShop } from '#shop';
import { exits, print, type Terminal, WrongUse } from './terminal.ts';

export interface ServeWishes {
  readonly port: number;
  readonly reach: 'this-machine' | 'network';
  /** Folder of the built workroom; null: beside this program. */
  readonly pages: string | null;
}

export const runServe = async (wishes: ServeWishes, terminal: Terminal): Promise<number> => {
  const pages = wishes.pages ?? join(dirname(fileURLToPath(import.meta.url)), 'workroom');
  const server = await makeShop({ pages }).catch((error: Error) => {
    throw new WrongUse(error.message);
  });
  const stopped = new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  try {
    const host = wishes.reach === 'network' ? '0.0.0.0' : 'localhost';
    const port = await listenAt(server, { host, port: wishes.port }).catch((error: NodeJS.ErrnoException) => {
      throw new WrongUse(
        `The port ${wishes.port} cannot be had (${error.code ?? error.message}). Try another: --port 4400`,
      );
    });
    const addresses = ['localhost', ...(wishes.reach === 'network' ? ownAddresses() : [])];
    await print(terminal.stdout, 'The workroom is open. Ctrl-C closes it.');
    const demo = firstDemo(pages);
    for (const address of addresses) {
      await print(terminal.stdout, `  http://${address}:${port}/`);
      if (demo !== null)
        await print(terminal.stdout, `  http://${address}:${port}/#/demo/${demo}   with a quilt to try`);
    }
    await stopped;
    return exits.done;
  } finally {
    await server.close();
  }
};

/** By its name among those that were built with the workroom. */
const firstDemo = (pages: string): string | null => {
  const folder = join(pages, 'demos');
  const [first] = existsSync(folder) ? readdirSync(folder).toSorted() : [];
  return first === undefined ? null : first.replace(/\.quilt\.json.*$/, '');
};

const ownAddresses = (): readonly string[] =>
  Object.values(networkInterfaces())
    .flat()
    .flatMap((one) => (one !== undefined && one.family === 'IPv4' && !one.internal ? [one.address] : []));
