// npm run build: the command line in one file, dist/seamstead.mjs.

import { fileURLToPath } from 'node:url';
import { readyBundle } from './ready/bundle.mjs';
import { giveUp } from './ready/giving-up.mjs';
import { requireNode } from './ready/node-version.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
requireNode(root);
console.log(await readyBundle(root, console.log).catch(giveUp));
