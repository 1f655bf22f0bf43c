import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { VersionSeen } from '#workroom/compute';
import { lengthWordsFor } from '#workroom/room';
import { linesOf } from './differences.ts';

const oat = { id: 'oat', name: 'Oat', colour: '#efe6d0', amount: 2.5, unit: 'yd', cost: 25 } as const;
const bay = { id: 'bay', name: 'Bay', colour: '#224488', amount: 1, unit: 'yd', cost: 8 } as const;
const model: VersionSeen = {
  unit: 'in',
  ruler: '1/8',
  size: [60, 72],
  blocks: 30,
  kinds: 1,
  pieces: 400,
  seams: 370,
  minutes: 600,
  cutting: 100,
  sewing: 400,
  finishing: 100,
  cloths: [oat, bay],
  buy: [{ amount: 3.5, unit: 'yd' }],
  leftOver: 0.04,
  cost: 33,
  unpriced: 0,
  currency: 'EUR',
  backing: [68, 80],
  binding: 276,
};
const inches = lengthWordsFor({ unit: 'in' }, 'written');
const cm = lengthWordsFor({ unit: 'cm' }, 'written');
const told = (second: VersionSeen, of: Partial<Parameters<typeof linesOf>[0]> = {}): Record<string, string> =>
  Object.fromEntries(
    linesOf({ first: model, second, words: { first: inches, second: inches }, are: 'one-quilt', ...of }).map((line) => [
      line.name,
      line.difference.replaceAll('\u00a0', ' '),
    ]),
  );

test('of two that are alike every line says so', () => {
  const lines = linesOf({ first: model, second: model, words: { first: inches, second: inches }, are: 'one-quilt' });
  assert.deepEqual([...new Set(lines.map(({ difference }) => difference))], ['the same']);
  assert.ok(lines.every(({ isSame, first, second }) => isSame && first === second));
});

test('each line says by how much the second is other, and which way', () => {
  const second: VersionSeen = {
    ...model,
    size: [66, 71.5],
    blocks: 24,
    pieces: 431,
    seams: 371,
    minutes: 555,
    cutting: 90,
    sewing: 400,
    finishing: 65,
    cloths: [{ ...oat, amount: 3.125, cost: 31.25 }],
    buy: [{ amount: 3.125, unit: 'yd' }],
    leftOver: 0.07,
    cost: 31.25,
    binding: null,
    backing: null,
  };
  assert.deepEqual(told(second), {
    Size: '6 in wider and ½ in shorter',
    Blocks: '6 fewer',
    Pieces: '31 more',
    Seams: '1 more',
    Time: 'about 45 min less',
    'of it to cut': 'about 10 min less',
    'of it to sew': 'the same',
    'of it to finish': 'about 35 min less',
    'Cloth to buy': '⅜ yd less',
    'Left over': '3 percentage points more',
    Cost: '1.75 EUR less',
    Backing: 'only in the first',
    Binding: 'only in the first',
    Oat: '⅝ yd more, 6.25 EUR more',
    Bay: 'only in the first',
  });
});

test('of the share left over the points are told, of one alone in the singular', () => {
  // 4 % in the first: a quarter less of it is 3 %, one point
  assert.equal(told({ ...model, leftOver: 0.03 })['Left over'], '1 percentage point less');
  assert.equal(told({ ...model, leftOver: 0.042 })['Left over'], 'the same');
});

test('a size that no ruler has is told to its nearest mark, as the pages tell it', () => {
  // by hand: three blocks of 8 in on point are 3 · 8 · √2 = 33.941 in across, two 22.627 in; 11.314 in lies between them
  const three = { ...model, size: [24 * Math.SQRT2, 72] } as const;
  const two = { ...model, size: [16 * Math.SQRT2, 72] } as const;
  const [size] = linesOf({ first: three, second: two, words: { first: inches, second: inches }, are: 'one-quilt' });
  assert.equal(size?.first, 'about\u00a034\u00a0×\u00a072\u00a0in');
  assert.equal(size?.difference, 'about\u00a011⅜\u00a0in narrower');
  // what no mark shows is told as it is
  assert.equal(told({ ...model, size: [60.02, 72] }).Size, '0.02 in wider');
});

test('in two units lengths are told to what a ruler tells, and cloth to what a shop cuts, both as the first has them', () => {
  // 1 in = 2.54 cm, 1 yd = 0.9144 m: 153 cm are 60.24 in, 276 in 701.04 cm; 2.6 m are 2.84 yd, 0.9144 m are 1 yd
  const second: VersionSeen = {
    ...model,
    unit: 'cm',
    ruler: '0.1',
    size: [153, 185.42],
    backing: [172.72, 200.66],
    binding: 701.04,
    cloths: [
      { ...oat, unit: 'm', amount: 2.6 },
      { ...bay, unit: 'm', amount: 0.9144 },
    ],
    buy: [
      { amount: 3.5144, unit: 'm' },
      { amount: 2, unit: 'sheets' },
    ],
  };
  const lines = told(second, { words: { first: inches, second: cm } });
  assert.equal(lines.Size, 'about ¼ in wider and about 1 in longer');
  assert.equal(lines.Binding, 'the same');
  assert.equal(lines.Backing, 'about 1 in shorter');
  assert.equal(lines.Oat, 'about ⅜ yd more');
  assert.equal(lines.Bay, 'the same');
  assert.equal(lines['Cloth to buy'], 'about ⅜ yd more and 2 sheets more');
  assert.equal(told({ ...model, cloths: [{ ...oat, unit: 'sheets' }, bay] }).Oat, 'bought in another way');
});

test('prices that are missing or in another currency are told, never reckoned with', () => {
  assert.equal(told({ ...model, cost: null }).Cost, 'one of them has no prices');
  assert.equal(told({ ...model, cost: null }, { first: { ...model, cost: null } }).Cost, 'no prices in either');
  assert.equal(told({ ...model, currency: 'crowns' }).Cost, 'in another currency');
  const cost = linesOf({
    first: { ...model, unpriced: 1 },
    second: { ...model, cost: null, unpriced: 2 },
    words: { first: inches, second: inches },
    are: 'one-quilt',
  }).find(({ name }) => name === 'Cost');
  assert.deepEqual(
    [cost?.first.replaceAll('\u00a0', ' '), cost?.second],
    ['33.00 EUR, without 1 cloth that has no price', 'no prices'],
  );
});

test('cloths of two quilts are one where name and id are; in one quilt a cloth may have got another name', () => {
  const second = { ...model, cloths: [{ ...oat, name: 'Straw' }, bay] };
  assert.deepEqual(Object.keys(told(second)).slice(13), ['Oat, then Straw', 'Bay']);
  const others = told(second, { are: 'two-quilts' });
  assert.deepEqual([others.Oat, others.Bay, others.Straw], ['only in the first', 'the same', 'only in the second']);
});
