import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readQuilt, toDocument } from '#craft/design';

/** A whole small document with this about its first cloth. */
const documentWith = (cloth: object, more: object = {}): unknown => ({
  format: 'seamstead-quilt',
  version: 1,
  unit: 'in',
  fabrics: [
    { id: 'oat', colour: '#efe6d0', ...cloth },
    { id: 'bark', colour: '#4a3426' },
  ],
  blocks: [
    {
      id: 'fly',
      size: '6',
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
            tone: 'light',
          },
          {
            points: [
              [1, 0],
              [2, 0],
              [2, 1],
              [1, 1],
            ],
            tone: 'bark',
          },
        ],
      },
      colourings: { default: { light: 'oat' } },
      ...more,
    },
  ],
  top: { rows: [[{ block: 'fly' }]] },
});

const problemsOf = (document: unknown): readonly string[] => {
  const read = readQuilt(document);
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`);
};

const boughtOf = (document: unknown) => {
  const read = readQuilt(document);
  assert.ok(read.ok, JSON.stringify(problemsOf(document)));
  return read.value.fabrics[0];
};

test('several kinds of sheet are read with their names, counts and prices, a fat quarter by its name', () => {
  // by hand from docs/document.md: a fat quarter is 17 1/2 × 20 1/2 in usable
  const bought = { sheets: [{ size: ['18', '21'], count: 2, price: 3.5, name: 'remnant' }, { size: 'fat-quarter' }] };
  const fabric = boughtOf(documentWith({ bought }));
  assert.ok(fabric?.bought.kind === 'stock');
  assert.deepEqual(
    fabric.bought.sheets.map(({ name, size, count, price }) => [
      name,
      size.map(Number),
      count,
      price?.valueOf() ?? null,
    ]),
    [
      ['remnant', [18, 21], 2, 3.5],
      ['fat quarter', [17.5, 20.5], null, null],
    ],
  );
  // strips longer than a sheet are joined from the kind that is never out
  assert.equal(fabric.usableWidth.valueOf(), 17.5);
});

test('lengths of cloth are read bare, or with a count and a price, and keep the usable width', () => {
  const fabric = boughtOf(
    documentWith({ usableWidth: '42', bought: { lengths: ['1 yd', { length: '1/2 yd', count: 3, price: 6 }] } }),
  );
  assert.ok(fabric?.bought.kind === 'lengths');
  assert.deepEqual(
    fabric.bought.lengths.map(({ length, count, price }) => [Number(length), count, price?.valueOf() ?? null]),
    [
      [36, null, null],
      [18, 3, 6],
    ],
  );
  assert.equal(fabric.usableWidth.valueOf(), 42);
});

const whole = [
  { bought: { sheets: [{ size: ['18', '21'], count: 2, price: 3.5, name: 'remnant' }, { size: ['10', '10'] }] } },
  { bought: { lengths: ['1 yd', { length: '1/2 yd', count: 3, price: 6 }] } },
  { ends: [{ size: ['10', '30'], count: 2, name: 'from the apron' }, { size: ['5', '6'] }] },
  { repeat: { along: '6', across: '4', motif: ['2', '3'] } },
  { repeat: { along: '6 1/2', motif: ['0', '3'] } },
];

for (const cloth of whole) {
  test(`what is read of ${JSON.stringify(cloth)} is written so that it reads the same`, () => {
    const read = readQuilt(documentWith(cloth));
    assert.ok(read.ok);
    const again = readQuilt(toDocument(read.value));
    assert.ok(again.ok);
    assert.deepEqual(again.value, read.value);
  });
}

test('the fold and the tones cut round a motif are written so that they read the same', () => {
  const cloth = { repeat: { along: '6', motif: ['0', '3'] } };
  const document = { ...(documentWith(cloth, { motifs: ['light'] }) as object), cutting: { fold: true } };
  const read = readQuilt(document);
  assert.ok(read.ok);
  assert.deepEqual([read.value.onFold, read.value.blocks[0]?.motifs], [true, ['light']]);
  const again = readQuilt(toDocument(read.value));
  assert.ok(again.ok);
  assert.deepEqual(again.value, read.value);
});

// each expectation was derived by hand from docs/document.md
const refused: readonly (readonly [fact: string, cloth: object, problems: readonly string[]])[] = [
  [
    'a usable width beside sheets',
    { usableWidth: '42', bought: { sheets: [{ size: ['18', '21'] }] } },
    ['design/width-of-sheets /fabrics/0/usableWidth'],
  ],
  ['no sheet at all', { bought: { sheets: [] } }, ['design/too-few /fabrics/0/bought/sheets']],
  [
    'a count of none',
    { bought: { sheets: [{ size: ['18', '21'], count: 0 }] } },
    ['design/out-of-range /fabrics/0/bought/sheets/0/count'],
  ],
  [
    'a sheet without length',
    { bought: { sheets: [{ size: ['18', '0'] }] } },
    ['design/not-positive /fabrics/0/bought/sheets/0/size/1'],
  ],
  [
    // 2 in of squaring and a strip of 4 in
    'a length that squaring leaves nothing of',
    { bought: { lengths: ['5 in', '6 in'] } },
    ['design/too-small /fabrics/0/bought/lengths/0'],
  ],
  [
    'ends beside sheets',
    { bought: 'fat-quarter', ends: [{ size: ['5', '5'] }] },
    ['design/only-by-length /fabrics/0/ends'],
  ],
  [
    'a repeat beside lengths',
    { bought: { lengths: ['1 yd'] }, repeat: { along: '6', motif: ['0', '3'] } },
    ['design/only-by-length /fabrics/0/repeat'],
  ],
  ['an end without width', { ends: [{ size: ['0', '5'] }] }, ['design/not-positive /fabrics/0/ends/0/size/0']],
  ['half an end', { ends: [{ size: ['5', '5'], count: 0.5 }] }, ['design/wrong-type /fabrics/0/ends/0/count']],
  [
    'a motif across that lies beyond its repeat',
    { repeat: { along: '6', across: '4', motif: ['5', '3'] } },
    ['design/motif-beyond-repeat /fabrics/0/repeat/motif/0'],
  ],
  [
    'a sheet of one side, and a price below nothing,',
    { bought: { sheets: [{ size: ['18'] }, { size: ['18', '21'], price: -1 }] } },
    ['design/wrong-type /fabrics/0/bought/sheets/0/size', 'design/out-of-range /fabrics/0/bought/sheets/1/price'],
  ],
  ['what no cloth comes in', { bought: { rolls: 3 } }, ['design/wrong-type /fabrics/0/bought']],
  [
    'a kind with an unknown key',
    { bought: { sheets: [{ size: ['18', '21'], colour: 'red' }] } },
    ['design/unknown-key /fabrics/0/bought/sheets/0/colour'],
  ],
];

for (const [fact, cloth, problems] of refused) {
  test(`${fact} is refused with its place`, () => {
    assert.deepEqual(problemsOf(documentWith(cloth)), problems);
  });
}
