// npm start: from a fresh clone to the open workroom, in one command. Installs and builds what is stale, then serves it on a port of
// this machine until Ctrl-C. What stands behind `--` goes to `seamstead serve`: npm start -- --network

import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readyBundle } from './ready/bundle.mjs';
import { giveUp } from './ready/giving-up.mjs';
import { requireNode } from './ready/node-version.mjs';
import { readyWorkroom } from './ready/workroom.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
requireNode(root);
await readyBundle(root, console.log).catch(giveUp);
await readyWorkroom(root, console.log).catch(giveUp);

const command = [join(root, 'bin/seamstead.mjs'), 'serve', ...process.argv.slice(2)];
const workroom = spawn(process.execPath, command, { cwd: root, stdio: 'inherit' });
// a terminal's Ctrl-C reaches both; whoever ends this alone ends the workroom with it
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => workroom.kill(signal));
workroom.on('exit', (status) => {
  process.exitCode = status ?? 0;
});
