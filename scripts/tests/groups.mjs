// Which tests there are, found by their place. Nobody registers a test: a file named x.test.ts is one. One that takes seconds is named
// x.long.test.ts: the check before a commit leaves it out.

import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

/** Name and folder of each group; unit tests lie beside their file. */
export const groups = {
  unit: 'src',
  worked: 'test/worked',
  golden: 'test/golden',
  docs: 'test/docs',
  laws: 'test/laws',
  house: 'test/house',
  outside: 'test/outside',
  browser: 'test/browser',
};

/**
 * Test files of a group whose path holds one of the words; all of them when there are no words.
 *
 * @param of.long whether those that take seconds are among them
 */
export function filesOf(root, group, words = [], { long = true } = {}) {
  const folder = groups[group];
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { recursive: true })
    .map((file) => `${folder}/${file.replaceAll('\\', '/')}`)
    .filter((file) => file.endsWith('.test.ts') && (long || !file.endsWith('.long.test.ts')))
    .filter((file) => words.length === 0 || words.some((word) => file.includes(word)))
    .sort();
}

/**
 * Runs test files, those of each layer in a process of their own (large ones in as many as there are cores), and prints what fails.
 *
 * @returns {Promise<{passed: number, failed: number, line: string, failing?: string[]}>} failing: whole paths of files with a red test
 */
export async function runTests(root, files, env) {
  mkdirSync(join(root, '.cache'), { recursive: true });
  const folder = mkdtempSync(join(root, '.cache/tests-'));
  try {
    const lists = writeLists(folder, files);
    const fuzzing = env.SEAMSTEAD_RUNS ? ['--import', './scripts/tests/fuzzing.mjs'] : [];
    const flags = ['--import', 'tsx', ...fuzzing, '--test', `--test-concurrency=${availableParallelism()}`];
    const reporter = ['--test-reporter=./scripts/count-reporter.mjs', '--test-reporter-destination=stdout'];
    return await countFrom(
      spawn(process.execPath, [...flags, ...reporter, ...lists], {
        cwd: root,
        env: { ...process.env, ...env },
        stdio: ['ignore', 'pipe', 'inherit'],
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Layers and groups that compute for a minute or more, and nothing besides: they are dealt out over the cores. */
const dealtOut = new Set(['src/craft', 'test/laws']);

/** Lists of files for each layer (src/craft) or group (test/golden), each for a process of its own. */
function writeLists(folder, files) {
  const layerOf = (file) => file.split('/', 2).join('/');
  return [...new Set(files.map(layerOf))].flatMap((layer) => {
    const ofLayer = files.filter((file) => layerOf(file) === layer);
    const hands = dealtOut.has(layer) ? Math.min(availableParallelism(), ofLayer.length) : 1;
    return Array.from({ length: hands }, (_, hand) => {
      const list = join(folder, `${layer.replace('/', '-')}-${hand + 1}.test.ts`);
      const dealt = JSON.stringify(ofLayer.filter((_, i) => i % hands === hand));
      writeFileSync(list, `import { gather } from '../../scripts/tests/gather.ts';\n\nawait gather(${dealt});\n`);
      return list;
    });
  });
}

/** Passes on what the run prints, but for its closing line, which is read. */
async function countFrom(run) {
  const ended = new Promise((resolve) => run.once('close', resolve));
  let count = null;
  const failing = new Set();
  for await (const line of createInterface({ input: run.stdout })) {
    const closing = /^(\d+) passed, (\d+) failed/.exec(line);
    const file = /^ {2}in (.*\.test\.ts)$/.exec(line);
    if (file) failing.add(file[1]);
    if (closing) count = { passed: Number(closing[1]), failed: Number(closing[2]), line };
    else console.log(line);
  }
  const status = await ended;
  if (count && (status === 0 || count.failed > 0)) return { ...count, failing: [...failing] };
  return { passed: count?.passed ?? 0, failed: 1, line: `the run itself failed (exit code ${status})` };
}
