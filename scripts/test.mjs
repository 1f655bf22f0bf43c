// npm test: everything, from a fresh clone too. It installs what is missing, runs every part to its end and closes with
// one plain line, "N passed, N failed".
//
//   npm test                              all parts
//   npm run test:unit                     one group
//   npm run test:unit -- cutting          of that group, the files whose path holds the word
//   npm run accept -- harvest-home-throw  writes what one example gives now as what it should give
//   npm run fuzz                          laws and units with a new seed and 2000 cases each; SEAMSTEAD_RUNS says how
//                                         many instead, SEAMSTEAD_SEED repeats the seed that a failure names
//   npm run walk                          Sew in the browser, through every step of every example; else four of them

import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { partsOf, runPart } from './parts.mjs';
import { giveUp } from './ready/giving-up.mjs';
import { requireNode } from './ready/node-version.mjs';
import { readyOutsideTools } from './ready/outside-tools.mjs';
import { installPackages } from './ready/packages.mjs';
import { groups } from './tests/groups.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
requireNode(root);

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { accept: { type: 'boolean' }, fuzz: { type: 'boolean' }, walk: { type: 'boolean' } },
});
const named = positionals.filter((word) => word in groups);
const words = positionals.filter((word) => !(word in groups));
if (values.accept && words.length !== 1) {
  giveUp(new Error('Accept one example at a time, after looking at it: npm run accept -- harvest-home-throw'));
}
const env = {
  ...(values.accept ? { SEAMSTEAD_ACCEPT: words[0] } : {}),
  ...(values.fuzz ? { SEAMSTEAD_RUNS: process.env.SEAMSTEAD_RUNS ?? '2000' } : {}),
  ...(values.walk ? { SEAMSTEAD_WALK: 'all' } : {}),
};

const parts = partsOf(root, { words: values.accept ? [] : words, env });
const isAsked = ({ name }) => (named.length > 0 ? named.includes(name) : words.length === 0 || name in groups);
const asked = parts.filter(isAsked);

try {
  installPackages(root, console.log);
  if (asked.some(({ name }) => ['outside', 'browser'].includes(name))) readyOutsideTools(console.log);
} catch (error) {
  giveUp(error);
}

const total = { passed: 0, failed: 0 };
for (const part of asked) {
  const { passed, failed } = await runPart(part);
  total.passed += passed;
  total.failed += failed;
}
if (total.passed + total.failed === 0) giveUp(new Error('No test was found.'));
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 ? 1 : 0;
