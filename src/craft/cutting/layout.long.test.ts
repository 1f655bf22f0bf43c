import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { compareEffort, effortOf } from '#craft/ease';
import { length } from '#craft/measure';
import { lengthOf, levelChoicesFor, levelsFor, ownStripsFor } from '#craft/strips';
import { checkLayout } from './check-layout.ts';
import type { Demand, LaidOut } from './cloth.ts';
import { scaledJobFor } from './kinds.ts';
import { planLayout } from './layout.ts';

type Size = readonly [across: number, along: number, count: number];

const demandsOf = (sizes: readonly Size[], turning: 'free' | 'fixed'): readonly Demand[] =>
  sizes.map(([across, along, count]) => ({
    across: length(across),
    along: length(along),
    count,
    mayTurn: turning === 'free',
  }));

const laidOf = (of: {
  readonly width: number;
  readonly demands: readonly Demand[];
  readonly steps?: number;
}): LaidOut => planLayout({ width: length(of.width), demands: of.demands, budget: { steps: of.steps ?? 0 } });

const faultsOf = (laid: LaidOut, demands: readonly Demand[]): readonly unknown[] =>
  checkLayout({ layout: laid.layout, width: laid.layout.width, demands });

/** Sizes on eighths of an inch up to a quarter of the cloth, now and then a border; cloth of 20 to 44 in. */
const cloths = fc.record({
  width: fc.integer({ min: 160, max: 352 }).map((n) => n / 8),
  demands: fc.array(
    fc.record({
      across: fc.integer({ min: 8, max: 100 }).map((n) => length(n / 8)),
      along: fc.oneof(
        { weight: 5, arbitrary: fc.integer({ min: 8, max: 100 }).map((n) => length(n / 8)) },
        { weight: 1, arbitrary: fc.integer({ min: 300, max: 700 }).map((n) => length(n / 8)) },
      ),
      count: fc.integer({ min: 1, max: 30 }),
      mayTurn: fc.boolean(),
    }),
    { minLength: 1, maxLength: 12 },
  ),
});

test('twelve 3 1/2 in squares take one strip of a 42 in cloth, and that is proven least', () => {
  // derived by hand: 12 × 3.5 = 42
  const laid = laidOf({ width: 42, demands: demandsOf([[3.5, 3.5, 12]], 'fixed') });
  assert.equal(laid.layout.length, 3.5);
  assert.equal(laid.bound, 3.5);
  assert.equal(laid.layout.strips.length, 1);
});

test('no pieces take no cloth', () => {
  const laid = laidOf({ width: 40, demands: [] });
  assert.deepEqual(laid, { layout: { width: 40, length: 0, strips: [] }, bound: 0, boundKind: 'area' });
});

test('a demand of nothing is left out', () => {
  const demands = demandsOf(
    [
      [4, 4, 0],
      [5, 5, 1],
    ],
    'fixed',
  );
  const laid = laidOf({ width: 40, demands });
  assert.equal(laid.layout.length, 5);
  assert.deepEqual(faultsOf(laid, demands), []);
});

test('small squares fill the space beside two long borders', () => {
  // derived by hand: two borders leave 40 − 9 = 31 in; 6 columns of 5 in squares, 13 to a column of 65 in
  const demands = demandsOf(
    [
      [4.5, 65, 2],
      [5, 5, 78],
    ],
    'fixed',
  );
  const laid = laidOf({ width: 40, demands });
  assert.deepEqual(faultsOf(laid, demands), []);
  assert.equal(laid.layout.length, 65);
  assert.equal(laid.bound, 65);
});

test('different small pieces stack in one part beside a border', () => {
  // derived by hand: beside a 10 in border 30 in are left: three columns, each 60 in of 10 in wide pieces
  const demands = demandsOf(
    [
      [10, 60, 1],
      [10, 25, 3],
      [10, 35, 3],
    ],
    'fixed',
  );
  const laid = laidOf({ width: 40, demands, steps: 12 });
  assert.deepEqual(faultsOf(laid, demands), []);
  assert.equal(laid.layout.length, 60);
});

test('a piece too wide for the cloth lies turned when it may', () => {
  const demands = demandsOf([[50, 3, 2]], 'free');
  const laid = laidOf({ width: 40, demands });
  assert.deepEqual(faultsOf(laid, demands), []);
  assert.equal(laid.layout.length, 50);
  assert.equal(laid.layout.strips[0]?.parts[0]?.pieces[0]?.turned, true);
});

test('a piece too wide for the cloth that may not turn is refused', () => {
  assert.throws(() => laidOf({ width: 40, demands: demandsOf([[50, 3, 1]], 'fixed') }), RangeError);
});

test('strips are cut tallest first', () => {
  const demands = demandsOf(
    [
      [3, 3, 40],
      [9, 9, 10],
      [5, 6, 30],
    ],
    'fixed',
  );
  const heights = laidOf({ width: 40, demands }).layout.strips.map((s) => s.height);
  assert.deepEqual(
    heights,
    [...heights].sort((a, b) => b - a),
  );
});

test('a layout as short as is enough ends the search, one that is longer does not', () => {
  const demands = demandsOf(
    [
      [3.5, 3.5, 40],
      [4, 6, 20],
      [2.5, 12, 12],
      [7, 9, 8],
    ],
    'fixed',
  );
  const laid = (enough?: number): number =>
    planLayout({
      width: length(40),
      demands,
      budget: { steps: 12, ...(enough === undefined ? {} : { enough: length(enough) }) },
    }).layout.length;
  const first = laidOf({ width: 40, demands }).layout.length;
  const searched = laid();
  assert.ok(searched < first);
  assert.deepEqual([laid(first), laid(searched)], [first, searched]);
});

test('a layout of random pieces is sound and no shorter than its bound', () => {
  fc.assert(
    fc.property(cloths, fc.integer({ min: 0, max: 3 }), ({ width, demands }, steps) => {
      const laid = laidOf({ width, demands, steps });
      assert.deepEqual(faultsOf(laid, demands), []);
      assert.ok(laid.bound <= laid.layout.length);
    }),
    { seed: 11, numRuns: 150 },
  );
});

test('cloth in pieces and waste make up the cloth laid out', () => {
  fc.assert(
    fc.property(cloths, ({ width, demands }) => {
      const { layout } = laidOf({ width, demands });
      // waste is measured gap by gap: below each piece's part, beside the parts, beside the pieces
      let waste = 0;
      for (const strip of layout.strips) {
        let across = 0;
        for (const part of strip.parts) {
          across += part.width;
          let down = 0;
          for (const piece of part.pieces) {
            down += piece.cut[1];
            waste += (part.width - piece.cut[0]) * piece.cut[1];
          }
          waste += part.width * (strip.height - down);
        }
        waste += (width - across) * strip.height;
      }
      const cut = demands.reduce((sum, d) => sum + d.across * d.along * d.count, 0);
      // eighths of an inch: areas are whole 64ths, exact in doubles
      assert.equal(cut + waste, width * layout.length);
    }),
    { seed: 12, numRuns: 200 },
  );
});

test('the order in which demands are listed changes neither length nor bound', () => {
  fc.assert(
    fc.property(cloths, ({ width, demands }) => {
      const one = laidOf({ width, demands, steps: 3 });
      const other = laidOf({ width, demands: [...demands].reverse(), steps: 3 });
      assert.equal(one.layout.length, other.layout.length);
      assert.equal(one.bound, other.bound);
    }),
    { seed: 13, numRuns: 50 },
  );
});

test('a demand split in two is the same job', () => {
  fc.assert(
    fc.property(cloths, ({ width, demands }) => {
      const split = demands.flatMap((d) => [
        { ...d, count: d.count - 1 },
        { ...d, count: 1 },
      ]);
      const laid = laidOf({ width, demands: split, steps: 2 });
      assert.deepEqual(faultsOf(laid, split), []);
      assert.equal(laid.layout.length, laidOf({ width, demands, steps: 2 }).layout.length);
    }),
    { seed: 14, numRuns: 50 },
  );
});

test('leave to turn never costs cloth', () => {
  fc.assert(
    fc.property(cloths, fc.integer({ min: 0, max: 3 }), ({ width, demands }, steps) => {
      const fits = demands.map((d) => ({ ...d, across: length(Math.min(d.across, width)) }));
      const fixed = laidOf({ width, demands: fits.map((d) => ({ ...d, mayTurn: false })), steps });
      const free = laidOf({ width, demands: fits.map((d) => ({ ...d, mayTurn: true })), steps });
      assert.ok(free.layout.length <= fixed.layout.length);
    }),
    { seed: 15, numRuns: 60 },
  );
});

test('cloth and pieces k times as large take k times the length', () => {
  fc.assert(
    fc.property(cloths, fc.integer({ min: 2, max: 9 }), ({ width, demands }, k) => {
      const one = laidOf({ width, demands, steps: 2 });
      const larger = demands.map((d) => ({ ...d, across: length(d.across * k), along: length(d.along * k) }));
      const many = laidOf({ width: width * k, demands: larger, steps: 2 });
      assert.equal(many.layout.length, one.layout.length * k);
      assert.equal(many.bound, one.bound * k);
    }),
    { seed: 16, numRuns: 50 },
  );
});

test('a layout is never longer than any plain heuristic', () => {
  fc.assert(
    fc.property(cloths, ({ width, demands }) => {
      const laid = laidOf({ width, demands, steps: 1 });
      for (const turning of ['as-demanded', 'never'] as const) {
        const { job, grid, unit } = scaledJobFor({ width: length(width), demands, turning });
        for (const strips of [ownStripsFor(job), ...levelChoicesFor(job).map((choice) => levelsFor(job, choice))]) {
          assert.ok(laid.layout.length <= (lengthOf(strips) * unit) / grid.per);
        }
      }
    }),
    { seed: 17, numRuns: 60 },
  );
});

test('of two layouts of one length the one with fewer strip heights is chosen', () => {
  const job = {
    width: 10,
    kinds: [
      { width: 10, height: 2, count: 1, mayTurn: false },
      { width: 10, height: 4, count: 1, mayTurn: false },
    ],
  };
  const strip = (kind: number, height: number, times: number) => ({
    pattern: {
      height,
      parts: [{ stack: { width: 10, height, runs: [{ kind, turned: false, times: 1 }] }, times: 1 }],
    },
    times,
  });
  // derived by hand: 2 + 4 and 3 × 2 are both 6 long, with two heights and with one
  const two = effortOf(job, [strip(0, 2, 1), strip(1, 4, 1)]);
  const one = effortOf(job, [strip(0, 2, 3)]);
  // a piece as wide as the cloth takes the stroke of its strip alone
  assert.deepEqual(two, { length: 6, heights: 2, settings: 2, patterns: 2, strokes: 2 });
  assert.ok(compareEffort(one, two) < 0);
});

test('the same task twice gives the same layout, piece by piece', () => {
  const demands = demandsOf(
    [
      [4.5, 6.5, 31],
      [2.5, 2.5, 120],
      [7.25, 3, 17],
      [3.875, 3.875, 40],
    ],
    'free',
  );
  assert.deepEqual(laidOf({ width: 42, demands, steps: 9 }), laidOf({ width: 42, demands, steps: 9 }));
});

test('lengths on no common grid are laid out all the same', () => {
  // square roots: what a size becomes that leaves the drawing
  const demands = demandsOf(
    [
      [Math.SQRT2, Math.sqrt(3), 40],
      [Math.PI, Math.E, 25],
      [Math.sqrt(7), Math.sqrt(5), 9],
    ],
    'free',
  );
  const laid = laidOf({ width: 40.123456789, demands, steps: 4 });
  assert.deepEqual(faultsOf(laid, demands), []);
  assert.ok(laid.bound <= laid.layout.length);
});

test('thirds of an inch and millimetres fall on a grid: no rounding is left in the length', () => {
  // derived by hand: 30 squares of 1/3 in side by side on 10 in, three strips; 7 strips of 2.1 cm
  assert.equal(laidOf({ width: 10, demands: demandsOf([[1 / 3, 1 / 3, 90]], 'fixed') }).layout.length, 1);
  assert.equal(laidOf({ width: 101.6, demands: demandsOf([[2.1, 2.1, 48 * 7]], 'fixed') }).layout.length, 14.7);
});

test('ten thousand pieces are counted, not tried one by one', () => {
  const demands = demandsOf(
    [
      [2.5, 2.5, 4000],
      [4.5, 2.5, 3000],
      [4.5, 4.5, 2000],
      [6.5, 3, 1000],
    ],
    'fixed',
  );
  const laid = laidOf({ width: 42, demands, steps: 12 });
  assert.deepEqual(faultsOf(laid, demands), []);
  // measured: 2,851 in for a bound of 2,827 1/2 in
  assert.ok(laid.layout.length / laid.bound < 1.02);
});
