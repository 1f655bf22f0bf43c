import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planSize } from '#craft';
import { documentOf, planOf } from '#paper/specimen';
import { patternPages } from './pattern.ts';

const square = (id: string) => ({
  id,
  size: '4',
  patches: {
    grid: [2, 1],
    list: [
      {
        points: [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
        tone: 'oat',
      },
      {
        points: [
          [1, 0],
          [2, 0],
          [2, 1],
          [1, 1],
        ],
        tone: 'brick',
      },
    ],
  },
});
const rowsOf = (down: number, across: number) =>
  Array.from({ length: down }, () => Array.from({ length: across }, () => ({ block: 'two' })));

const plan = planOf(
  documentOf({
    blocks: [square('two')],
    top: { set: 'straight', rows: rowsOf(4, 5) },
    finish: { binding: { fabric: 'bark' } },
    sizes: [
      {
        id: 'small',
        title: 'Small',
        top: { set: 'straight', rows: rowsOf(2, 2), borders: [{ width: 2, fabric: 'bark' }] },
      },
    ],
    colourways: [{ id: 'sea', title: 'Sea', fabrics: { oat: { name: 'Foam', colour: '#e8f0f0' } } }],
  }),
);
const sized = planSize({ quilt: plan.quilt, id: 'small' });
assert.ok(sized.ok);
const small = sized.value;
const { facts } = patternPages(plan, { sizes: [{ title: 'Small', plan: small }] });

test('one table of cloth has the amounts of every size, each as if it were planned alone', () => {
  const alone = patternPages(small).facts.cloths;
  const own = patternPages(plan).facts.cloths;
  for (const cloth of facts.cloths) {
    assert.equal(cloth.buy, own.find(({ name }) => name === cloth.name)?.buy ?? '–', cloth.name);
    assert.deepEqual(cloth.others, [alone.find(({ name }) => name === cloth.name)?.buy ?? '–'], cloth.name);
  }
});

test('blocks stand once, with as many as each size takes', () => {
  // by hand: 4 × 5 and 2 × 2 blocks of two pieces joined by one seam
  const [block, ...more] = facts.blocks;
  assert.equal(more.length, 0);
  assert.equal(block?.make, 'Make 20 · 4, about 1 minute of sewing each');
  assert.deepEqual(
    block?.pieces.map(({ count }) => count),
    ['20 · 4', '20 · 4'],
  );
  assert.equal(block?.steps[0]?.make, 'make 20 · 4');
});

test('a cloth has one letter in all sizes', () => {
  const letters = new Map(facts.cloths.map(({ letter, name }) => [name, letter]));
  const others = facts.sizes.flatMap(({ cutting }) => cutting);
  assert.ok(others.length > 0);
  for (const { letter, name } of others) assert.equal(letters.get(name), letter, name);
});

test('each size has a chapter of cutting, of its top and of finishing, named by its measure', () => {
  // by hand: 2 blocks of 4 in and two borders of 2 in: 12 in each way
  assert.deepEqual(
    facts.sizes.map(({ title }) => title),
    ['Small, 12\u00a0×\u00a012\u00a0in'],
  );
  assert.ok(facts.sizes.every(({ cutting, top, finish }) => cutting.length > 0 && top !== null && finish.length > 0));
});

test('every size has labels for its own piles, and the piece key names the pile of each', () => {
  const sheets = patternPages(plan, { sizes: [{ title: 'Small', plan: small }], chapters: ['labels', 'pieces'] }).facts;
  assert.deepEqual(
    sheets.labels.map(({ title }) => title),
    ['20\u00a0×\u00a016\u00a0in', 'Small, 12\u00a0×\u00a012\u00a0in'],
  );
  [plan, small].forEach((own, i) => {
    assert.deepEqual(
      sheets.labels[i]?.labels.map(({ cut }) => cut.match(/^\d+/)?.[0]),
      own.fabrics.flatMap(({ pieces }) => pieces.map(({ count }) => String(count))),
    );
  });
  // by hand: one piece of oat a block, 20 blocks and 4
  const [first] = sheets.pieceKey[0]?.pieces ?? [];
  assert.match(first?.cloths[0] ?? '', /^Oat: 20\u00a0of\u00a0B\d+ · 4\u00a0of\u00a0B\d+$/);
  assert.equal(first?.count, '20 · 4 in all');
  assert.equal(patternPages(plan, { chapters: ['labels'] }).facts.labels[0]?.title, null);
});

test('what holds for every size alike is told once', () => {
  const all = [facts.finish, ...facts.sizes.map(({ finish }) => finish)].flat();
  const alike = all.map(({ heading, lines }) => [heading, ...lines].join());
  assert.equal(new Set(alike).size, alike.length);
  assert.ok(facts.sizes.every(({ finish }) => finish.every(({ heading }) => heading !== 'Layering and quilting')));
});

test('colourways stand beside the quilt as drawn, letter by letter', () => {
  assert.deepEqual(
    facts.colourways?.pictures.map(({ title }) => title),
    ['As drawn', 'Sea'],
  );
  const oat = facts.colourways?.rows.find(({ cloths }) => cloths[1]?.name === 'Foam');
  assert.equal(oat?.letter, facts.cloths.find(({ name }) => name === oat?.cloths[0]?.name)?.letter);
});
