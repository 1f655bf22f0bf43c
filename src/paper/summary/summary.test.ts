import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { documentOf, planOf, specimenDocument } from '#paper/specimen';
import { columns, wrapped } from './lines.ts';
import { summaryText } from './summary.ts';

test('the summary names size, cloths, cuts, steps and finish', () => {
  const text = summaryText(planOf(specimenDocument));
  // by hand: the top is 11 × 11; overage 4 on each side makes a backing of 19; the cabin has five pieces, so four seams
  for (const words of [
    '11 in × 11 in finished',
    'Brick',
    'A1  4 of 1⅞ in × 1⅞ in',
    '2 × Log cabin: 4 steps',
    '1 border',
    'Backing 19 in × 19 in, 1 panel',
  ]) {
    assert.ok(text.includes(words), `${words} is missing from\n${text}`);
  }
});

test('no line is wider than 80, whatever a maker writes', () => {
  const title = `${'Long '.repeat(20)}${'unbroken'.repeat(12)}`;
  const fabrics = specimenDocument.fabrics.map((fabric) => ({ ...fabric, name: title }));
  for (const line of summaryText(planOf(documentOf({ title, fabrics }))).split('\n')) {
    assert.ok([...line].length <= 80, line);
  }
});

test('signs that steer a terminal are left out', () => {
  assert.deepEqual(wrapped('red \u001b[31m and back \u202e', ''), ['red [31m and back']);
});

test('columns line up, and the last wraps under itself', () => {
  assert.deepEqual(
    columns([
      ['a', 'x'],
      ['bbb', 'y'],
    ]),
    ['  a    x', '  bbb  y'],
  );
  const [first, second] = columns([['a', 'word '.repeat(20).trim()]]);
  assert.ok(first?.startsWith('  a  word'));
  assert.ok(second?.startsWith('     word'));
});

test('where the other columns leave little room the last begins beside them, or below, and no line is wider than 80', () => {
  const words = 'word '.repeat(20).trim();
  const [first, second] = columns([['a'.repeat(50), words]]);
  assert.ok(first?.startsWith(`  ${'a'.repeat(50)}  word word`), first);
  assert.ok(second?.startsWith(`${' '.repeat(54)}word`), second);
  const [alone, below] = columns([['a'.repeat(70), words]]);
  assert.deepEqual([alone, below], [`  ${'a'.repeat(70)}`, `${' '.repeat(56)}word word word word word`]);
  assert.deepEqual(columns([['a'.repeat(70), '']]), [`  ${'a'.repeat(70)}  `]);
  for (const line of [first, second, alone, below]) assert.ok([...(line ?? '')].length <= 80);
});

test('a square that is cut apart into triangles says so', () => {
  // by hand: the brick triangles of the shoo fly are half-squares with legs of 1 in
  const lines = summaryText(planOf(specimenDocument)).split('\n');
  const line = lines.find((one) => one.startsWith('  A1  '));
  assert.match(line ?? '', /Shoo fly B, cut once corner to corner$/);
});

test('sections are counted as such, a pieced border and its spacers as one, a bias binding by its square', () => {
  const text = summaryText(
    planOf(
      documentOf({
        top: {
          set: 'sections',
          sections: {
            down: [
              { across: [{ block: 'cabin' }, { block: 'fly' }] },
              { across: [{ block: 'fly' }, { fill: 'bark' }] },
            ],
          },
          borders: [{ pieced: { block: 'fly', spacer: 'oat' } }, { width: '2 1/2', fabric: 'bark' }],
        },
        finish: { binding: { fabric: 'bark', grain: 'bias' }, sleeve: { fabric: 'oat' } },
      }),
    ),
  );
  assert.match(text, /The top: 2 sections, 2 borders, \d+ steps/);
  assert.match(text, /Binding 2½ in wide on the bias from 1 square of \d+ in, \d+ in needed/);
  assert.match(text, /Hanging sleeve cut \d+½? in × 8½ in/);
});

test('a size that no ruler has is given to the nearest mark; prices add up, and what has none is told', () => {
  const fabrics = specimenDocument.fabrics.map((fabric) => (fabric.id === 'oat' ? fabric : { ...fabric, price: 8 }));
  const rows = [[{ block: 'fly' }]];
  const plan = planOf(documentOf({ fabrics, currency: 'EUR', top: { set: 'on-point', rows, settingFabric: 'bark' } }));
  const text = summaryText(plan);
  // by hand: a block of 3 on point is 3√2 = 4.243 wide, nearest to 4¼
  assert.match(text, /^about 4¼ in × about 4¼ in finished/m);
  assert.match(text, /All cloth as it is bought: \d+\.\d\d EUR, without cloth [A-C], which has no\s+price here\./);
});

test('what would change a purchase stands under the cloths, where somebody asked', () => {
  const plan = planOf(specimenDocument);
  assert.doesNotMatch(summaryText(plan), /What would change it/);
  const text = summaryText(plan, [
    {
      code: 'shopping/no-turning',
      fabric: 'oat',
      before: { amount: 0.25, unit: 'yd', proven: true },
      after: { amount: 0.375, unit: 'yd', proven: true },
      difference: 0.125,
    },
  ]);
  assert.match(text, /What would change it:\n {2}[A-C] {2}with no piece turned it takes ⅛ yd more\n/);
});

/** One block of one cloth, four squares cut 2 1/2 in to a row. */
const squares = (fabric: object, more: object = {}): QuiltPlan =>
  planOf({
    ...specimenDocument,
    fabrics: [{ id: 'oat', colour: '#efe6d0', ...fabric }],
    blocks: [{ id: 'four', size: '4', patches: { grid: [1, 1], list: [{ points: corners, tone: 'oat' }] } }],
    top: { set: 'straight', rows: [[{ block: 'four' }, { block: 'four' }]] },
    finish: {},
    ...more,
  });

const corners = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

test('what is proven of a cloth is told as what was kept least of it', () => {
  const provenIn = (fabric: object): string | undefined =>
    /No way of laying out these pieces (.*?): that is\s+proven\./s
      .exec(summaryText(squares(fabric)))?.[1]
      ?.replaceAll(/\s+/g, ' ');
  // by hand: two squares cut 4 1/2 in; one sheet of 10 × 10 holds both, and costs less than one of 5 × 5
  const sheets = [
    { size: ['10', '10'], price: 2 },
    { size: ['5', '5'], price: 3 },
  ];
  assert.equal(provenIn({ bought: { sheets } }), 'costs less in any cloth');
  assert.equal(
    provenIn({ bought: { sheets: sheets.map(({ size }) => ({ size })) } }),
    'takes fewer sheets of any cloth',
  );
  assert.equal(provenIn({ bought: { sheet: ['5', '5'] } }), 'does with less of any cloth');
  const lengths = ['1/4 yd', '1/2 yd'];
  assert.equal(provenIn({ bought: { lengths } }), 'does with less of any cloth');
  assert.equal(provenIn({ bought: { lengths }, price: 8 }), 'costs less in any cloth');
});

test('what is cut on the fold or of ends at hand stands in the way of cutting, and none is bought of a cloth that ends hold', () => {
  // by hand: two squares cut 4 1/2 in are one strip, a pair on the fold: the strip, and a stroke beside the square
  const folded = summaryText(squares({}, { cutting: { fold: true } }));
  assert.match(folded, /A: on the fold 1 strip 4½ in; 1 ruler setting, 2 strokes/);
  const ends = summaryText(squares({ ends: [{ size: ['10', '5'] }] }));
  assert.match(ends, /A {2}none {2}oat/);
  assert.match(ends, /A: from ends at hand 1 strip 4½ in; 1 ruler setting, 3 strokes/);
});

test('one of a thing is one, and a quilt of which nothing is cut says so', () => {
  const text = summaryText(squares({}));
  assert.match(text, /^8 in × 4 in finished · 1 seam · about \d+ minutes · beginner$/m);
  const binding = summaryText(squares({}, { finish: { binding: { fabric: 'oat' } } }));
  // by hand: 2 · (8 + 4) in and the tails are less than 40 in
  assert.match(binding, /Binding 1 strip of 2½ in,/);
  const elsewhere = summaryText(squares({}, { blocks: [{ id: 'four', size: '4', made: 'elsewhere' }] }));
  assert.match(elsewhere, /CLOTH TO BUY\n {2}None: nothing of this quilt is cut here\./);
});
