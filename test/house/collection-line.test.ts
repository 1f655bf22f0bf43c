// The commands that need no document: the collection as a list and as pictures, and ruler-friendly sizes.
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, describe, it } from 'node:test';
import { PNG } from 'pngjs';
import { runCommand } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'seamstead-collection-'));
after(() => rmSync(folder, { recursive: true, force: true }));

const run = (...argv: readonly string[]) => runCommand(argv);

describe('seamstead blocks', () => {
  it('lists every block with its names, patches and joining, and writes nothing', async () => {
    const { exit, out, err } = await run('blocks');
    assert.deepEqual([exit, err], [0, '']);
    // by hand: 30 blocks, two lines each
    assert.equal(out.trimEnd().split('\n').length, 60);
    assert.match(out, /^drunkards-path .* 2 patches, curved seams$/m);
    assert.match(
      out,
      /^churn-dash +Churn Dash, also Monkey Wrench, Hole in the Barn Door +17 patches, straight seams$/m,
    );
    assert.match(out, /^lemoyne-star .* 16 patches, seams set in$/m);
  });

  it('writes a picture of each block as SVG and PNG where it is asked to', async () => {
    const { exit, out } = await run('blocks', '--out', join(folder, 'pictures'));
    assert.equal(exit, 0);
    assert.match(out, /Written to .*: a picture of each block, as SVG and PNG/);
    const files = readdirSync(join(folder, 'pictures'));
    assert.equal(files.length, 60);
    assert.match(readFileSync(join(folder, 'pictures/spool.svg'), 'utf8'), /^<svg .*<title>Spool<\/title>/);
    const { width, height } = PNG.sync.read(readFileSync(join(folder, 'pictures/spool.png')));
    assert.deepEqual([width, height], [720, 720]);
  });
});

describe('seamstead sizes', () => {
  it('names the sizes near the asked one, and what is off there', async () => {
    const { exit, out, err } = await run('sizes', 'nine-patch', '--near', '8');
    assert.deepEqual([exit, err], [0, '']);
    assert.match(out, /^Nine Patch, finished, near 8 × 8 in \(seam ¼ in, ruler marked every ⅛ in\)$/m);
    // by hand: 8/3 + 1/2 is 3 1/6, cut 3 1/8; three of them are 1/8 short; thirds fit at multiples of 3/8
    assert.match(out, /square of exactly 3 1\/6 × 3 1\/6 in, on the marks 3⅛ × 3⅛ in/);
    assert.match(out, /adds up to ⅛ in too small across and ⅛ in too small down\./);
    assert.match(out, /^ {2}7⅞ × 7⅞ in {3}\(nearest\)$/m);
  });

  it('reckons in centimetres, and takes a size in another unit', async () => {
    const { out } = await run('sizes', 'four-patch', '--near', '200 mm', '--unit', 'cm');
    assert.match(out, /^At 20 × 20 cm every square and rectangle is cut on a mark\.$/m);
  });

  it('takes a block of a document with its own seam and ruler, without its frame', async () => {
    const file = join(folder, 'own.quilt.json');
    const document = {
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      ruler: '1/4',
      fabrics: [{ id: 'oat', colour: '#eee' }],
      blocks: [
        { id: 'mine', from: 'nine-patch', size: '9', frame: [{ width: '1', fabric: 'oat' }] },
        { id: 'panel', made: 'elsewhere', size: '9' },
      ].map((block) => ({ ...block, colourings: { default: { light: 'oat', dark: 'oat' } } })),
      top: { rows: [[{ block: 'mine' }]] },
    };
    writeFileSync(file, JSON.stringify(document));
    const { exit, out } = await run('sizes', 'mine', '--near', '9', '--file', file);
    assert.equal(exit, 0);
    assert.match(out, /^Nine Patch, finished, near 9 × 9 in \(seam ¼ in, ruler marked every ¼ in\)$/m);
    // by hand: thirds on quarters
    assert.match(out, /^ {2}9¾ × 9¾ in$/m);
    const panel = await run('sizes', 'panel', '--near', '9', '--file', file);
    assert.deepEqual([panel.exit, panel.err], [2, 'Block “panel” is made elsewhere: nothing is cut for it here.\n']);
    const unknown = await run('sizes', 'mien', '--near', '9', '--file', file);
    assert.deepEqual([unknown.exit, unknown.out], [2, '']);
    assert.match(unknown.err, /has no block “mien”\. Did you mean “mine”\?/);
  });

  it('ends with 2 and a word where it is asked wrongly', async () => {
    for (const argv of [
      ['sizes', 'nine-pach', '--near', '8'],
      ['sizes', 'nine-patch', '--near', 'wide'],
      ['sizes', 'nine-patch', '--near', '0'],
      ['sizes', 'nine-patch'],
      ['sizes', 'nine-patch', '--near', '8', '--unit', 'miles'],
      ['sizes', 'nine-patch', '--near', '8', '--unit', 'cm', '--file', 'x.json'],
    ]) {
      const { exit, out, err } = await run(...argv);
      assert.deepEqual([exit, out], [2, ''], argv.join(' '));
      assert.ok(err.length > 20);
    }
  });

  it('ends with 1 and the problems where the document has some', async () => {
    const file = join(folder, 'broken.quilt.json');
    writeFileSync(file, '{}');
    const { exit, err } = await run('sizes', 'mine', '--near', '9', '--file', file);
    assert.equal(exit, 1);
    assert.match(err, /problem/);
  });
});
