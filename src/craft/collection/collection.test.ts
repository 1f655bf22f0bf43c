import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { collectionShape } from '#craft/design';
import { draftBlock } from '#craft/drafting';
import { outlineArea } from '#ground/arc';
import { fromDecimal } from '#ground/exact';
import { collection, collectionBlock } from './index.ts';

interface Drawn {
  readonly id: string;
  readonly name: string;
  readonly grid: number;
  readonly patches: readonly { readonly tone: string; readonly points: readonly (readonly [number, number])[] }[];
}

// our own drafting, checked when it was made (its source is in the file)
const fixture = JSON.parse(
  readFileSync(new URL('../../../test/fixtures/traditional-blocks.json', import.meta.url), 'utf8'),
) as { readonly blocks: readonly Drawn[] };

const figure = (value: number): string => (Math.round(value * 1e6) / 1e6).toString();

/** A patch as text, whichever corner its outline begins at. */
const patchText = (tone: string, points: readonly (readonly [number, number])[]): string =>
  `${tone} ${points
    .map(([x, y]) => `${figure(x)},${figure(y)}`)
    .toSorted()
    .join(' ')}`;

/** Its drafting is worked out by hand below. */
const curvedIds = ['drunkards-path'];

test('the collection holds the twenty-nine blocks with straight edges, and one with curved ones, each once', () => {
  assert.equal(collection.length, 30);
  const ids = collection.map(({ id }) => id);
  assert.equal(new Set(ids).size, 30);
  const straight = fixture.blocks.map(({ id }) => id.replaceAll('_', '-'));
  assert.deepEqual(ids.toSorted(), [...straight, ...curvedIds].toSorted());
  for (const id of ids) assert.match(id, /^[a-z]+(-[a-z]+)*$/);
});

test('every block has a name, a line of history and where it was read', () => {
  for (const { id, name, history, source } of collection) {
    assert.ok(name.length > 0 && history.length > 0 && source.length > 0, id);
    assert.match(history, /\.$/, id);
  }
});

for (const { id, name, grid, patches } of fixture.blocks) {
  test(`${name} has the patches and tones of its drafting`, () => {
    const block = collectionBlock(id.replaceAll('_', '-'));
    assert.ok(block);
    const size = fromDecimal(grid);
    const shape = collectionShape(block, [size, size]);
    const drafted = draftBlock({ id, title: name, path: '', shape, colourings: {} });
    assert.ok(drafted.ok, drafted.ok ? '' : JSON.stringify(drafted.problems));
    assert.deepEqual(
      drafted.value.patches
        .map(({ tone, points }) =>
          patchText(
            tone,
            points.map(({ x, y }) => [x, y]),
          ),
        )
        .toSorted(),
      patches.map(({ tone, points }) => patchText(tone, points)).toSorted(),
    );
  });
}

test('Drunkard’s Path is a quarter of a circle, three quarters of the unit wide, in its lower left corner', () => {
  const block = collectionBlock('drunkards-path');
  assert.ok(block);
  const size = fromDecimal(4);
  const drafted = draftBlock({
    id: 'd',
    title: '',
    path: '',
    shape: collectionShape(block, [size, size]),
    colourings: {},
  });
  assert.ok(drafted.ok, drafted.ok ? '' : JSON.stringify(drafted.problems));
  const areas = drafted.value.patches.map(
    ({ points, arcs = [], tone }) => [tone, outlineArea({ points, arcs })] as const,
  );
  const byTone = Object.fromEntries(areas);
  // by hand: π · 3² / 4, and what it leaves of 4 · 4
  assert.ok(Math.abs((byTone.dark ?? 0) - (9 * Math.PI) / 4) < 1e-12);
  assert.ok(Math.abs((byTone.light ?? 0) - (16 - (9 * Math.PI) / 4)) < 1e-12);
  assert.deepEqual(
    drafted.value.patches.flatMap(({ arcs = [] }) => arcs.map(({ centre }) => centre)),
    [
      { x: 0, y: 4 },
      { x: 0, y: 4 },
    ],
  );
});

test('a letter stands for one tone only, so that a colouring by letters is a finer one', () => {
  for (const { id, drawing } of collection) {
    const roles = drawing.kind === 'grid' ? drawing.cloths : [drawing.centre, ...drawing.rounds.flat()];
    const toneOf = new Map<string, string>();
    for (const { tone, letter } of roles) {
      assert.equal(toneOf.get(letter) ?? tone, tone, `${id} ${letter}`);
      toneOf.set(letter, tone);
    }
  }
});
