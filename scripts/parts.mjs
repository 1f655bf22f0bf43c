// The parts of a check, in their one order: those that only read the code, then the tests, quick ones first.

import { spawnSync } from 'node:child_process';
import { join, relative } from 'node:path';
import { filesOf, groups, runTests } from './tests/groups.mjs';

const readings = [
  {
    name: 'format and lint',
    command: ['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings'],
    mend: 'npm run format mends what can be mended by itself',
  },
  { name: 'types', command: ['node_modules/typescript/bin/tsc', '-b'] },
  {
    name: 'import law',
    command: ['--import', 'tsx', 'scripts/import-law.ts'],
    mend: 'the table is scripts/law/layers.ts',
  },
];

/** A part is a name and a `run` that answers how many passed and failed, and what to say of it. */
export function partsOf(root, { words = [], env = {}, long = true } = {}) {
  return [
    ...readings.map((reading) => ({ name: reading.name, run: () => read(root, reading) })),
    ...Object.keys(groups).map((name) => ({ name, run: () => test(root, name, { words, env, long }) })),
  ];
}

function read(root, { command, mend }) {
  const { status, stdout, stderr } = spawnSync(process.execPath, command, { cwd: root, encoding: 'utf8' });
  if (status === 0) return { passed: 1, failed: 0, line: 'clean' };
  console.log(stdout + stderr);
  return { passed: 0, failed: 1, line: mend ? `red: ${mend}` : 'red' };
}

async function test(root, group, { words, env, long }) {
  const files = filesOf(root, group, words, { long });
  if (files.length > 0) {
    const tried = await runTests(root, files, env);
    return group === 'browser' && tried.failing?.length > 0 ? await triedAgain(root, tried, env) : tried;
  }
  // Tests that vanished must not pass in silence; only a search by words may leave a group empty.
  if (words.length > 0) return { passed: 0, failed: 0, line: 'nothing by that name' };
  return { passed: 0, failed: 1, line: `no test file in ${join(groups[group], '**')}` };
}

/** A real browser on a busy machine may be late: files with a red test are run once more, and both outcomes are told. */
async function triedAgain(root, first, env) {
  const files = first.failing.map((file) => relative(root, file).replaceAll('\\', '/'));
  console.log(`Once more: ${files.join(', ')}`);
  const again = await runTests(root, files, env);
  if (again.failed > 0) return first;
  const passed = first.passed + first.failed;
  return { passed, failed: 0, line: `${passed} passed, 0 failed; ${first.failed} of them at the second try` };
}

/** Runs one part and prints its line, with its seconds. */
export async function runPart({ name, run }) {
  const begun = performance.now();
  const { passed, failed, line } = await run();
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  console.log(`${failed > 0 ? 'RED' : 'ok '}  ${name.padEnd(16)} ${seconds.padStart(6)} s   ${line}`);
  return { passed, failed };
}
