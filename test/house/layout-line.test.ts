// `seamstead layout` as a person or a script meets it: what it prints, its exit codes, and what a mistake gives.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';
import type { LayoutFile } from '#paper/layout-file';
import { runCommand } from './run-command.ts';

const run = (argv: readonly string[], stdin = '') => runCommand(['layout', ...argv], { stdin });

const small = 'bench/instances/q-small-a.json';
const changed = (change: Readonly<Record<string, unknown>>): string =>
  JSON.stringify({ ...(JSON.parse(readFileSync(small, 'utf8')) as object), ...change });

describe('seamstead layout', () => {
  it('prints one object with its length, its bound and how the cloth is cut', async () => {
    const { exit, out, err } = await run([small, '--problem', 'strip2-o', '--seconds', '0.2', '--json']);
    assert.equal(exit, 0);
    assert.equal(err, '');
    const file = JSON.parse(out) as LayoutFile;
    assert.deepEqual([file.instance, file.problem], ['q-small-a', 'strip2-o']);
    assert.equal(file.length, 166); // proven least, as the instance says
    assert.ok(file.bound > 0 && file.bound <= 166);
    assert.ok(file.firstMs <= file.bestMs && file.bestMs <= 1000 * file.seconds + 1);
  });

  it('counts sheets by name, with their cost', async () => {
    const { exit, out } = await run([small, '--problem', 'sheets2-r', '--seconds', '0.2', '--json']);
    assert.equal(exit, 0);
    const { sheets = {}, cost, length, stock } = JSON.parse(out) as LayoutFile;
    assert.equal(length, undefined);
    // a fat quarter of 176 × 144 and a square of 80 cost their areas, as the instance says
    assert.equal(cost, 176 * 144 * (sheets.fq ?? 0) + 80 * 80 * (sheets.sq10 ?? 0));
    assert.equal(
      stock.reduce((sum, { times = 1 }) => sum + times, 0),
      (sheets.fq ?? 0) + (sheets.sq10 ?? 0),
    );
  });

  it('tells a person what the layout comes to, from standard input too', async () => {
    const { exit, out } = await run(['-', '--seconds', '0'], readFileSync(small, 'utf8'));
    assert.equal(exit, 0);
    assert.match(out, /^q-small-a, problem strip2-o: 50 pieces of 10 kinds\n {2}Length \d+ on cloth 336 wide\n/);
  });

  it('takes a problem by its name where the instance does not list it', async () => {
    const { exit, out } = await run(
      ['-', '--problem', 'strip3-r', '--seconds', '0', '--json'],
      changed({ bestKnown: [] }),
    );
    assert.equal(exit, 0);
    assert.equal((JSON.parse(out) as LayoutFile).problem, 'strip3-r');
  });

  it('refuses what is wrong with its place and what to do, and ends with 1', async () => {
    const items = [
      [35, 72, 5],
      [47, 12],
      [400, 12, 1],
    ];
    const twisted = await run(['-'], changed({ items }));
    assert.equal(twisted.exit, 1);
    assert.match(
      twisted.err,
      /^standard input: 1 problem\n {2}\/items\/1\n {4}Here stands \[…\].*\n {4}Put a list of three/,
    );
    const wide = await run(['-', '--problem', 'strip2-o'], changed({ items: [[400, 12, 1]] }));
    assert.equal(wide.exit, 1);
    assert.match(wide.err, /\/items\/0\n.*400 across and 12 along does not fit on the cloth, which is 336 wide/);
    const few = { sheets: [{ id: 'one', w: 176, h: 144, count: 1 }] };
    const short = await run(['-', '--problem', 'sheets2-o', '--seconds', '0.1'], changed(few));
    assert.equal(short.exit, 1);
    assert.match(short.err, /sheets at hand/);
    const exact = { bestKnown: [{ problem: 'exact', kind: 'strip', trim: false }] };
    const untrimmed = await run(['-'], changed(exact));
    assert.equal(untrimmed.exit, 1);
    assert.match(untrimmed.err, /\/bestKnown\/0\/trim\n.*allows no trimming/);
    const unknown = await run([small, '--problem', 'strip2-x']);
    assert.equal(unknown.exit, 1);
    assert.match(unknown.err, /Did you mean “strip2-[or]”/);
  });

  it('ends with 2 when a time is no time, or the file is not there', async () => {
    for (const seconds of ['soon', '-1', '', '1e9']) {
      const { exit, err } = await run([small, '--seconds', seconds]);
      assert.equal(exit, 2);
      assert.match(err, /this is not a time\. Write seconds/);
    }
    assert.equal((await run(['nowhere.json'])).exit, 2);
  });
});
