// seamstead largest as a person or a script meets it.
import assert from 'node:assert/strict';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';
import { runCommand } from './run-command.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const pair = join(root, 'examples/orchard-pair.quilt.json');
const fields = join(root, 'examples/twelve-fields.quilt.json');
const lane = join(root, 'examples/lantern-lane.quilt.json');

const folder = mkdtempSync(join(tmpdir(), 'seamstead-largest-'));
after(() => rmSync(folder, { recursive: true, force: true }));

const run = (...argv: readonly string[]) => runCommand(['largest', ...argv]);

describe('seamstead largest', () => {
  it('says whether the cloth does for the quilt as drawn, the largest that it makes, and what stops the next', async () => {
    const { exit, out, err } = await run(pair, '--have', 'wheat=1/4 yd', '--have', 'dusk=2 yd');
    assert.deepEqual([exit, err], [0, '']);
    assert.match(out, /^Orchard Pair\n\nAS DRAWN\n {2}3 rows of 3, 36 in × 36 in: the cloth at hand does for it\.$/m);
    assert.match(out, /THE LARGEST FROM THE CLOTH AT HAND\n {2}The quilt as drawn\./);
    assert.match(out, /^ {2}Cream {2,}\S.* in {2,}to buy: \S+ yd$/m);
    assert.match(out, /The next larger, 6 rows of 6, .* of Wheat/);
  });

  it('takes several pieces of one cloth', async () => {
    const { exit, out } = await run(pair, '--have', 'dusk=1 yd', '--have', 'dusk=2 yd');
    assert.equal(exit, 0);
    assert.match(out.replace(/\s+/g, ' '), / Dusk \S+ in of 72 in beside 1 shorter, /);
  });

  it('says of each cloth that is too short by how much', async () => {
    const { exit, out } = await run(pair, '--have', 'wheat=1 in');
    assert.equal(exit, 0);
    const line = out.replace(/\s+/g, ' ');
    assert.match(line, /One cloth is too short: Wheat \S+ in of 1 in: lacks \S+ in, however it is laid out/);
    assert.match(line, /The cloth does for no size of this quilt\. Even 1 row of 1, /);
  });

  it('writes the document of that quilt, which can be planned and comes out in that size', async () => {
    const out = join(folder, 'new/lane.quilt.json');
    const answer = await run(lane, '--have', 'pine=1 1/2 yd', '--json', '--out', out);
    assert.equal(answer.exit, 0);
    const { largest, unit, next, format } = JSON.parse(answer.out);
    assert.deepEqual([format, unit], ['seamstead-largest', 'in']);
    assert.ok(next.cloths.some((cloth: { lacks: number }) => cloth.lacks > 0));
    const { top } = JSON.parse(readFileSync(out, 'utf8'));
    assert.equal(top.rows.length, largest.rows);
    const planned = await runCommand(['plan', out, '--json']);
    assert.equal(planned.exit, 0);
    const plan = JSON.parse(planned.out);
    assert.deepEqual([plan.top.width, plan.top.height], largest.size);
  });

  it('looks at the one size of a top in sections', async () => {
    const { out } = await run(fields, '--have', 'ink=3 yd');
    assert.match(out, /The quilt as drawn\.[\s\S]*A top in sections has one size/);
  });

  it('refuses amounts that it cannot read, all of them with what was written, and ends with 2', async () => {
    const out = join(folder, 'none.json');
    const { exit, err } = await run(pair, '--have', 'wheet=1 yd', '--have', 'dusk=2', '--out', out);
    assert.equal(exit, 2);
    assert.match(err, /^--have wheet=1 yd\n {2}The quilt has no cloth “wheet”\.\n {2}Did you mean “wheat”\?$/m);
    assert.match(err, /^--have dusk=2\n {2}“2” does not say yards or inches, metres or centimetres\./m);
    assert.equal(existsSync(out), false);
    assert.deepEqual((await run(pair)).exit, 2);
    assert.match((await run(pair, '--have', 'wheat')).err, /does not say which cloth, and how much of it/);
  });

  it('tells the problems of a document as every command does', async () => {
    const { exit, err } = await run(join(root, 'examples/broken/gap.quilt.json'), '--have', 'oat=1 yd');
    assert.equal(exit, 1);
    assert.match(err, /gap\.quilt\.json: \d+ problem/);
  });
});
