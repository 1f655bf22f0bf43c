// Laws of sheets on random pieces: every answer is sound, no bound lies above any cost, and the same steps find the same.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fewPiecesOnSheets } from '#craft/few-pieces';
import { type Sheet, type SheetSearch, type SheetsFound, searchSheets } from '#craft/sheets';
import type { Cutting, Kind } from '#craft/strips';
import { openSolver } from '#solver';
import { sheetFaults } from '../../bench/layouts/checked.ts';

const kinds: fc.Arbitrary<readonly Kind[]> = fc.array(
  fc
    .record({
      width: fc.integer({ min: 2, max: 14 }),
      height: fc.integer({ min: 2, max: 14 }),
      count: fc.integer({ min: 1, max: 6 }),
      mayTurn: fc.boolean(),
    })
    .map((kind) => {
      const lies = kind.mayTurn && kind.width > kind.height;
      return { ...kind, width: lies ? kind.height : kind.width, height: lies ? kind.width : kind.height };
    }),
  { minLength: 1, maxLength: 6, size: 'max' },
);

const sheets: fc.Arbitrary<readonly Sheet[]> = fc.array(
  fc.record({
    width: fc.integer({ min: 10, max: 24 }),
    height: fc.integer({ min: 10, max: 24 }),
    cost: fc.integer({ min: 5, max: 20 }),
    stock: fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 4 })),
  }),
  { minLength: 1, maxLength: 3 },
);

const cuttings = fc.constantFrom<Cutting>(
  { stages: 2 },
  { stages: 3, stripHeights: 'piece' },
  { stages: 3, stripHeights: 'any' },
);

const solver = await openSolver();
const solvers = fc.constantFrom(null, solver);

/** After so many steps, or at its end. */
const stepped = (search: SheetSearch, steps: number): SheetsFound => {
  let next = search.next();
  for (let step = 1; step < steps && next.done !== true; step++) next = search.next();
  return next.value;
};

test('sheets: every answer is sound, its bound is above no cost, and what cannot be is told rightly', () => {
  fc.assert(
    fc.property(
      kinds,
      sheets,
      cuttings,
      solvers,
      fc.integer({ min: 1, max: 8 }),
      (pieces, stock, cutting, of, steps) => {
        const job = { kinds: pieces, cutting, sheets: stock, solver: of };
        const found = stepped(searchSheets(job), steps);
        const least = fewPiecesOnSheets(job);
        const left = pieces.map((kind, k) => ({ ...kind, count: kind.count - (found.left[k] ?? 0) }));
        assert.deepEqual(sheetFaults({ kinds: left, cutting, sheets: stock, uses: found.sheets }), []);
        const cost = found.sheets.reduce((sum, { sheet, times }) => sum + times * (stock[sheet]?.cost ?? 0), 0);
        assert.equal(found.cost, cost);
        if (found.holds === 'yes') {
          assert.ok(found.left.every((n) => n === 0));
          assert.ok(found.bound <= found.cost, `bound ${found.bound} of ${found.cost}`);
          assert.notEqual(least?.status, 'impossible');
        }
        if (found.holds === 'no') assert.notEqual(least?.status, 'least');
        if (least?.status === 'least') {
          assert.ok(found.bound <= least.cost, `bound ${found.bound} above the least cost ${least.cost}`);
          assert.ok(found.holds !== 'yes' || found.cost >= least.cost);
        }
      },
    ),
    { seed: 61, numRuns: 50 },
  );
});

test('sheets: the same steps find the same', () => {
  fc.assert(
    fc.property(kinds, sheets, cuttings, fc.integer({ min: 2, max: 6 }), (pieces, stock, cutting, steps) => {
      const job = { kinds: pieces, cutting, sheets: stock, solver };
      assert.deepEqual(stepped(searchSheets(job), steps), stepped(searchSheets(job), steps));
    }),
    { seed: 62, numRuns: 20 },
  );
});
