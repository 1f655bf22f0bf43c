// What is done, and not done, before anything runs.

import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, describe, it } from 'node:test';
import { installPackages } from '../../scripts/ready/packages.mjs';

describe('installing packages', () => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-packages-'));
  after(() => rmSync(folder, { recursive: true }));

  it('leaves a folder behind a link as it is, and says so', () => {
    const [root, elsewhere] = [join(folder, 'root'), join(folder, 'elsewhere')];
    for (const made of [root, elsewhere]) mkdirSync(made);
    writeFileSync(join(elsewhere, 'kept'), '');
    writeFileSync(
      join(root, 'package-lock.json'),
      JSON.stringify({ packages: { 'node_modules/new': { version: '1' } } }),
    );
    symlinkSync(elsewhere, join(root, 'node_modules'));
    assert.throws(() => installPackages(root, () => {}), /node_modules is a link .* remove the link/);
    assert.deepEqual(readdirSync(elsewhere), ['kept']);
  });
});
