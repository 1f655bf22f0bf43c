// npm run build: the command line in one file, dist/seamstead.mjs, and the page of the workroom, dist/workroom.

import { fileURLToPath } from 'node:url';
import { readyBundle } from './ready/bundle.mjs';
import { giveUp } from './ready/giving-up.mjs';
import { requireNode } from './ready/node-version.mjs';
import { readyWorkroom } from './ready/workroom.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
requireNode(root);
console.log(await readyBundle(root, console.log).catch(giveUp));
console.log(await readyWorkroom(root, console.log).catch(giveUp));
