// seamstead ways as a person or a script meets it.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';
import { runCommand } from './run-command.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const lane = join(root, 'examples/lantern-lane.quilt.json');
const folder = mkdtempSync(join(tmpdir(), 'seamstead-ways-'));
after(() => rmSync(folder, { recursive: true, force: true }));

const run = (...argv: readonly string[]) => runCommand(['ways', ...argv]);

describe('seamstead ways', () => {
  it('lists the units, the quilt as it is, and the choices with what each has over it', async () => {
    const { exit, out, err } = await run(lane);
    assert.deepEqual([exit, err], [0, '']);
    assert.match(out, /^ {2}48 flying geese, 4 × 2 in, of Mist and Slate$/m);
    assert.match(out, /^ {2}90 half-squares, 2 in, of Mist and Pine$/m);
    assert.match(out, /^WORTH CHOOSING\n {2}1 {2}/m);
    assert.match(out, /less cloth/);
    assert.match(
      out.replace(/\s+/g, ' '),
      /as much at most;.*However its strips are laid, no choice takes less than \S+ in of cloth/,
    );
    assert.ok(out.split('\n').every((line) => [...line].length <= 80));
  });

  it('writes the document of the choice that is taken, and that is then the quilt as it is', async () => {
    const taken = join(folder, 'taken.quilt.json');
    assert.equal((await run(lane, '--take', '1', '--out', taken)).exit, 0);
    const { methods } = JSON.parse(readFileSync(taken, 'utf8'));
    assert.deepEqual(
      methods.map((one: { way: string }) => one.way),
      ['four-at-a-time', 'eight-at-a-time'],
    );
    assert.match((await run(taken)).out, /^ {2}1 {2}.*\n?.*as it is/m);
  });

  it('refuses a choice that it does not list, and one without a place to write it', async () => {
    const many = await run(lane, '--take', '99', '--out', join(folder, 'none.json'));
    assert.equal(many.exit, 2);
    assert.match(many.err, /numbered from 1 to \d+/);
    assert.equal((await run(lane, '--take', '1')).exit, 2);
  });

  it('prints all choices as JSON with the methods that a document writes', async () => {
    const file = JSON.parse((await run(lane, '--json')).out);
    assert.equal(file.format, 'seamstead-ways');
    assert.equal(file.whole, true);
    const least = (of: 'cloth' | 'minutes'): number =>
      Math.min(...file.front.map((point: { cloth: number; minutes: number }) => point[of]));
    assert.equal(file.least.minutes, least('minutes'));
    assert.ok(file.least.cloth > 0 && file.least.cloth <= least('cloth'));
    assert.ok(file.front.every((point: { methods: unknown }) => Array.isArray(point.methods)));
  });
});
