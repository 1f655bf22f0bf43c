// The workroom from the command line: it says where it is, answers there, and ends when it is told to.

import assert from 'node:assert/strict';
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { after, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const pages = mkdtempSync(join(tmpdir(), 'seamstead-served-'));
writeFileSync(join(pages, 'index.html'), '<!doctype html><title>Workroom</title>');

const serve = (...options: string[]): ChildProcess & { readonly stdout: NonNullable<ChildProcess['stdout']> } =>
  spawn(process.execPath, [join(root, 'bin/seamstead.mjs'), 'serve', ...options], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
  });

const addressOf = async (served: ReturnType<typeof serve>): Promise<string> => {
  for await (const line of createInterface({ input: served.stdout })) {
    const found = /http:\/\/\S+/.exec(line);
    if (found) return found[0];
  }
  throw new Error('it named no address');
};

describe('seamstead serve', () => {
  after(() => rmSync(pages, { recursive: true }));

  it('names its address, answers there, passes over a port that is taken, and ends with 0', async () => {
    const taken = createServer().listen(0, 'localhost');
    await once(taken, 'listening');
    const { port } = taken.address() as { port: number };
    const served = serve('--pages', pages, '--port', String(port));
    try {
      const address = await addressOf(served);
      assert.notEqual(address, `http://localhost:${port}/`);
      assert.match(await (await fetch(address)).text(), /Workroom/);
      served.kill('SIGTERM');
      const [status] = await once(served, 'exit');
      assert.equal(status, 0);
    } finally {
      served.kill('SIGKILL');
      taken.close();
    }
  });

  it('says what is missing where no workroom was built, and that a port is none', async () => {
    for (const [options, says] of [
      [['--pages', join(pages, 'none')], /There is no workroom in .*npm run build/],
      [['--port', '70000'], /port/],
    ] as const) {
      const served = serve(...options);
      let text = '';
      served.stderr?.on('data', (chunk) => {
        text += chunk;
      });
      const [status] = await once(served, 'exit');
      assert.equal(status, 2);
      assert.match(text, says);
    }
  });
});
