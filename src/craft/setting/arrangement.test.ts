import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { ArrangementKind } from '#craft/design';
import { type Quarters, quartersFor } from '#craft/setting';
import { arrangedRows } from './arrangement.ts';

interface LogCabinSet {
  readonly kind: ArrangementKind;
  readonly turns: readonly (readonly number[])[];
  readonly edgesAgree?: number;
  readonly darkRegions?: number;
  readonly lightRegions?: number;
}

const fixture = new URL('../../../test/fixtures/log-cabin-sets.json', import.meta.url);
const { sets } = JSON.parse(readFileSync(fixture, 'utf8')) as { readonly sets: readonly LogCabinSet[] };

type Grid = readonly (readonly Quarters[])[];

/** Which halves are dark at each edge. A dark half lower right reaches the right and the lower edge. */
const darkEdges = (quarters: Quarters) => ({
  right: quarters === 0 || quarters === 3,
  left: quarters === 1 || quarters === 2,
  lower: quarters === 0 || quarters === 1,
  upper: quarters === 2 || quarters === 3,
});

/** Every edge that two blocks share, with its tone on either side. */
const sharedEdges = (grid: Grid) =>
  grid.flatMap((row, i) =>
    row.flatMap((quarters, j) => {
      const mine = darkEdges(quarters);
      const right = row[j + 1];
      const below = grid[i + 1]?.[j];
      return [
        ...(right === undefined ? [] : [{ a: [i, j], b: [i, j + 1], tones: [mine.right, darkEdges(right).left] }]),
        ...(below === undefined ? [] : [{ a: [i, j], b: [i + 1, j], tones: [mine.lower, darkEdges(below).upper] }]),
      ];
    }),
  );

const agreeing = (grid: Grid) => sharedEdges(grid).filter(({ tones }) => tones[0] === tones[1]);

/** Halves of one tone that hang together over shared edges. */
const regionsOf = (grid: Grid, dark: boolean): number => {
  const cells = grid.flatMap((row, i) => row.map((_, j) => `${i},${j}`));
  const leader = new Map(cells.map((cell) => [cell, cell]));
  const find = (cell: string): string => {
    const up = leader.get(cell) as string;
    return up === cell ? cell : find(up);
  };
  for (const { a, b, tones } of agreeing(grid)) if (tones[0] === dark) leader.set(find(a.join()), find(b.join()));
  return new Set(cells.map(find)).size;
};

for (const { kind, turns, edgesAgree, darkRegions, lightRegions } of sets) {
  // test/fixtures/log-cabin-sets.json, with its source
  test(`${kind} of eight by eight turns every block as drafted`, () => {
    assert.deepEqual(quartersFor({ kind, rows: 8, columns: 8 }), turns);
  });

  if (edgesAgree !== undefined) {
    test(`${kind} of eight by eight has its number of agreeing edges, dark and light regions`, () => {
      const grid = quartersFor({ kind, rows: 8, columns: 8 });
      assert.deepEqual(
        [agreeing(grid).length, regionsOf(grid, true), regionsOf(grid, false)],
        [edgesAgree, darkRegions, lightRegions],
      );
    });
  }
}

test('blocks that are not turned agree along no edge: sixteen dark and sixteen light regions', () => {
  // derived: four by four, every dark half lower right
  const grid: Grid = Array.from({ length: 4 }, () => [0, 0, 0, 0]);
  assert.deepEqual([agreeing(grid).length, regionsOf(grid, true), regionsOf(grid, false)], [0, 16, 16]);
});

const counts = [1, 2, 3, 4, 5, 6, 7, 8, 9];

for (const { kind } of sets.filter((set) => set.kind !== 'pinwheel')) {
  test(`in ${kind} every shared edge has one tone on both sides, for all counts from 1 to 9`, () => {
    for (const rows of counts) {
      for (const columns of counts) {
        const grid = quartersFor({ kind, rows, columns });
        // law: docs/formulas.md#arrangements; a rows × columns grid shares rows·(columns − 1) + columns·(rows − 1) edges
        assert.equal(agreeing(grid).length, rows * (columns - 1) + columns * (rows - 1), `${rows} by ${columns}`);
      }
    }
  });
}

test('barn raising closes rings round its middle, for even and odd counts', () => {
  // by hand: the four blocks round the middle turn their dark halves to it
  const even = quartersFor({ kind: 'barn-raising', rows: 4, columns: 4 });
  assert.deepEqual(
    [even[1]?.slice(1, 3), even[2]?.slice(1, 3)],
    [
      [0, 1],
      [3, 2],
    ],
  );
  const odd = quartersFor({ kind: 'barn-raising', rows: 5, columns: 5 });
  assert.deepEqual([odd[2]?.slice(2, 4), odd[3]?.slice(2, 4)], [even[1]?.slice(1, 3), even[2]?.slice(1, 3)]);
});

const arranged = (swap: boolean, darkCorner: 'lower-right' | 'lower-left' | 'upper-left' | 'upper-right') =>
  arrangedRows(
    { kind: 'straight-furrow', block: 'cabin', colouring: 'night', rows: 1, columns: 2, swap, darkCorner: null },
    darkCorner,
  ).map((row) => row.map((cell) => (cell.kind === 'block' ? [cell.turn, cell.colouring] : null)));

test('a block turns from the corner where its own dark half lies, and swap adds half a turn', () => {
  // by hand: straight furrow begins 0, 2 quarters for a dark half lower right
  assert.deepEqual(arranged(false, 'lower-right'), [
    [
      [0, 'night'],
      [180, 'night'],
    ],
  ]);
  // by hand: lower left comes to the lower right by three quarter turns clockwise
  assert.deepEqual(arranged(false, 'lower-left'), [
    [
      [270, 'night'],
      [90, 'night'],
    ],
  ]);
  assert.deepEqual(arranged(true, 'upper-left'), arranged(false, 'lower-right'));
});
