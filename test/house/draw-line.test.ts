// The command that draws: which pictures come of what, in which looks, and what a mistake gives.
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';
import { PNG } from 'pngjs';
import { runCommand } from './run-command.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const gate = join(root, 'examples/orchard-gate.quilt.json');
const folder = mkdtempSync(join(tmpdir(), 'seamstead-draw-'));
after(() => rmSync(folder, { recursive: true, force: true }));

const run = (...argv: readonly string[]) => runCommand(argv);

/** Every colour that a picture fills with. */
const fillsOf = (file: string): ReadonlySet<string> =>
  new Set([...readFileSync(file, 'utf8').matchAll(/fill="(#[0-9a-f]{6})"/g)].map(([, colour]) => colour as string));

describe('seamstead draw', () => {
  it('draws a quilt and each of its blocks in colour, grey and line, as SVG and PNG', async () => {
    const out = join(folder, 'gate');
    const { exit, err } = await run('draw', gate, '--out', out, '--width', '240');
    assert.deepEqual([exit, err], [0, '']);
    const names = ['quilt', 'block-cabin', 'block-fly'].flatMap((name) => [name, `${name}-grey`, `${name}-line`]);
    assert.deepEqual(readdirSync(out).sort(), names.flatMap((name) => [`${name}.png`, `${name}.svg`]).sort());
    for (const name of names) assert.equal(PNG.sync.read(readFileSync(join(out, `${name}.png`))).width, 240);
    assert.match(readFileSync(join(out, 'block-fly.svg'), 'utf8'), /<title>[^<]* in finished\.<\/title>/);
  });

  it('has greys alone in a grey picture and white alone in a line drawing', () => {
    const out = join(folder, 'gate');
    for (const name of ['quilt', 'block-cabin']) {
      assert.ok([...fillsOf(join(out, `${name}.svg`))].some((colour) => !/^#(..)\1\1$/.test(colour)));
      const greys = fillsOf(join(out, `${name}-grey.svg`));
      assert.ok(greys.size > 1);
      for (const colour of greys) assert.match(colour, /^#(..)\1\1$/);
      assert.deepEqual([...fillsOf(join(out, `${name}-line.svg`))], ['#ffffff']);
    }
  });

  it('draws a block of the collection at a size of one’s own, in one look where one is asked for', async () => {
    const out = join(folder, 'spool');
    const { exit } = await run('draw', 'spool', '--out', out, '--as', 'line', '--size', '20', '--unit', 'cm');
    assert.equal(exit, 0);
    assert.deepEqual(readdirSync(out).sort(), ['spool-line.png', 'spool-line.svg']);
    assert.match(
      readFileSync(join(out, 'spool-line.svg'), 'utf8'),
      /<title>Spool, 20 × 20 cm finished\. Lines alone, to colour in\.<\/title>/,
    );
  });

  it('keeps colourings whose names make one file name apart', async () => {
    const file = join(folder, 'two.quilt.json');
    const document = {
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      fabrics: [{ id: 'oat', colour: '#eee' }],
      blocks: [
        {
          id: 'mine',
          from: 'four-patch',
          size: '6',
          colourings: { 'a b': { light: 'oat', dark: 'oat' }, 'A.b': { light: 'oat', dark: 'oat' } },
        },
        { id: 'panel', title: 'Panel', made: 'elsewhere', size: '6' },
      ],
      top: { rows: [[{ block: 'mine', colouring: 'a b' }, { block: 'mine', colouring: 'A.b' }, { block: 'panel' }]] },
    };
    writeFileSync(file, JSON.stringify(document));
    const out = join(folder, 'two');
    const { exit } = await run('draw', file, '--out', out, '--as', 'colour', '--width', '100');
    assert.equal(exit, 0);
    assert.deepEqual(
      readdirSync(out)
        .filter((name) => name.endsWith('.svg'))
        .sort(),
      ['block-mine-a-b.svg', 'block-mine-A-b-2.svg', 'block-panel.svg', 'quilt.svg'].sort(),
    );
    assert.match(readFileSync(join(out, 'block-panel.svg'), 'utf8'), /stroke-dasharray/);
  });

  it('ends with 1 and the problems where the document has some', async () => {
    const { exit, out, err } = await run(
      'draw',
      join(root, 'examples/broken/gap.quilt.json'),
      '--out',
      join(folder, 'no'),
    );
    assert.deepEqual([exit, out], [1, '']);
    assert.match(err, /1 problem/);
  });

  it('ends with 2 and what to do where it is asked wrongly', async () => {
    for (const [argv, says] of [
      [['spol'], /There is no file spol\. Nor has the collection such a block\. Did you mean “spool”\?/],
      [['no/such.quilt.json'], /^There is no file no\/such\.quilt\.json\.\n$/],
      [[gate, '--width', '3'], /--width 3: this is not a whole number of dots from 16 to 8000\./],
      [[gate, '--size', '9'], /--size is for a block of the collection/],
      [['spool', '--size', 'wide'], /--size wide: this is not a size/],
      [['spool', '--as', 'sepia'], /Allowed choices are colour, grey, line/],
    ] as const) {
      const { exit, out, err } = await run('draw', ...argv);
      assert.deepEqual([exit, out], [2, ''], argv.join(' '));
      assert.match(err, says);
    }
  });
});
