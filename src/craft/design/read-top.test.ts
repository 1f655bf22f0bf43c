import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { parseQuilt, readQuilt, toDocument } from '#craft/design';

const textOf = (example: string): string =>
  readFileSync(new URL(`../../../examples/${example}.quilt.json`, import.meta.url), 'utf8');

for (const example of ['drying-barn', 'lantern-lane', 'twelve-fields', 'heron-hanging']) {
  test(`the top of ${example} is the same when it is written out and read again`, () => {
    const read = parseQuilt(textOf(example));
    assert.ok(read.ok);
    const again = readQuilt(JSON.parse(JSON.stringify(toDocument(read.value))));
    assert.ok(again.ok, again.ok ? '' : JSON.stringify(again.problems));
    assert.deepEqual(again.value.top, read.value.top);
  });
}

interface Written {
  readonly top: Readonly<Record<string, unknown>>;
}

const changed = (example: string, top: Readonly<Record<string, unknown>>): unknown => {
  const document = JSON.parse(textOf(example)) as Written;
  return { ...document, top: { ...document.top, ...top } };
};

const problemsOf = (document: unknown): readonly string[] => {
  const read = readQuilt(document);
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`);
};

test('every key of the top belongs to its way of setting', () => {
  // derived by hand from docs/document.md
  assert.deepEqual(problemsOf(changed('lantern-lane', { sections: { fill: 'mist' } })), [
    'design/not-for-set /top/sections',
  ]);
  assert.deepEqual(
    problemsOf(changed('twelve-fields', { rows: [[{ block: 'fly' }]], sashing: { width: 1, fabric: 'milk' } })),
    ['design/not-for-set /top/rows', 'design/not-for-set /top/sashing'],
  );
});

test('an arrangement of more than 40 000 cells is refused', () => {
  // by hand: 300 · 134
  const arrangement = { kind: 'pinwheel', block: 'cabin', rows: 300, columns: 134 };
  assert.deepEqual(problemsOf(changed('drying-barn', { arrangement })), ['design/too-many /top/arrangement']);
});

test('blocks, fabrics and colourings of sections and pieced borders must be known', () => {
  const sections = { across: [{ block: 'fly', colouring: 'noon' }, { strip: 'snow', width: 1 }, { fill: 'hail' }] };
  assert.deepEqual(
    problemsOf(changed('twelve-fields', { sections, borders: [{ pieced: { block: 'kite', spacer: 'sleet' } }] })),
    [
      'design/unknown-block /top/borders/0/pieced/block',
      'design/unknown-fabric /top/borders/0/pieced/spacer',
      'design/unknown-colouring /top/sections/across/0/colouring',
      'design/unknown-fabric /top/sections/across/1/strip',
      'design/unknown-fabric /top/sections/across/2/fill',
    ],
  );
});

test('a pieced border of a very small block is refused before it is laid', () => {
  // by hand: some 3 500 in round at 1/1000 in a block
  const read = JSON.parse(textOf('heron-hanging')) as { blocks: unknown[]; top: { borders: unknown[] } };
  const crumb = {
    id: 'crumb',
    size: ['1/1000', '1'],
    patches: {
      grid: [1, 1],
      list: [
        {
          points: [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ],
          tone: 'sun',
        },
      ],
    },
  };
  assert.deepEqual(
    problemsOf({
      ...read,
      blocks: [...read.blocks, crumb],
      top: { ...read.top, borders: [{ pieced: { block: 'crumb', spacer: 'sun' } }] },
    }),
    [],
  );
  const wide = { ...crumb, size: ['1/10000', '1'] };
  assert.deepEqual(
    problemsOf({
      ...read,
      blocks: [...read.blocks, wide],
      top: { ...read.top, borders: [{ pieced: { block: 'crumb', spacer: 'sun' } }] },
    }),
    ['design/too-many /top/rows'],
  );
});
