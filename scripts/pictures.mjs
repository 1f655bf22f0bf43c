// npm run pictures: makes the pictures in our prose anew, with the command that any maker uses.

import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Picture in docs/pictures, and the example whose quilt it shows. */
const pictures = { 'harvest-home.png': 'harvest-home-throw' };

const root = fileURLToPath(new URL('..', import.meta.url));
mkdirSync(join(root, 'docs/pictures'), { recursive: true });
for (const [picture, example] of Object.entries(pictures)) {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-picture-'));
  try {
    const command = [join(root, 'bin/seamstead.mjs'), 'plan', `examples/${example}.quilt.json`, '--out', folder];
    const { status } = spawnSync(process.execPath, command, { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
    if (status !== 0) process.exitCode = 1;
    else copyFileSync(join(folder, 'quilt.png'), join(root, 'docs/pictures', picture));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
