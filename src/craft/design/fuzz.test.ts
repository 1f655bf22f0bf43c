import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseQuilt, type QuiltDocument, readQuilt, toDocument } from '#craft/design';

const example = JSON.parse(readFileSync(new URL('../../../examples/orchard-gate.quilt.json', import.meta.url), 'utf8'));

/** Our own figure for what a maker would wait for a refusal. */
const timeoutMs = 1000;

const inTime = <T>(read: () => T): T => {
  const start = performance.now();
  const value = read();
  const tookMs = performance.now() - start;
  assert.ok(tookMs < timeoutMs, `${Math.round(tookMs)} ms`);
  return value;
};

test('no JSON value makes the reader throw or wait, and none is a quilt by chance', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => {
      assert.equal(inTime(() => readQuilt(value)).ok, false);
    }),
    { seed: 61, numRuns: 300 },
  );
});

test('no value that JSON cannot hold makes the reader throw', () => {
  const anything = fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withNullPrototype: true,
    withTypedArray: true,
  });
  fc.assert(
    fc.property(
      anything,
      fc.constantFrom('unit', 'seam', 'fabrics', 'blocks', 'top', 'finish', 'notes'),
      (value, key) => {
        assert.equal(inTime(() => readQuilt(value)).ok, false);
        inTime(() => readQuilt({ ...example, [key]: value }));
      },
    ),
    { seed: 62, numRuns: 300 },
  );
});

interface Change {
  readonly place: number;
  readonly how: 'replace' | 'remove' | 'repeat' | 'rename';
  readonly value: unknown;
}

const change: fc.Arbitrary<Change> = fc.record({
  place: fc.nat(),
  how: fc.constantFrom('replace', 'remove', 'repeat', 'rename'),
  value: fc.oneof(
    fc.constantFrom(
      0,
      -1,
      1e9,
      1e-9,
      '2 1/0',
      '1/3',
      '',
      null,
      true,
      [],
      {},
      'oat',
      'cabin',
      90,
      [['0', '1']],
      '½',
      'in',
    ),
    fc.jsonValue({ maxDepth: 2 }),
  ),
});

/** Every place of a document, as its holder and key. */
const placesIn = (value: unknown): readonly (readonly [holder: Record<string, unknown>, key: string])[] => {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [[holder, key] as const, ...placesIn(holder[key])]);
};

const changed = (document: unknown, { place, how, value }: Change): void => {
  const places = placesIn(document);
  const [holder, key] = places[place % places.length] ?? [];
  if (holder === undefined || key === undefined) return;
  const list = Array.isArray(holder) ? (holder as unknown[]) : null;
  if (how === 'replace') holder[key] = value;
  else if (how === 'repeat' && list) list.splice(Number(key), 0, list[Number(key)]);
  else if (list) list.splice(Number(key), 1);
  else {
    if (how === 'rename') holder[`${key}s`] = holder[key];
    delete holder[key];
  }
};

test('no change to a sound document makes the reader throw or wait; what it still takes, it can write and read again', () => {
  let taken = 0;
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
      const document = structuredClone(example);
      for (const one of changes) changed(document, one);
      const quilt = inTime(() => readQuilt(document));
      if (!quilt.ok) {
        assert.ok(quilt.problems.length > 0);
        return;
      }
      taken++;
      assert.deepEqual(readQuilt(toDocument(quilt.value)), quilt);
    }),
    { seed: 63, numRuns: 400 },
  );
  // otherwise the second half of the title would say nothing
  assert.ok(taken > 10, `${taken} still sound`);
});

test('no change to the text of a sound document makes the reader throw or wait', () => {
  const text = JSON.stringify(example);
  fc.assert(
    fc.property(fc.nat(text.length), fc.nat(40), fc.string({ unit: 'binary', maxLength: 8 }), (from, length, put) => {
      inTime(() => parseQuilt(text.slice(0, from) + put + text.slice(from + length)));
    }),
    { seed: 64, numRuns: 300 },
  );
});

const lengthText = fc.oneof(
  fc
    .tuple(fc.integer({ min: 1, max: 12 }), fc.constantFrom('', ' 1/2', ' 3/8', '.25', '⅓', ' 1/7', ' 5/64'))
    .map(([whole, part]) => `${whole}${part}`),
  fc.constantFrom('6 cm', '1/8 yd', '2.54 cm', '12 mm'),
);

const sides = fc.array(fc.constantFrom('left', 'top', 'right', 'bottom'), { minLength: 1, maxLength: 6 });

const document: fc.Arbitrary<unknown> = fc
  .record({
    unit: fc.constantFrom('in', 'cm'),
    centre: fc.oneof(lengthText, fc.tuple(lengthText, lengthText)),
    order: sides,
    whole: fc.nat(3),
    part: fc.nat(5),
    width: fc.array(lengthText, { minLength: 6, maxLength: 6 }),
    thick: fc.boolean(),
    turn: fc.constantFrom(0, 90, 180, 270),
    mirror: fc.boolean(),
    border: lengthText,
    seam: fc.constantFrom('1/4', '0.7 cm', '5/16'),
    price: fc.option(fc.integer({ min: 0, max: 99_999 }).map((cents) => cents / 100)),
    cornerstones: fc.boolean(),
  })
  .map((is): unknown => {
    const round = (logs: number) => ({
      width: is.thick ? is.width.slice(0, logs) : is.width[0],
      tones: is.order.slice(0, logs).map((_, i) => (i % 2 ? 'dark' : 'oat')),
    });
    const rounds = Array.from({ length: is.whole }, () => round(is.order.length));
    return {
      format: 'seamstead-quilt',
      version: 1,
      unit: is.unit,
      seam: is.seam,
      fabrics: [
        { id: 'oat', colour: '#efe6d0', ...(is.price === null ? {} : { price: is.price }) },
        { id: 'bark', colour: '#4a3426', usableWidth: '42 in' },
      ],
      blocks: [
        {
          id: 'cabin',
          recipe: {
            kind: 'log-cabin',
            centre: is.centre,
            centreTone: 'bark',
            order: is.order,
            rounds: [...rounds, round(1 + (is.part % is.order.length))],
          },
          colourings: { default: { dark: 'bark' }, night: { dark: 'oat', oat: 'bark' } },
        },
      ],
      top: {
        rows: [
          [
            { block: 'cabin', turn: is.turn, mirror: is.mirror },
            { block: 'cabin', turn: (is.turn + 180) % 360, colouring: 'night' },
          ],
        ],
        sashing: { width: is.border, fabric: 'oat', ...(is.cornerstones ? { cornerstones: 'bark' } : {}) },
        borders: [{ width: is.border, fabric: 'bark', grain: 'lengthwise' }],
      },
      finish: { backing: { fabric: 'oat', overage: is.border } },
    };
  });

test('any log cabin quilt is read, and written out and read again it is the same quilt', () => {
  fc.assert(
    fc.property(document, (written) => {
      const quilt = readQuilt(written);
      assert.ok(quilt.ok, quilt.ok ? '' : JSON.stringify(quilt.problems.map(({ code, path }) => [code, path])));
      const again: QuiltDocument = JSON.parse(JSON.stringify(toDocument(quilt.value)));
      assert.deepEqual(readQuilt(again), quilt);
    }),
    { seed: 65, numRuns: 200 },
  );
});
