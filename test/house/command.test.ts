// The command in a checkout: it builds what is stale, keeps standard output for its user, and bears company.

import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import type { Readable } from 'node:stream';
import { after, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const built: string[] = [];
after(() => {
  for (const house of built) rmSync(house, { recursive: true, force: true });
});

/** A command line that says "one", and whatever else an argument asks for. */
const cli = `import { word } from '#craft';
import { writeFileSync } from 'node:fs';

export async function main({ argv, stdout }) {
  stdout.write(word + '\\n');
  if (argv[0] === 'fail') return 3;
  if (argv[0] === 'long') {
    for (let n = 0; n < 50_000; n++) stdout.write('line ' + n + '\\n');
    writeFileSync('finished', '');
  }
  return 0;
}
`;

function houseOf(): string {
  const house = mkdtempSync(join(tmpdir(), 'seamstead-command-'));
  built.push(house);
  for (const kept of ['package.json', 'package-lock.json', 'bin', 'scripts/ready']) {
    cpSync(join(root, kept), join(house, kept), { recursive: true });
  }
  symlinkSync(join(root, 'node_modules'), join(house, 'node_modules'), 'dir');
  write(house, 'src/cli/index.ts', cli);
  write(house, 'src/craft/quilt.ts', "export const word = 'one';\n");
  return house;
}

function write(house: string, file: string, text: string): void {
  mkdirSync(dirname(join(house, file)), { recursive: true });
  writeFileSync(join(house, file), text);
}

const run = (house: string, ...args: string[]) =>
  spawnSync(process.execPath, [join(house, 'bin/seamstead.mjs'), ...args], { cwd: house, encoding: 'utf8' });

/** Everything that comes on a stream, once it has ended. */
const saidOn = async (stream: Readable): Promise<string> => (await stream.setEncoding('utf8').toArray()).join('');

describe('the command in a checkout', () => {
  it('builds once, and says so on standard error only', () => {
    const house = houseOf();
    const [first, second] = [run(house), run(house)];
    assert.deepEqual([first.stdout, first.stderr], ['one\n', 'Building ...\n']);
    assert.deepEqual([second.stdout, second.stderr], ['one\n', '']);
  });

  it('builds anew when a source has changed', () => {
    const house = houseOf();
    run(house);
    write(house, 'src/craft/quilt.ts', "export const word = 'two';\n");
    assert.equal(run(house).stdout, 'two\n');
  });

  it('notices that a source is gone', () => {
    const house = houseOf();
    run(house);
    rmSync(join(house, 'src/craft/quilt.ts'));
    const { status, stderr } = run(house);
    assert.equal(status, 1);
    assert.match(stderr, /src\/cli\/index\.ts:1:\d+: ERROR: Could not resolve "#craft"/);
  });

  it('ends with the exit code of the command line', () => {
    assert.equal(run(houseOf(), 'fail').status, 3);
  });

  it('runs beside itself while neither is built', async () => {
    const house = houseOf();
    const outputs = await Promise.all(
      [1, 2, 3].map(async () => {
        const child = spawn(process.execPath, [join(house, 'bin/seamstead.mjs')], { cwd: house });
        return await saidOn(child.stdout);
      }),
    );
    assert.deepEqual(outputs, ['one\n', 'one\n', 'one\n']);
  });

  it('lets all of a long output through', () => {
    const { stdout } = run(houseOf(), 'long');
    assert.ok(stdout.endsWith('line 49999\n'));
  });

  it('is quiet when its reader has seen enough, and finishes its work', async () => {
    const house = houseOf();
    const child = spawn(process.execPath, [join(house, 'bin/seamstead.mjs'), 'long'], { cwd: house });
    child.stdout.once('data', () => child.stdout.destroy());
    assert.equal(await saidOn(child.stderr), 'Building ...\n');
    assert.equal(readFileSync(join(house, 'finished'), 'utf8'), '');
  });

  it('installs first when the lock asks for other packages, once for all who wait', async () => {
    const house = houseOf();
    const lock = readFileSync(join(root, 'package-lock.json'), 'utf8');
    const { version } = JSON.parse(lock).packages['node_modules/esbuild'];
    // The packages at hand, but noted as installed from a lock that had another esbuild.
    rmSync(join(house, 'node_modules'));
    mkdirSync(join(house, 'node_modules'));
    symlinkSync(join(root, 'node_modules/esbuild'), join(house, 'node_modules/esbuild'), 'dir');
    write(house, 'node_modules/.package-lock.json', lock.replaceAll(version, '0.0.1'));
    write(house, 'good-lock.json', lock);
    write(
      house,
      'bin/npm',
      '#!/bin/sh\necho "npm $*" >> npm-ran\nsleep 0.3\ncp good-lock.json node_modules/.package-lock.json\necho chatter\n',
    );
    chmodSync(join(house, 'bin/npm'), 0o755);
    const env = { ...process.env, PATH: `${join(house, 'bin')}${delimiter}${process.env.PATH}` };
    const outputs = await Promise.all(
      [1, 2].map(async () => {
        const child = spawn(process.execPath, [join(house, 'bin/seamstead.mjs')], { cwd: house, env });
        return await saidOn(child.stdout);
      }),
    );
    assert.deepEqual(outputs, ['one\n', 'one\n']);
    assert.equal(readFileSync(join(house, 'npm-ran'), 'utf8'), 'npm ci\n');
  });
});
