// npm start: from a fresh clone to two planned quilts, in one command. Installs and builds what is stale, then does the
// main job on the demo documents, in the way that any maker would on her own.

import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readyBundle } from './ready/bundle.mjs';
import { giveUp } from './ready/giving-up.mjs';
import { requireNode } from './ready/node-version.mjs';

const demos = ['harvest-home-throw', 'orchard-pair'];

const root = fileURLToPath(new URL('..', import.meta.url));
requireNode(root);
await readyBundle(root, console.log).catch(giveUp);

for (const demo of demos) {
  const [document, out] = [`examples/${demo}.quilt.json`, `out/${demo}`];
  console.log(`\nseamstead plan ${document} --out ${out}`);
  const command = [join(root, 'bin/seamstead.mjs'), 'plan', document, '--out', out];
  const { status } = spawnSync(process.execPath, command, { cwd: root, stdio: 'inherit' });
  if (status !== 0) giveUp(new Error(`${document} was not planned.`));
}
console.log(`\nThe plans, pictures and patterns lie in ${join(root, 'out')}.`);
console.log('Your own: npx seamstead plan my.quilt.json --out somewhere');
