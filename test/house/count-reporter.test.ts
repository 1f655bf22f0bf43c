// The closing line is what a reader of a test run trusts, so each way of failing must be in it.

import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';

const reporter = fileURLToPath(new URL('../../scripts/count-reporter.mjs', import.meta.url));

/** Runs a test file of these lines in a process of its own; answers what was printed. */
function report(...lines: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-report-'));
  try {
    const file = join(folder, 'some.test.mjs');
    const head = "import { describe, it, test } from 'node:test';";
    writeFileSync(file, [head, ...lines].join('\n'));
    // Node tells its test processes that they are such; ours is to be a run of its own.
    const { NODE_TEST_CONTEXT: _, ...env } = process.env;
    const run = spawnSync(process.execPath, ['--test', `--test-reporter=${reporter}`, file], { encoding: 'utf8', env });
    return run.stdout;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('the count of a test run', () => {
  it('is all that is said of tests that pass', () => {
    assert.equal(
      report("test('a', () => {});", "describe('s', () => { it('b', () => {}); });"),
      '2 passed, 0 failed\n',
    );
  });

  it('counts a failure once, and names it with its suite', () => {
    const printed = report("describe('s', () => { it('b', () => { throw new Error('boo'); }); });");
    assert.match(printed, /^FAILED s > b$[\s\S]*^ {2}Error: boo$[\s\S]*^0 passed, 1 failed$/m);
  });

  it('counts a suite that breaks before it has a test', () => {
    assert.match(
      report("describe('s', () => { throw new Error('boo'); });"),
      /FAILED s\n[\s\S]*\n0 passed, 1 failed\n$/,
    );
  });

  it('counts a file that cannot be loaded', () => {
    assert.match(report("import './nowhere.mjs';"), /\n0 passed, 1 failed\n$/);
  });

  it('counts a process that ends too early', () => {
    assert.match(report("test('a', () => {});", "test('b', () => process.exit(2));"), /, 1 failed\n$/);
  });

  it('names what was skipped or is still to do, and counts it apart', () => {
    const printed = report(
      "test('a', { skip: true }, () => {});",
      "test('b', { todo: true }, () => {});",
      "test('c', () => {});",
    );
    assert.equal(printed, '1 passed, 0 failed, 2 skipped\n');
  });
});
