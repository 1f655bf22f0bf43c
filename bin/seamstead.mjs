#!/usr/bin/env node
// The command in a checkout. It uses Node alone, so it runs before anything is installed: it installs and builds what
// is missing, then hands over to the command line proper. All it says itself goes to standard error.

import { fileURLToPath, pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { readyBundle } from '../scripts/ready/bundle.mjs';
import { giveUp } from '../scripts/ready/giving-up.mjs';
import { requireNode } from '../scripts/ready/node-version.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
requireNode(root);
const bundle = await readyBundle(root, (line) => console.error(line)).catch(giveUp);

// The solver's code runs well enough as it is first compiled: to compile it a second time, better, pays only for what runs
// long. By its own measure Node does so at once, which took a third of a throw's plan.
setFlagsFromString('--wasm-tiering-budget=30000000');

// A write that fails is told to its writer, who has words for it; nothing is thrown past it.
for (const stream of [process.stdout, process.stderr]) stream.on('error', () => {});

const { main } = await import(pathToFileURL(bundle).href);
const { argv, stdin, stdout, stderr } = process;
// The exit code is set and not forced: what is still on its way to standard output gets there.
process.exitCode = await main({ argv: argv.slice(2), stdin, stdout, stderr });
