import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockDesign, UnitDesign, UnitName, UnitsDesign } from '#craft/design';
import { rational } from '#ground/exact';
import { signedArea } from '#ground/plane';
import { type DraftedBlock, draftBlock } from './index.ts';

const tonesOf: Readonly<Record<UnitName, readonly string[]>> = {
  square: ['all'],
  'half-square': ['upper left', 'lower right'],
  'quarter-square': ['top', 'right', 'bottom', 'left'],
  'flying-geese': ['goose', 'sky'],
  'square-in-square': ['square', 'corners'],
  'four-patch': ['main', 'other'],
  rails: ['first', 'second', 'third'],
};

const unit = (name: UnitName, more: Partial<UnitDesign> = {}): UnitDesign => ({
  unit: name,
  at: [rational(0), rational(0)],
  span: [rational(2), rational(2)],
  turn: 0,
  tones: tonesOf[name],
  ...more,
});

const designOf = (units: readonly UnitDesign[], grid: readonly [number, number] = [2, 2]): BlockDesign => {
  const shape: UnitsDesign = {
    kind: 'units',
    size: [rational(grid[0]), rational(grid[1])],
    grid: [rational(grid[0]), rational(grid[1])],
    units,
  };
  return { id: 'b', title: 'B', path: '/blocks/0', shape, colourings: {} };
};

const drafted = (units: readonly UnitDesign[], grid: readonly [number, number] = [2, 2]): DraftedBlock => {
  const block = draftBlock(designOf(units, grid));
  assert.ok(block.ok, block.ok ? '' : JSON.stringify(block.problems));
  return block.value;
};

/** The tone at a place. */
const toneAt = ({ patches }: DraftedBlock, x: number, y: number): string | undefined =>
  patches.find(({ points }) =>
    points.every((a, i) => {
      const b = points[(i + 1) % points.length] ?? a;
      return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > 0;
    }),
  )?.tone;

/** Tones read at twelve places of a unit of side 2: row by row, near the edges, off every seam. */
const read = (block: DraftedBlock): Readonly<Record<string, string | undefined>> => ({
  top: toneAt(block, 0.9, 0.2),
  right: toneAt(block, 1.8, 0.9),
  bottom: toneAt(block, 1.1, 1.8),
  left: toneAt(block, 0.2, 1.1),
  upperLeft: toneAt(block, 0.2, 0.15),
  upperRight: toneAt(block, 1.85, 0.2),
  lowerRight: toneAt(block, 1.8, 1.85),
  lowerLeft: toneAt(block, 0.15, 1.8),
});

// the table of units in docs/document.md, read off by hand
test('a half-square’s seam runs from lower left to upper right, its first tone at the upper left', () => {
  const { upperLeft, lowerRight, top, left, right, bottom } = read(drafted([unit('half-square')]));
  assert.deepEqual([upperLeft, top, left], ['upper left', 'upper left', 'upper left']);
  assert.deepEqual([lowerRight, right, bottom], ['lower right', 'lower right', 'lower right']);
});

test('a quarter-square’s tones go round from the top', () => {
  const { top, right, bottom, left } = read(drafted([unit('quarter-square')]));
  assert.deepEqual([top, right, bottom, left], ['top', 'right', 'bottom', 'left']);
});

test('a goose points up: sky at both upper corners, goose along the whole foot', () => {
  const block = drafted([unit('flying-geese', { span: [rational(2), rational(1)] })], [2, 1]);
  assert.deepEqual(
    [toneAt(block, 0.1, 0.1), toneAt(block, 1.9, 0.1), toneAt(block, 1, 0.3), toneAt(block, 0.1, 0.97)],
    ['sky', 'sky', 'goose', 'goose'],
  );
});

test('a square in a square has its corners in the second tone', () => {
  const { upperLeft, upperRight, lowerLeft, lowerRight } = read(drafted([unit('square-in-square')]));
  assert.deepEqual([upperLeft, upperRight, lowerLeft, lowerRight], ['corners', 'corners', 'corners', 'corners']);
  assert.equal(toneAt(drafted([unit('square-in-square')]), 1, 0.1), 'square');
});

test('a four-patch has its first tone on the diagonal from the upper left', () => {
  const { upperLeft, upperRight, lowerLeft, lowerRight } = read(drafted([unit('four-patch')]));
  assert.deepEqual([upperLeft, upperRight, lowerLeft, lowerRight], ['main', 'other', 'other', 'main']);
});

test('rails lie across, the first tone at the top, each a third of the span', () => {
  const { patches } = drafted([unit('rails')]);
  assert.deepEqual(
    patches.map(({ tone, points }) => [tone, Math.round(signedArea(points) * 3)]),
    [
      ['first', 4],
      ['second', 4],
      ['third', 4],
    ],
  );
});

test('a quarter turn takes the upper left to the upper right', () => {
  // by hand: clockwise, as everywhere in a document
  assert.equal(read(drafted([unit('half-square', { turn: 90 })])).upperRight, 'upper left');
  assert.equal(read(drafted([unit('quarter-square', { turn: 90 })])).right, 'top');
  assert.equal(read(drafted([unit('quarter-square', { turn: 270 })])).left, 'top');
  assert.equal(read(drafted([unit('rails', { turn: 180 })])).bottom, 'first');
  const goose = drafted([unit('flying-geese', { turn: 90, span: [rational(1), rational(2)] })], [1, 2]);
  // turned by 90 it points to the right: the foot lies along the left edge
  assert.deepEqual(
    [toneAt(goose, 0.03, 0.1), toneAt(goose, 0.9, 0.1), toneAt(goose, 0.9, 1)],
    ['goose', 'sky', 'goose'],
  );
});

test('any unit, however it is turned, tiles its span with the patches that its name says', () => {
  const patches = { square: 1, 'half-square': 2, 'quarter-square': 4, 'flying-geese': 3, 'square-in-square': 5 };
  const counts: Readonly<Record<UnitName, number>> = { ...patches, 'four-patch': 4, rails: 3 };
  fc.assert(
    fc.property(
      fc.constantFrom(...(Object.keys(tonesOf) as UnitName[])),
      fc.constantFrom<UnitDesign['turn']>(0, 90, 180, 270),
      (name, turn) => {
        const block = drafted([unit(name, { turn })]);
        assert.equal(block.patches.length, counts[name]);
        const area = block.patches.reduce((all, { points }) => all + signedArea(points), 0);
        assert.ok(Math.abs(area - 4) < 1e-9);
      },
    ),
    { seed: 311, numRuns: 60 },
  );
});

test('a unit that lies over an earlier one is told with both places, and a bare place as a gap', () => {
  const one = [rational(1), rational(1)] as const;
  const at = (x: number, y: number) => [rational(x, 2), rational(y, 2)] as const;
  const squares = [at(0, 0), at(1, 0), at(0, 2), at(2, 2)].map((place) => unit('square', { at: place, span: one }));
  const found = draftBlock(designOf(squares));
  assert.ok(!found.ok);
  // by hand: from 1/2 to 1 across, 0 to 1 down
  assert.deepEqual(found.problems, [
    {
      code: 'drafting/units-overlap',
      path: '/blocks/0/recipe/units/1',
      block: 'b',
      units: [0, 1],
      area: 0.5,
      at: [0.75, 0.5],
    },
  ]);
  const bare = draftBlock(designOf(squares.filter((_, i) => i !== 1)));
  assert.ok(!bare.ok);
  assert.deepEqual(bare.problems, [{ code: 'drafting/gap', path: '/blocks/0', block: 'b', area: 1, at: [1.5, 0.5] }]);
});
