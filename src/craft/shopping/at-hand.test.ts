import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type Quilt, readQuilt } from '#craft/design';
import { readCupboard } from './at-hand.ts';

const quiltIn = (unit: 'in' | 'cm'): Quilt => {
  const read = readQuilt({
    format: 'seamstead-quilt',
    version: 1,
    unit,
    fabrics: [
      { id: 'oat', colour: '#eeeeee' },
      { id: 'rose', colour: '#bb6666', bought: 'fat-quarter' },
    ],
    blocks: [{ id: 'panel', size: '9', made: 'elsewhere' }],
    top: { rows: [[{ block: 'panel' }]] },
  });
  if (!read.ok) throw new Error(read.problems.map(({ code }) => code).join());
  return read.value;
};

const read = (fabric: string, amount: string, unit: 'in' | 'cm' = 'in') =>
  readCupboard([{ fabric, amount, path: 'here' }], quiltIn(unit));

const handOf = (fabric: string, amount: string, unit: 'in' | 'cm' = 'in') => {
  const outcome = read(fabric, amount, unit);
  return outcome.ok ? outcome.value.get(fabric) : outcome.problems.map(({ code }) => code);
};

test('cloth at hand is read in yards, metres, inches or centimetres, in the unit of the document', () => {
  // derived by hand: 1 yd = 36 in = 91.44 cm
  assert.deepEqual(handOf('oat', '2 1/2 yd'), { kind: 'length', length: 90, others: [] });
  assert.deepEqual(handOf('oat', '27 in'), { kind: 'length', length: 27, others: [] });
  assert.deepEqual(handOf('oat', '1½ yd', 'cm'), { kind: 'length', length: 137.16, others: [] });
  assert.deepEqual(handOf('oat', '0.75 m', 'cm'), { kind: 'length', length: 75, others: [] });
});

test('sheets are counted', () => {
  for (const amount of ['6', ' 6 fat quarters', '6 sheets'])
    assert.deepEqual(handOf('rose', amount), { kind: 'sheets', count: 6 });
});

test('an amount that could mean anything else is refused by name', () => {
  for (const [fabric, amount, code] of [
    ['oat', 'some', 'shopping/unreadable'],
    ['oat', '2', 'shopping/no-unit'],
    ['oat', '0 yd', 'shopping/nothing'],
    ['oat', '-1 yd', 'shopping/nothing'],
    ['oat', '2000 yd', 'shopping/too-much'],
    ['oats', '2 yd', 'shopping/unknown-cloth'],
    ['rose', '1 yd', 'shopping/sheets-wanted'],
    ['rose', '1/2', 'shopping/sheets-wanted'],
    ['rose', '0', 'shopping/nothing'],
    ['rose', '99999', 'shopping/too-much'],
  ] as const)
    assert.deepEqual(handOf(fabric, amount), [code], `${fabric} ${amount}`);
});

test('all that is wrong is told at once', () => {
  const outcome = readCupboard(
    [
      { fabric: 'oat', amount: '1', path: 'a' },
      { fabric: 'oat', amount: '2 yd', path: 'b' },
      { fabric: 'rye', amount: '2 yd', path: 'c' },
    ],
    quiltIn('in'),
  );
  assert.deepEqual(outcome.ok ? [] : outcome.problems.map(({ code, path }) => `${path} ${code}`), [
    'a shopping/no-unit',
    'c shopping/unknown-cloth',
  ]);
});

test('pieces of one cloth stand from the longest; sheets of one cloth are counted together', () => {
  const outcome = readCupboard(
    ['1/2 yd', '2 yd', '27 in'].map((amount) => ({ fabric: 'oat', amount, path: 'here' })),
    quiltIn('in'),
  );
  assert.deepEqual(outcome.ok && outcome.value.get('oat'), { kind: 'length', length: 72, others: [27, 18] });
  const sheets = readCupboard(
    ['6', '2'].map((amount) => ({ fabric: 'rose', amount, path: 'here' })),
    quiltIn('in'),
  );
  assert.deepEqual(sheets.ok && sheets.value.get('rose'), { kind: 'sheets', count: 8 });
});
