// The command line as a person or a script meets it: exit codes, what stands on which stream, and what a mistake gives.

import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable, Writable } from 'node:stream';
import { after, before, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';
import { main } from '#cli';
import { readyBundle } from '../../scripts/ready/bundle.mjs';
import { type Ended, Paper, runCommand as run } from './run-command.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const pair = join(root, 'examples/orchard-pair.quilt.json');
const broken = (name: string): string => join(root, `examples/broken/${name}.quilt.json`);

const folder = mkdtempSync(join(tmpdir(), 'seamstead-line-'));
after(() => rmSync(folder, { recursive: true, force: true }));

/** No end that a maker can bring about shows where in our code it came to pass. */
const saysNoTrace = ({ out, err }: Ended): void =>
  assert.doesNotMatch(out + err, /^\s+at .*[:(]\d+:\d+|node:internal/m);

const files = ['cutting.csv', 'pattern.pdf', 'plan.json', 'quilt.png', 'quilt.svg'];

describe('seamstead plan', () => {
  it('writes its five files, prints the summary and ends with 0', async () => {
    const out = join(folder, 'deep/er/pair');
    const ended = await run(['plan', pair, '--out', out]);
    assert.equal(ended.exit, 0);
    assert.equal(ended.err, '');
    assert.deepEqual(readdirSync(out).sort(), files);
    assert.match(ended.out, /^Orchard Pair\n36 in × 36 in finished/);
    assert.ok(ended.out.includes(`Written to ${out}: `));
  });

  it('gives the same bytes each time', async () => {
    const [one, two] = [join(folder, 'one'), join(folder, 'two')];
    await run(['plan', pair, '--out', one]);
    await run(['plan', pair, '--out', two]);
    for (const file of files) assert.ok(readFileSync(join(one, file)).equals(readFileSync(join(two, file))), file);
  });

  it('writes over the files of an earlier run and leaves the others', async () => {
    const out = join(folder, 'again');
    mkdirSync(out);
    writeFileSync(join(out, 'plan.json'), 'old');
    writeFileSync(join(out, 'mine.txt'), 'mine');
    await run(['plan', pair, '--out', out]);
    assert.equal(JSON.parse(readFileSync(join(out, 'plan.json'), 'utf8')).format, 'seamstead-plan');
    assert.deepEqual(readdirSync(out).sort(), ['cutting.csv', 'mine.txt', ...files.slice(1)]);
  });

  it('prints the plan alone with --json, and it is the plan that it writes', async () => {
    const { exit, out, err } = await run(['plan', pair, '--json']);
    assert.deepEqual([exit, err], [0, '']);
    assert.equal(JSON.parse(out).version, 1);
    const written = join(folder, 'written');
    await run(['plan', pair, '--out', written]);
    assert.equal(out, readFileSync(join(written, 'plan.json'), 'utf8'));
  });

  it('reads standard input for -', async () => {
    const { out } = await run(['plan', pair, '--json']);
    const piped = await run(['plan', '-', '--json'], { stdin: readFileSync(pair) });
    assert.deepEqual(piped, { exit: 0, out, err: '' });
  });

  it('sets the pattern on letter, or on A4 when asked', async () => {
    // 1 in = 72 pt: letter is 8 1/2 × 11 in; A4 is 210 × 297 mm (ISO 216, from memory)
    for (const [paper, width, height] of [
      ['letter', 612, 792],
      ['a4', 595.276, 841.89],
    ] as const) {
      const out = join(folder, paper);
      const wish = paper === 'letter' ? [] : ['--paper', paper];
      assert.equal((await run(['plan', pair, '--out', out, ...wish])).exit, 0);
      const pdf = readFileSync(join(out, 'pattern.pdf'), 'latin1');
      const boxes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)];
      assert.ok(boxes.length > 0);
      for (const [, w, h] of boxes) {
        assert.ok(Math.abs(Number(w) - width) < 0.01 && Math.abs(Number(h) - height) < 0.01, `${paper}: ${w} × ${h}`);
      }
    }
  });

  it('prints handouts, run sheets and chosen chapters beside or in the pattern', async () => {
    const out = join(folder, 'taught');
    const wishes = ['--chapters', 'cover, Glossary', '--handout', 'all', '--run-sheet'];
    assert.equal((await run(['plan', pair, '--out', out, ...wishes])).exit, 0);
    // the pair's blocks to sew, from the document
    const { blocks } = JSON.parse(readFileSync(pair, 'utf8')) as { blocks: { id: string }[] };
    const more = [...blocks.map(({ id }) => `handout-${id}.pdf`), 'run-sheet.pdf'];
    assert.deepEqual(readdirSync(out).sort(), [...files, ...more].sort());
    const pages = (name: string): number =>
      [...readFileSync(join(out, name), 'latin1').matchAll(/\/MediaBox\b/g)].length;
    assert.equal(pages('pattern.pdf'), 2);
  });

  it('draws the pages for the left hand when asked, and says so; tables and pictures stay', async () => {
    const made = async (hand: string) => {
      const out = join(folder, `hand-${hand}`);
      const ended = await run(['plan', pair, '--out', out, '--hand', hand, '--chapters', 'cutting']);
      assert.equal(ended.exit, 0);
      return { said: ended.out, bytes: files.map((name) => readFileSync(join(out, name))) };
    };
    const [right, left] = [await made('right'), await made('left')];
    assert.match(left.said, /^The pages are drawn for the left hand\.$/m);
    assert.doesNotMatch(right.said, /hand\.$/m);
    const differ = files.filter((_, i) => !left.bytes[i]?.equals(right.bytes[i] as Buffer));
    assert.deepEqual(differ, ['pattern.pdf']);
  });

  it('writes the plan and the cut list of each size that is asked for', async () => {
    const out = join(folder, 'sized');
    const sized = join(root, 'examples/bramble-lane.quilt.json');
    const { sizes } = JSON.parse(readFileSync(sized, 'utf8')) as { sizes: { id: string }[] };
    const [first] = sizes;
    assert.ok(first !== undefined && sizes.length > 1);
    const ended = await run(['plan', sized, '--out', out, '--sizes', `${first.id},${first.id}`, '--chapters', 'cover']);
    assert.deepEqual([ended.exit, ended.err], [0, '']);
    assert.deepEqual(readdirSync(out).sort(), [...files, `cutting-${first.id}.csv`, `plan-${first.id}.json`].sort());
  });

  it('shows progress to a person, and to nobody else', async () => {
    const watched = await run(['plan', pair, '--json'], { isWatched: true });
    assert.match(watched.err, /Planning/);
    // what it showed is wiped when it ends
    assert.ok(watched.err.endsWith('\r\u001b[2K'));
    assert.equal((await run(['plan', pair, '--json'])).err, '');
  });

  it('tells every problem with its place, what was found and how to mend it, on standard error, and ends with 1', async () => {
    const out = join(folder, 'refused');
    const ended = await run(['plan', broken('many-problems-at-once'), '--out', out]);
    assert.equal(ended.exit, 1);
    assert.equal(ended.out, '');
    assert.match(ended.err, /many-problems-at-once\.quilt\.json: \d+ problems\n/);
    for (const [where, what, mend] of [
      ['/fabrics/0/colour', '"oatmeal" is not a colour.', 'Write it as # with six digits of 0-9 and a-f: "#9c3f2c".'],
      ['/top/rows/0/0/block', 'There is no block “cabbin”.', 'Did you mean “cabin”?'],
    ]) {
      assert.ok(ended.err.includes(`  ${where}\n    ${what}\n    ${mend}\n`), ended.err);
    }
    saysNoTrace(ended);
    assert.equal(existsSync(out), false);
  });

  it('says both figures where two sizes disagree', async () => {
    const { err } = await run(['plan', broken('size-disagrees'), '--json']);
    // by hand: a centre of 1 and one round of 1 make 3 in, the document states 3 1/2
    assert.match(err, /makes 3 × 3 in/);
    assert.match(err, /states 3½ × 3½ in/);
  });

  it('prints no plan of a refused document', async () => {
    const ended = await run(['plan', '-', '--json'], { stdin: '{' });
    assert.deepEqual([ended.exit, ended.out], [1, '']);
    assert.match(ended.err, /^standard input: 1 problem\n {2}line 1, column 2\n/);
  });
});

describe('seamstead check', () => {
  it('ends with 0 when all documents are sound, and says so of each', async () => {
    const { exit, out, err } = await run(['check', pair, pair]);
    assert.deepEqual({ exit, out, err }, { exit: 0, out: `${pair}: no problems\n`.repeat(2), err: '' });
  });

  it('ends with 1 when one has problems, and still looks at the others', async () => {
    const { exit, out } = await run(['check', broken('gap'), pair]);
    assert.equal(exit, 1);
    assert.match(out, /gap\.quilt\.json: 1 problem\n {2}\/blocks\/1\n/);
    assert.ok(out.endsWith(`${pair}: no problems\n`));
  });

  it('counts notes and warnings as no problem', async () => {
    const document = JSON.parse(readFileSync(pair, 'utf8'));
    document.blocks.push({ ...document.blocks[0], id: 'spare' });
    const { exit, out } = await run(['check', '-'], { stdin: JSON.stringify(document) });
    assert.equal(exit, 0);
    assert.match(out, /^standard input: no problems\n {2}Warning \/blocks\/2: Block “spare”/);
  });

  it('writes nothing', async () => {
    const before = readdirSync(folder);
    await run(['check', pair]);
    assert.deepEqual(readdirSync(folder), before);
  });
});

describe('seamstead blocks', () => {
  it('lists ids that a document may name', async () => {
    const { exit, out, err } = await run(['blocks']);
    assert.deepEqual([exit, err], [0, '']);
    const ids = out.split('\n').flatMap((line) => line.match(/^(\S+) {2}/)?.slice(1) ?? []);
    assert.ok(ids.length > 0);
    const document = JSON.parse(readFileSync(pair, 'utf8'));
    const cloths = { light: 'cream', medium: 'wheat', dark: 'dusk', accent: 'russet' };
    document.blocks = ids.map((id) => ({ id, from: id, size: '12', colourings: { default: cloths } }));
    document.top.rows = ids.map((id) => [{ block: id }]);
    const checked = await run(['check', '-'], { stdin: JSON.stringify(document) });
    assert.deepEqual([checked.exit, checked.err], [0, ''], checked.out);
  });
});

describe('a file that is not text', () => {
  const notText = join(folder, 'not-text.quilt.json');
  writeFileSync(notText, Buffer.from([0x7b, 0xff, 0xfe, 0x7d]));

  it('is a document with a problem, and the others are still looked at', async () => {
    const { exit, out } = await run(['check', notText, pair]);
    assert.equal(exit, 1);
    assert.match(out, /is not text in UTF-8\. Save the document as UTF-8/);
    assert.match(out, /orchard-pair\.quilt\.json: no problems/);
    const planned = await run(['plan', notText]);
    assert.deepEqual([planned.exit, planned.out], [1, '']);
  });
});

describe('wrong use', () => {
  const under = join(folder, 'a-file');
  writeFileSync(under, '');

  const mistakes: readonly (readonly [what: string, argv: readonly string[], says: RegExp])[] = [
    ['a missing file', ['plan', join(folder, 'none.json')], /^There is no file .*none\.json\.\n$/],
    ['an empty name', ['plan', ''], /^The name of the document is empty\./],
    ['a folder as file', ['plan', folder], /is a folder\. Name the document in it\.\n$/],
    ['a file as folder', ['plan', join(under, 'x.json')], /a-file.* cannot be read \(ENOTDIR\)/],
    ['a name with a zero byte', ['plan', 'a\0b'], /cannot be read/],
    ['an empty folder name', ['plan', pair, '--out', ''], /^The name of the folder is empty\./],
    ['a folder that cannot be made', ['plan', pair, '--out', join(under, 'x')], /Name another folder with --out\.\n$/],
    ['an unknown option', ['plan', pair, '--colour'], /unknown option '--colour'/],
    ['an unknown paper', ['plan', pair, '--paper', 'a3'], /'a3' is invalid\. Allowed choices are letter, a4\./],
    ['an unknown hand', ['plan', pair, '--hand', 'both'], /'both' is invalid\. Allowed choices are right, left\./],
    ['a hand that would be ignored', ['plan', pair, '--json', '--hand', 'left'], /cannot be used with/],
    [
      'an unknown chapter',
      ['plan', pair, '--chapters', 'cover,index'],
      /There is no chapter index\. Allowed are all, or some of cover, quilt, cloth, .*run-sheet, with commas/,
    ],
    ['the head of a handout as a chapter', ['plan', pair, '--chapters', 'handout'], /There is no chapter handout\./],
    ['no chapter', ['plan', pair, '--chapters', ' , '], /It names no chapter\./],
    [
      'a handout of an unknown block',
      ['plan', pair, '--handout', 'attic'],
      /^--handout: this quilt has no block to sew attic\. It has \w+(, \w+)*\.\n$/,
    ],
    [
      'a handout of nothing',
      ['plan', pair, '--handout', ''],
      /It names none\. Write ids with commas between, or all\./,
    ],
    [
      'a size of a quilt in one size',
      ['plan', pair, '--sizes', 'baby'],
      /^--sizes: this quilt has no size baby\. It has none at all\.\n$/,
    ],
    ['handouts that would be ignored', ['plan', pair, '--json', '--run-sheet'], /cannot be used with/],
    ['an option without its value', ['plan', pair, '--out'], /argument missing/],
    ['a folder that would be ignored', ['plan', pair, '--json', '--out', folder], /cannot be used with/],
    ['two documents at once', ['plan', pair, pair], /too many arguments/],
    ['no document', ['check'], /missing required argument/],
    ['standard input twice', ['check', '-', '-'], /can be read once only/],
    ['an unknown command', ['plot', pair], /unknown command 'plot'/],
    ['no command', [], /Usage: seamstead/],
  ];

  for (const [what, argv, says] of mistakes) {
    it(`${what} ends with 2 and a word on standard error`, async () => {
      const ended = await run(argv);
      assert.deepEqual([ended.exit, ended.out], [2, '']);
      assert.match(ended.err, says);
      saysNoTrace(ended);
    });
  }

  it('a pipe that breaks ends with 2 and a word', async () => {
    const stdin = new Readable({ read: () => stdin.destroy(Object.assign(new Error('gone'), { code: 'EIO' })) });
    const [stdout, stderr] = [new Paper(false), new Paper(false)];
    assert.equal(await main({ argv: ['check', '-'], stdin, stdout, stderr }), 2);
    assert.equal(stderr.text, 'standard input cannot be read (EIO).\n');
  });

  it('output that finds no room ends with 2 and a word', async () => {
    const stdout = new Writable({
      write: (_chunk, _encoding, done) => done(Object.assign(new Error(), { code: 'ENOSPC' })),
    });
    stdout.on('error', () => {});
    const stderr = new Paper(false);
    const exit = await main({ argv: ['plan', pair, '--json'], stdin: Readable.from([]), stdout, stderr });
    assert.deepEqual(
      [exit, stderr.text],
      [2, 'The output cannot be written (ENOSPC). Send it elsewhere, or make room.\n'],
    );
  });
});

describe('help', () => {
  it('stands on standard output and ends with 0', async () => {
    for (const argv of [['--help'], ['plan', '--help'], ['help', 'check']]) {
      const { exit, out, err } = await run(argv);
      assert.deepEqual([exit, err], [0, '']);
      assert.match(out, /^Usage: seamstead/);
    }
  });
});

describe('the command as it is installed', () => {
  const bin = join(root, 'bin/seamstead.mjs');
  // what it says while it builds is told in command.test.ts
  before(() => readyBundle(root, () => undefined));

  it('ends with 0, 1 or 2 and reads a pipe', () => {
    const call = (args: readonly string[], input = '') =>
      spawnSync(process.execPath, [bin, ...args], { cwd: folder, input, encoding: 'utf8' });
    const sound = call(['plan', '-', '--json'], readFileSync(pair, 'utf8'));
    assert.deepEqual([sound.status, sound.stderr], [0, '']);
    assert.equal(JSON.parse(sound.stdout).title, 'Orchard Pair');
    assert.equal(call(['check', broken('overlap')]).status, 1);
    assert.equal(call(['check', 'none']).status, 2);
  });

  it('writes to out/NAME where it is called when no folder is named', () => {
    assert.equal(spawnSync(process.execPath, [bin, 'plan', pair], { cwd: folder }).status, 0);
    assert.deepEqual(readdirSync(join(folder, 'out/orchard-pair')).sort(), files);
  });

  it('is quiet when its reader has seen enough', async () => {
    for (const args of [
      ['plan', pair, '--json'],
      ['check', ...Array<string>(40).fill(broken('many-problems-at-once'))],
    ]) {
      const child = spawn(process.execPath, [bin, ...args], { cwd: folder });
      child.stdout.destroy();
      const said = (await child.stderr.setEncoding('utf8').toArray()).join('');
      assert.equal(said, '');
    }
  });
});
