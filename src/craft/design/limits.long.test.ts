import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { parseQuilt, readQuilt } from '#craft/design';
import { limits } from '#craft/limits';

const example = JSON.parse(
  readFileSync(new URL('../../../examples/orchard-gate.quilt.json', import.meta.url), 'utf8'),
) as Record<string, unknown> & { blocks: object[]; top: object };

/** Our own figure: no refusal may take longer, on the slowest machine that tests run on. */
const timeoutMs = 2000;

const refusal = (document: unknown, read: (document: never) => ReturnType<typeof readQuilt> = readQuilt): string => {
  // the time of this program alone, however busy the machine is
  const start = process.cpuUsage();
  const quilt = read(document as never);
  const tookMs = process.cpuUsage(start).user / 1000;
  assert.ok(tookMs < timeoutMs, `${Math.round(tookMs)} ms`);
  assert.ok(!quilt.ok);
  const [first] = quilt.problems;
  return `${first?.code} ${first?.path}${first?.code === 'design/too-many' ? ` ${first.what} ${first.found}` : ''}`;
};

const times = <T>(count: number, one: T): T[] => Array.from({ length: count }, () => one);

test('a million blocks are refused by their number', () => {
  assert.equal(refusal({ ...example, blocks: times(1_000_000, {}) }), 'design/too-many /blocks blocks 1000000');
});

test('a million cells are refused, in one row, in rows, and as text', () => {
  const top = (rows: unknown) => ({ ...example, top: { set: 'straight', rows } });
  const cell = { block: 'cabin' };
  assert.equal(refusal(top([times(1_000_000, cell)])), 'design/too-many /top/rows/0 columns 1000000');
  assert.equal(refusal(top(times(1_000_000, [cell]))), 'design/too-many /top/rows rows 1000000');
  assert.match(refusal(top(times(300, times(300, cell)))), /^design\/too-many \/top\/rows cells /);
  const text = JSON.stringify(top(times(1000, times(1000, cell))));
  assert.equal(refusal(text, parseQuilt), 'design/too-long ');
  assert.match(
    refusal(JSON.stringify(top(times(400, times(400, cell)))), parseQuilt),
    /^design\/too-many \/top\/rows rows 400/,
  );
});

test('each list has its limit, and one below it is not refused for its length', () => {
  const [cabin, fly] = example.blocks as [object, { patches: { list: object[] } }];
  const patches = (count: number) => ({
    ...example,
    blocks: [cabin, { ...fly, patches: { ...fly.patches, list: times(count, fly.patches.list[0]) } }],
  });
  assert.equal(refusal(patches(limits.patches + 1)), 'design/too-many /blocks/1/patches/list patches 2001');
  assert.ok(readQuilt(patches(limits.patches)).ok);
  const rounds = (count: number) => ({
    ...example,
    blocks: [
      {
        id: 'cabin',
        recipe: {
          kind: 'log-cabin',
          centre: 1,
          centreTone: 'oat',
          rounds: times(count, { width: 1, tones: times(4, 'oat') }),
        },
      },
    ],
    top: { rows: [[{ block: 'cabin' }]] },
  });
  assert.equal(refusal(rounds(limits.rounds + 1)), 'design/too-many /blocks/0/recipe/rounds rounds 101');
  assert.ok(readQuilt(rounds(limits.rounds)).ok);
});

test('nesting is refused by its depth, in text and in a value, also when it never ends', () => {
  assert.match(refusal('['.repeat(1_000_000), parseQuilt), /^design\/too-deep /);
  assert.match(refusal(`${'{"top":'.repeat(100_000)}1${'}'.repeat(100_000)}`, parseQuilt), /^design\/too-deep \/top/);
  const endless: { top?: unknown } = {};
  endless.top = endless;
  assert.match(refusal(endless), /^design\/too-deep \/top/);
});

test('one small value shared a billion times is refused by the number of values', () => {
  let nest: unknown[] = ['lol'];
  for (let i = 0; i < 9; i++) nest = times(10, nest);
  assert.equal(refusal({ ...example, extras: nest }), 'design/too-many-values ');
});

test('a text too long is refused before it is parsed', () => {
  assert.equal(refusal(' '.repeat(limits.characters + 1), parseQuilt), 'design/too-long ');
});

test('a document of eight million characters of one text is read or refused quickly', () => {
  const text = JSON.stringify({ ...example, notes: 'x'.repeat(limits.characters - 100_000) });
  assert.equal(refusal(text, parseQuilt), 'design/text-too-long /notes');
});

test('forty thousand cells with a fault in each are refused quickly', () => {
  const rows = times(200, times(200, { block: 'cabin', turn: 45, colour: 'red' }));
  assert.equal(refusal({ ...example, top: { rows } }), 'design/not-one-of /top/rows/0/0/turn');
});

test('outlines of many corners that cross again and again are refused quickly', () => {
  const points = Array.from({ length: 100 }, (_, i) => [i % 2 === 0 ? i / 50 : 3 - i / 50, i % 3]);
  const list = times(2000, { points, tone: 'oat' });
  const document = {
    ...example,
    blocks: [...example.blocks, { id: 'wild', size: 9, patches: { grid: [3, 3], list } }],
  };
  assert.match(refusal(document), /^design\/(?:crosses-itself|corner-twice) \/blocks\/2\/patches\/list\/0/);
});

test('a top of more pieces than anyone sews is refused by their number', () => {
  const [cabin, fly] = example.blocks as [object, { patches: { list: object[] } }];
  const list = times(2000, fly.patches.list[0]);
  const blocks = [cabin, { ...fly, patches: { ...fly.patches, list } }];
  const rows = times(16, times(16, { block: 'fly' }));
  assert.equal(refusal({ ...example, blocks, top: { rows } }), 'design/too-many /top/rows pieces 512000');
});

test('a top may be a hundred metres each way and not more', () => {
  const bordered = (width: number, unit: string) => ({
    format: 'seamstead-quilt',
    version: 1,
    unit,
    fabrics: [{ id: 'oat', colour: '#efe6d0' }],
    blocks: [
      {
        id: 'one',
        recipe: { kind: 'log-cabin', centre: 1, centreTone: 'oat', rounds: [{ width: 1, tones: ['oat'] }] },
      },
    ],
    top: {
      rows: [[{ block: 'one' }, { block: 'one', turn: 90 }]],
      sashing: { width: { across: 3, down: 5 }, fabric: 'oat' },
      borders: [{ width, fabric: 'oat' }],
    },
  });
  // derived by hand: the log lies left, so one block is 2 wide and 1 high, and turned 1 wide and 2 high: they do not fit one row
  assert.equal(refusal(bordered(1, 'in')), 'design/sizes-differ /top/rows/0/1');
  const square = (width: number, unit: string) => {
    const document = bordered(width, unit);
    return { ...document, top: { ...document.top, rows: [[{ block: 'one' }, { block: 'one' }]] } };
  };
  // derived by hand: across 2 + 3 + 2 and two borders
  assert.ok(readQuilt(square(1996.5, 'in')).ok);
  assert.equal(refusal(square(1996.6, 'in')), 'design/top-too-large /top');
  assert.ok(readQuilt(square(4996.5, 'cm')).ok);
  assert.equal(refusal(square(4996.6, 'cm')), 'design/top-too-large /top');
});
