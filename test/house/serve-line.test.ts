// The workroom from the command line: it says where it is, answers there, and ends when it is told to.

import assert from 'node:assert/strict';
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
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

/** The first addresses that it names. */
const addressesOf = async (served: ReturnType<typeof serve>, count: number): Promise<readonly string[]> => {
  const found: string[] = [];
  for await (const line of createInterface({ input: served.stdout })) {
    found.push(...(line.match(/http:\/\/\S+/g) ?? []));
    if (found.length >= count) return found;
  }
  throw new Error(`it named ${found.length} addresses`);
};

describe('seamstead serve', () => {
  after(() => rmSync(pages, { recursive: true }));

  it('names its address, answers there, passes over a port that is taken, and ends with 0', async () => {
    const taken = createServer().listen(0, 'localhost');
    await once(taken, 'listening');
    const { port } = taken.address() as { port: number };
    const served = serve('--pages', pages, '--port', String(port));
    try {
      const [address = ''] = await addressesOf(served, 1);
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

  it('names the first demo that was built with the workroom', async () => {
    const withDemos = join(pages, 'with-demos');
    mkdirSync(join(withDemos, 'demos'), { recursive: true });
    writeFileSync(join(withDemos, 'index.html'), '<!doctype html><title>Workroom</title>');
    for (const file of ['plum.quilt.json.gz', 'plum.quilt.json', 'ash.quilt.json', 'ash.quilt.json.br'])
      writeFileSync(join(withDemos, 'demos', file), '{}');
    const served = serve('--pages', withDemos, '--port', '0');
    try {
      const [home, demo] = await addressesOf(served, 2);
      assert.equal(demo, `${home}#/demo/ash`);
    } finally {
      served.kill('SIGKILL');
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
