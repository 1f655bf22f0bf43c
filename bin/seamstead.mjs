#!/usr/bin/env node
// The command in a checkout. It uses Node alone, so it runs before anything is installed: it installs and builds what
// is missing, then hands over to the command line proper. All it says itself goes to standard error.

import { fileURLToPath, pathToFileURL } from 'node:url';
import { readyBundle } from '../scripts/ready/bundle.mjs';
import { giveUp } from '../scripts/ready/giving-up.mjs';
import { requireNode } from '../scripts/ready/node-version.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
requireNode(root);
const bundle = await readyBundle(root, (line) => console.error(line)).catch(giveUp);

// A write that fails is told to its writer, who has words for it; nothing is thrown past it.
for (const stream of [process.stdout, process.stderr]) stream.on('error', () => {});

const { main } = await import(pathToFileURL(bundle).href);
const { argv, stdin, stdout, stderr } = process;
// The exit code is set and not forced: what is still on its way to standard output gets there.
process.exitCode = await main({ argv: argv.slice(2), stdin, stdout, stderr });
