import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  type BlockDesign,
  type DesignProblem,
  type Quilt,
  readQuilt,
  sizeOf,
  toDocument,
  unusedTones,
} from '#craft/design';
import { toNumber } from '#ground/exact';

const documentOf = (...blocks: readonly object[]): object => ({
  format: 'seamstead-quilt',
  version: 1,
  unit: 'in',
  fabrics: ['oat', 'sand', 'bark'].map((id) => ({ id, colour: '#888888' })),
  blocks,
  top: { rows: [[{ block: (blocks[0] as { readonly id: string }).id }]] },
});

const read = (...blocks: readonly object[]): Quilt => {
  const outcome = readQuilt(documentOf(...blocks));
  assert.ok(outcome.ok, outcome.ok ? '' : JSON.stringify(outcome.problems));
  return outcome.value;
};

const refused = (...blocks: readonly object[]): readonly DesignProblem[] => {
  const outcome = readQuilt(documentOf(...blocks));
  assert.ok(!outcome.ok);
  return outcome.problems;
};

const sideOf = ({ shape }: BlockDesign): readonly number[] => sizeOf(shape).map(toNumber);

const star = { id: 'star', from: 'friendship-star', size: '9' };
const starIn = { ...star, colourings: { default: { light: 'oat', dark: 'bark' } } };
const nest = {
  id: 'nest',
  recipe: {
    kind: 'log-cabin',
    centre: { block: 'star' },
    rounds: [{ width: '1', tones: ['oat', 'oat', 'bark', 'bark'] }],
  },
};

test('a block of the collection is called as it is there, unless the document says otherwise', () => {
  assert.equal(read(starIn).blocks[0]?.title, 'Friendship Star');
  assert.equal(read({ ...starIn, title: 'Four friends' }).blocks[0]?.title, 'Four friends');
});

test('size is without the frame, and the block is as large as both', () => {
  // by hand: 9 + 2 · 1 1/2 + 2 · 1/4
  const frame = [
    { width: '1 1/2', fabric: 'oat' },
    { width: '1/4', fabric: 'bark' },
  ];
  assert.deepEqual(sideOf(read({ ...starIn, frame }).blocks[0] as BlockDesign), [12.5, 12.5]);
});

test('a pieced centre brings its size, and its tones by its own default colouring', () => {
  const [cabin] = read(nest, starIn).blocks as [BlockDesign];
  assert.deepEqual(sideOf(cabin), [11, 11]);
  assert.deepEqual(cabin.colourings.default, { light: 'oat', dark: 'bark', oat: 'oat', bark: 'bark' });
});

test('a stated size of a cabin round a pieced centre must be the one that comes out', () => {
  assert.ok(read({ ...nest, size: '11' }, starIn));
  assert.deepEqual(
    refused({ ...nest, size: '10' }, starIn).map(({ code }) => code),
    ['design/size-disagrees'],
  );
});

test('the chain of blocks that hold each other names them in order, once', () => {
  const holding = (id: string, block: string): object => ({
    id,
    recipe: { kind: 'log-cabin', centre: { block }, rounds: [{ width: '1', tones: ['oat', 'oat', 'oat', 'oat'] }] },
  });
  assert.deepEqual(refused(holding('a', 'b'), holding('b', 'c'), holding('c', 'b')), [
    { code: 'design/centre-circle', path: '/blocks/1/recipe/centre/block', chain: ['b', 'c', 'b'] },
  ]);
  assert.deepEqual(refused(holding('a', 'a')), [
    { code: 'design/centre-circle', path: '/blocks/0/recipe/centre/block', chain: ['a', 'a'] },
  ]);
});

test('blocks held in each other may not add up to more patches than a block can have', () => {
  const units = Array.from({ length: 1400 }, (_, i) => ({ at: [i, 0], unit: 'half-square', tones: ['oat', 'bark'] }));
  const problems = refused({ id: 'long', size: ['1400', '1'], recipe: { kind: 'units', grid: [1400, 1], units } });
  assert.deepEqual(problems, [
    { code: 'design/too-many', path: '/blocks/0', what: 'patches', found: 2800, most: 2000 },
  ]);
});

test('a colouring by letters need not name the tones that its letters cover', () => {
  const cabin = (colouring: object): object => ({
    id: 'cabin',
    from: 'log-cabin',
    size: '7',
    colourings: { default: colouring },
  });
  const letters = { A1: 'oat', A2: 'sand', A3: 'oat', C1: 'bark', C2: 'bark', C3: 'bark', D: 'sand' };
  assert.deepEqual(read(cabin(letters)).blocks[0]?.colourings.default, letters);
  const { A2: _, ...fewer } = letters;
  assert.deepEqual(
    refused(cabin(fewer)).map((problem) => ('tone' in problem ? [problem.code, problem.tone] : [])),
    [['design/tone-without-fabric', 'light']],
  );
  assert.deepEqual(
    unusedTones(read(cabin({ ...letters, A4: 'oat' }))).map(({ tone }) => tone),
    ['A4'],
  );
});

test('flying geese take two squares of the grid, the long way as they lie', () => {
  const quilt = read({
    id: 'geese',
    size: ['3', '2'],
    recipe: {
      kind: 'units',
      grid: [3, 2],
      units: [
        { at: [0, 0], unit: 'flying-geese', tones: ['bark', 'oat'] },
        { at: [0, 1], unit: 'flying-geese', turn: 180, tones: ['bark', 'oat'] },
        { at: [2, 0], unit: 'flying-geese', turn: 270, tones: ['bark', 'oat'] },
      ],
    },
  });
  const shape = quilt.blocks[0]?.shape;
  assert.ok(shape?.kind === 'units');
  assert.deepEqual(
    shape.units.map(({ span }) => span.map(toNumber)),
    [
      [2, 1],
      [2, 1],
      [1, 2],
    ],
  );
});

const side = fc.constantFrom('3', '4 1/2', '7', '10.25', '1/3');

const shape: fc.Arbitrary<object> = fc.oneof(
  fc.record({ from: fc.constantFrom('friendship-star', 'log-cabin', 'lemoyne-star'), size: fc.tuple(side, side) }),
  fc.record({
    size: side,
    drawing: fc.record({
      grid: fc.constant([4, 3.4142135]),
      seams: fc
        .array(fc.array(fc.tuple(fc.nat(4), fc.nat(3)), { minLength: 2, maxLength: 2 }), { maxLength: 3 })
        .map((seams) => seams.filter(([a, b]) => a?.[0] !== b?.[0])),
      tonesAt: fc.constant([{ at: ['1/2', 1.5], tone: 'oat' }]),
    }),
  }),
  fc.record({
    size: side,
    recipe: fc.constantFrom<UnitsWritten>(
      { kind: 'units', grid: [1, 1], units: [{ at: [0, 0], unit: 'half-square', tones: ['oat', 'bark'] }] },
      { kind: 'units', grid: [2, 1], units: [{ at: [0, 0], unit: 'flying-geese', turn: 180, tones: ['oat', 'bark'] }] },
    ),
  }),
);

type UnitsWritten = Readonly<Record<string, unknown>>;

test('any shape is read, and written out and read again it is the same', () => {
  fc.assert(
    fc.property(shape, fc.option(side), fc.boolean(), (written, width, held) => {
      const frame = width === null ? {} : { frame: [{ width, fabric: 'sand' }] };
      const colourings = { default: { light: 'oat', dark: 'bark', medium: 'sand', accent: 'sand', A2: 'sand' } };
      const block = { id: 'star', ...written, ...frame, ...('from' in written ? { colourings } : {}) };
      const quilt = readQuilt(held ? documentOf(nest, block) : documentOf(block));
      assert.ok(quilt.ok, quilt.ok ? '' : JSON.stringify(quilt.problems));
      assert.deepEqual(readQuilt(JSON.parse(JSON.stringify(toDocument(quilt.value)))), quilt);
    }),
    { seed: 321, numRuns: 200 },
  );
  const place = read({ id: 'panel', made: 'elsewhere', size: ['12', '9'] });
  assert.deepEqual(readQuilt(toDocument(place)), { ok: true, value: place });
});
