import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor, signOf } from '#paper/cloth';
import { documentOf, planOf } from '#paper/specimen';
import { runSheets } from './run-sheet.ts';

const nine = { id: 'nine', from: 'nine-patch', size: '6', colourings: { default: { light: 'oat', dark: 'bark' } } };
const plan = planOf(documentOf({ blocks: [nine], top: { rows: [[{ block: 'nine' }, { block: 'nine' }]] } }));
const [sheet] = runSheets({ plan, signs: clothSignsFor(plan), album: new Map() });

test('a run sheet has a line for each step, and something new to say at each', () => {
  assert.ok(sheet !== undefined);
  assert.equal(sheet.rows.length, plan.blocks[0]?.steps.length);
  const said = sheet.rows.map(({ say }) => say);
  said.forEach((prompt, i) => {
    assert.ok(prompt !== '' && !said.slice(Math.max(0, i - 2), i).includes(prompt), `${i + 1}: ${prompt}`);
  });
});

test('no more units are sewn beforehand than showing every step takes, and their pieces are counted', () => {
  assert.ok(sheet !== undefined);
  // by hand: two patches make unit 1, which both kinds of row take; one kind of row (unit 2, of three) is there twice. So
  // one of each is sewn beforehand, 2 + 3 pieces
  assert.deepEqual(
    sheet.stepOuts.map(({ unit, count }) => [unit, count]),
    [
      ['unit 1', '1'],
      ['unit 2', '1'],
    ],
  );
  assert.equal(
    sheet.cut.reduce((sum, { count }) => sum + Number(count), 0),
    5,
  );
});

test('the cloth for what is sewn beforehand is told by the cloth, as a strip across holds it', () => {
  // by hand: 5 squares of 2 in finished are cut 2½ in wide; those of a cloth lie in one strip across 42 in or so, 2½ in long
  const cloths = plan.fabrics.filter(({ id }) => sheet?.cut.some(({ cloth }) => cloth.startsWith(letterOf(id))));
  assert.equal(cloths.length, 2);
  for (const { id } of cloths) assert.match(sheet?.cloth ?? '', new RegExp(`2½\\sin of ${letterOf(id)}\\s`));
  // nothing is sewn beforehand for a row of two
  const units = [
    { at: [0, 0], unit: 'square', tones: ['light'] },
    { at: [1, 0], unit: 'square', tones: ['dark'] },
  ];
  const recipe = { kind: 'units', grid: [2, 1], units };
  const pair = { id: 'pair', size: ['4', '2'], recipe, colourings: nine.colourings };
  const [none] = runSheets({
    plan: planOf(documentOf({ blocks: [pair], top: { rows: [[{ block: 'pair' }]] } })),
    signs: clothSignsFor(plan),
    album: new Map(),
  });
  assert.equal(none?.cloth, '');
});

const letterOf = (id: string): string => signOf(clothSignsFor(plan), id).letter;

test('a scrappy piece is no one cloth: its board is the first of the top, and the list says so', () => {
  const colourings = { default: { light: 'oat', dark: ['bark', 'brick'] } };
  const blocks = [{ ...nine, colourings }];
  const scrappy = planOf(documentOf({ blocks, top: { rows: [[{ block: 'nine' }, { block: 'nine' }]] } }));
  const signs = clothSignsFor(scrappy);
  const album: Map<string, string> = new Map();
  const [first] = runSheets({ plan: scrappy, signs, album });
  assert.deepEqual(first?.cut.map(({ cloth }) => cloth === 'scrappy').sort(), [false, true]);
  const drawn = scrappy.top.drawn[0] ?? [];
  const svg = album.get(first?.board.name ?? '') ?? '';
  for (const cloth of ['bark', 'brick']) {
    const shown = svg.split(`fill="${signOf(signs, cloth).colour}"`).length - 1;
    assert.equal(shown, drawn.filter((one) => one === cloth).length, cloth);
    assert.ok(shown > 0, `the first place has both cloths: ${cloth}`);
  }
});

test('a step is shown in the words of its block, whatever way its unit is made', () => {
  const fly = { id: 'fly', from: 'shoo-fly', size: '6', colourings: { default: { light: 'oat', dark: 'bark' } } };
  const rows = [[{ block: 'fly' }, { block: 'fly' }]];
  const shown = (more: object) => {
    const made = planOf(documentOf({ blocks: [{ ...fly, ...more }], top: { rows } }));
    return runSheets({ plan: made, signs: clothSignsFor(made), album: new Map() })[0]?.rows[0]?.show ?? '';
  };
  assert.match(shown({ methods: [{ unit: 'half-square', way: 'two-at-a-time' }] }), /, two at a time\. Press/);
  assert.match(shown({ piecing: 'foundation' }), / goes on as patch 2\. Open /);
});

test('what is sewn beforehand has no size before it is a unit', () => {
  const recipe = {
    kind: 'units',
    grid: [2, 1],
    units: [
      { at: [0, 0], unit: 'quarter-square', tones: ['oat', 'bark', 'oat', 'bark'] },
      { at: [1, 0], unit: 'square', tones: ['bark'] },
    ],
  };
  const glass = {
    id: 'glass',
    size: ['6', '3'],
    recipe,
    methods: [{ unit: 'quarter-square', way: 'from-half-squares' }],
  };
  const made = planOf(documentOf({ blocks: [glass], top: { rows: [[{ block: 'glass' }]] } }));
  const [only] = runSheets({ plan: made, signs: clothSignsFor(made), album: new Map() });
  // by hand: unit 1, half of the quarter-square, is there twice, and one is sewn beforehand
  assert.deepEqual(
    only?.stepOuts.map(({ unit, count, size }) => [unit, count, size]),
    [['unit 1', '1', '']],
  );
});

test('a class is told to feed in all of a unit only where each is sewn by itself', () => {
  const fly = { id: 'fly', from: 'shoo-fly', size: '6', colourings: { default: { light: 'oat', dark: 'bark' } } };
  const said = (methods: readonly object[]) => {
    const made = planOf(documentOf({ blocks: [{ ...fly, methods }], top: { rows: [[{ block: 'fly' }]] } }));
    return runSheets({ plan: made, signs: clothSignsFor(made), album: new Map() })[0]?.rows[0]?.say ?? '';
  };
  assert.match(said([]), /^Feed all 4 through in one chain/);
  // two pairs of squares make the four half-squares
  assert.doesNotMatch(said([{ unit: 'half-square', way: 'two-at-a-time' }]), /Feed/);
});
